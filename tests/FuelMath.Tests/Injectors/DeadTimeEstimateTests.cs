using UnitsNet;

namespace FuelMath.Tests.Injectors;

public sealed class DeadTimeEstimateTests
{
    private static readonly bool[,] Last =
    {
        { false, false },
        { false, false },
        { false, true },
    };

    [Fact]
    public void WithEstimates_MarksValuesAndPlaces()
    {
        DeadTimeTable table = TestInjector.DeadTime.WithEstimates(Last);

        Assert.True(table.HoldsEstimates);
        Assert.False(TestInjector.DeadTime.HoldsEstimates);
        Assert.True(table.IsEstimated(2, 1));
        Assert.False(table.IsEstimated(2, 0));
        Assert.True(Rests(table, 14, 300));
        Assert.True(Rests(table, 16, 600));
        Assert.False(Rests(table, 16, 100));
        Assert.False(Rests(table, 12, 300));
        Assert.False(Rests(table, 10, 600));
        Assert.False(Rests(TestInjector.DeadTime, 14, 300));
    }

    [Fact]
    public void WithEstimates_OtherShape_IsRefused() =>
        Words.Refused<ArgumentException>(
            "estimated",
            "3, 2",
            () => TestInjector.DeadTime.WithEstimates(new bool[2, 2])
        );

    [Fact]
    public void WithEstimates_NoMark_IsRefused() =>
        Words.Refused<ArgumentException>("estimated", () => TestInjector.DeadTime.WithEstimates(new bool[3, 2]));

    private static bool Rests(DeadTimeTable table, double volts, double kilopascals) =>
        table.RestsOnEstimateAt(ElectricPotential.FromVolts(volts), Pressure.FromKilopascals(kilopascals));
}
