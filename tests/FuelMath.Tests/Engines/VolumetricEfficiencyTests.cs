using UnitsNet;

namespace FuelMath.Tests.Engines;

public sealed class VolumetricEfficiencyTests
{
    private static readonly RotationalSpeed[] Speeds = [Rpm(1000), Rpm(3000)];
    private static readonly AbsolutePressure[] Pressures = [Kilopascals(50), Kilopascals(100)];

    private static readonly Ratio[,] Values =
    {
        { Ratio.FromPercent(60), Ratio.FromPercent(80) },
        { Ratio.FromPercent(70), Ratio.FromPercent(100) },
    };

    // Bilinear: the middle of the cell is the mean of its corners, (60 + 80 + 70 + 100)/4 = 77.5 %.
    [Theory]
    [InlineData(1000, 50, 60)]
    [InlineData(3000, 100, 100)]
    [InlineData(2000, 75, 77.5)]
    [InlineData(1000, 75, 70)]
    [Trait("Source", "Definition")]
    public void At_InTheTable_IsBilinear(double rpm, double kilopascals, double percent) =>
        Close.Within(1e-12, percent, Table(OutsideRange.Refuse).At(Rpm(rpm), Kilopascals(kilopascals)).Percent);

    [Fact]
    public void At_BeyondTheTable_SaysTheRange()
    {
        var error = Assert.Throws<OutsideTableException>(() =>
            Table(OutsideRange.Refuse).At(Rpm(3500), Kilopascals(80))
        );

        Words.Says("1000, 3000, 3500", error);
    }

    [Fact]
    public void At_BeyondATableThatHolds_GivesTheEdge() =>
        Close.Within(1e-12, 80, Table(OutsideRange.HoldEnds).At(Rpm(500), Kilopascals(120)).Percent);

    [Fact]
    public void At_CarriedOnToNothing_Refuses()
    {
        var steep = new VolumetricEfficiency(
            Speeds,
            Pressures,
            new Ratio[,]
            {
                { Ratio.FromPercent(10), Ratio.FromPercent(80) },
                { Ratio.FromPercent(10), Ratio.FromPercent(80) },
            },
            OutsideRange.Extend,
            EngineArbitraries.Invented
        );

        // 10 % less 1.4 % for each of 20 kPa is below nothing.
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => steep.At(Rpm(2000), Kilopascals(30)));
        Words.Says("2000 rpm", error);
    }

    [Fact]
    public void FromSpeeds_ServesEveryPressure()
    {
        VolumetricEfficiency table = VolumetricEfficiency.FromSpeeds(
            Speeds,
            Kilopascals(100),
            [Ratio.FromPercent(80), Ratio.FromPercent(90)],
            OutsideRange.Refuse,
            EngineArbitraries.Invented
        );

        Close.Within(1e-12, 85, table.At(Rpm(2000), Kilopascals(40)).Percent);
        Assert.Throws<OutsideTableException>(() => table.At(Rpm(900), Kilopascals(40)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(250)]
    public void Constant_Outside_Refuses(double percent)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            VolumetricEfficiency.FromConstant(Ratio.FromPercent(percent), EngineArbitraries.Invented)
        );

        Refusal refusal = Refusal.Of(error)!;
        Assert.Equal(
            (percent, 0, true, 200, "%"),
            (refusal.Value, refusal.Minimum, refusal.IsMinimumExcluded, refusal.Maximum, refusal.Unit)
        );
    }

    /// <summary>An engine does not run backwards: a table of a negative speed is a mistake, not a range.</summary>
    [Fact]
    public void NegativeSpeed_IsRefused()
    {
        RotationalSpeed[] backwards = [Rpm(-1000), Rpm(3000)];
        Action[] ways =
        [
            () =>
                _ = new VolumetricEfficiency(
                    backwards,
                    Pressures,
                    Values,
                    OutsideRange.Refuse,
                    EngineArbitraries.Invented
                ),
            () =>
                _ = VolumetricEfficiency.FromSpeeds(
                    backwards,
                    Kilopascals(100),
                    [Ratio.FromPercent(60), Ratio.FromPercent(70)],
                    OutsideRange.Refuse,
                    EngineArbitraries.Invented
                ),
        ];

        foreach (Action way in ways)
        {
            Refusal refusal = Refusal.Of(Words.Refused<ArgumentOutOfRangeException>("speeds", way))!;
            Assert.Equal((-1000, 0, "rpm"), (refusal.Value, refusal.Minimum, refusal.Unit));
        }
    }

    [Fact]
    public void Constructor_WrongNumberOfValues_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            new VolumetricEfficiency(
                Speeds,
                [Kilopascals(50), Kilopascals(100), Kilopascals(150)],
                Values,
                OutsideRange.Refuse,
                EngineArbitraries.Invented
            )
        );

        Words.Says("2, 3", error);
    }

    [Fact]
    public void Constructor_CopiesItsValues()
    {
        var values = (Ratio[,])Values.Clone();
        var table = new VolumetricEfficiency(
            Speeds,
            Pressures,
            values,
            OutsideRange.Refuse,
            EngineArbitraries.Invented
        );

        values[0, 0] = Ratio.FromPercent(1);

        Close.Within(1e-12, 60, table.At(Rpm(1000), Kilopascals(50)).Percent);
    }

    private static VolumetricEfficiency Table(OutsideRange outside) =>
        new(Speeds, Pressures, Values, outside, EngineArbitraries.Invented);

    private static RotationalSpeed Rpm(double rpm) => RotationalSpeed.FromRevolutionsPerMinute(rpm);

    private static AbsolutePressure Kilopascals(double kilopascals) => new(Pressure.FromKilopascals(kilopascals));
}
