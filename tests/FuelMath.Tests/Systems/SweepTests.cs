using FuelMath.Systems;

namespace FuelMath.Tests.Systems;

public sealed class SweepTests
{
    [Fact]
    public void Sweep_EachPoint_IsWhatSolveGivesAlone()
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint point = Workshop.Point(3000, 100, Workshop.Hold(1));
        var sweep = new Sweep(
            system,
            point,
            [Workshop.Rpm(2000), Workshop.Rpm(5000)],
            [Workshop.Kilopascals(50), Workshop.Kilopascals(100), Workshop.Kilopascals(150)],
            CancellationToken.None
        );

        Assert.Equal(6, sweep.Points.Length);
        for (int i = 0; i < 2; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                SystemState alone = system.Solve(point.At(sweep.Speeds[i], sweep.Manifolds[j]));
                Assert.Equal(alone.Stages[0].PulseWidth.Seconds, sweep.At(i, j).State!.Stages[0].PulseWidth.Seconds);
            }
        }
    }

    [Fact]
    public void Sweep_PointWithoutData_CarriesItsRefusal()
    {
        var sweep = new Sweep(
            Workshop.Four(),
            Workshop.Point(3000, 100, Workshop.Hold(1)),
            [Workshop.Rpm(3000), Workshop.Rpm(9500)],
            [Workshop.Kilopascals(100)],
            CancellationToken.None
        );

        Assert.NotNull(sweep.At(0, 0).State);
        Assert.Null(sweep.At(1, 0).State);
        Assert.IsType<OutsideTableException>(sweep.At(1, 0).Refusal);
    }

    [Fact]
    public void Sweep_NoSpeeds_SaysBothCounts()
    {
        var error = Assert.Throws<ArgumentException>(
            "speeds",
            () =>
                new Sweep(
                    Workshop.Four(),
                    Workshop.Point(3000, 100, Workshop.Hold(1)),
                    [],
                    [Workshop.Kilopascals(100)],
                    CancellationToken.None
                )
        );

        Assert.StartsWith(
            "A sweep needs speeds and manifold pressures; 0 and 1 given.",
            error.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Sweep_Cancelled_Stops() =>
        Assert.Throws<OperationCanceledException>(() =>
            new Sweep(
                Workshop.Four(),
                Workshop.Point(3000, 100, Workshop.Hold(1)),
                [Workshop.Rpm(3000)],
                [Workshop.Kilopascals(100)],
                new CancellationToken(true)
            )
        );
}
