using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>What a node, a link, a pump and a regulator refuse to be.</summary>
public sealed class LinkRefusalTests
{
    private const string Positive = "Must be finite and greater than zero; it was ";
    private const string NotNegative = "Must be finite and not negative; it was ";

    [Theory]
    [InlineData(0, 8, "length", Positive + "0 m.")]
    [InlineData(-1, 8, "length", Positive + "-1 m.")]
    [InlineData(1, 0, "bore", Positive + "0 mm.")]
    [InlineData(1, -8, "bore", Positive + "-8 mm.")]
    public void Pipe_ImpossibleSize_IsRefused(double meters, double bore, string paramName, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(paramName, words, () => Hose("x", "a", "b", meters, bore));

    [Fact]
    public void Pipe_NegativeLossCoefficient_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("lossCoefficient", NotNegative, () => Hose("x", "a", "b", 1, 8, -1));

    [Theory]
    [InlineData(-1)]
    [InlineData(0.41)]
    public void Pipe_RoughnessOutsideTheLaw_IsRefused(double millimeters) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "roughness",
            "0 mm, 0.4 mm",
            () =>
                OwnLine.CheckPipe(
                    "x",
                    "a",
                    "b",
                    Length.FromMeters(1),
                    Length.FromMillimeters(8),
                    Length.FromMillimeters(millimeters),
                    Ratio.Zero,
                    Pipe.FrictionLaw.ColebrookStraightPassage
                )
        );

    [Fact]
    public void Pipe_UnknownFriction_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "friction",
            "7",
            () =>
                OwnLine.Pipe(
                    "x",
                    "a",
                    "b",
                    Length.FromMeters(1),
                    Length.FromMillimeters(8),
                    Length.Zero,
                    Ratio.Zero,
                    (Pipe.FrictionLaw)7
                )
        );

    [Fact]
    public void Link_BothEndsTheSame_IsRefused() =>
        Words.Refused<ArgumentException>("to", "'x', 'a'", () => Hose("x", "a", "a", 1, 8));

    [Theory]
    [InlineData(" ", "a", "b", "name")]
    [InlineData("x", "", "b", "from")]
    [InlineData("x", "a", " ", "to")]
    public void Link_BlankName_IsRefused(string name, string from, string to, string paramName) =>
        Words.Refused<ArgumentException>(paramName, "Must be a name, not blank.", () => Hose(name, from, to, 1, 8));

    [Fact]
    public void Node_BlankName_IsRefused() => Words.Refused<ArgumentException>("name", () => Junction(" "));

    [Fact]
    public void Fitting_NoLoss_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "lossCoefficient",
            Positive,
            () => OwnLine.Fitting("x", "a", "b", Length.FromMillimeters(8), Ratio.Zero)
        );

    [Fact]
    public void Filter_NoLoss_IsRefused() =>
        Words.Refused<ArgumentException>(
            "linearLoss",
            () => OwnLine.Filter("x", "a", "b", LitersPerHour(100), Pressure.Zero, Pressure.Zero)
        );

    [Fact]
    public void Filter_NegativeLoss_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "quadraticLoss",
            NotNegative + "-1 kPa.",
            () => OwnLine.Filter("x", "a", "b", LitersPerHour(100), Kilopascals(1), Kilopascals(-1))
        );

    [Fact]
    public void CheckValve_NoOpenLoss_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "openLoss",
            Positive + "0 kPa.",
            () => OwnLine.CheckValve("x", "a", "b", Kilopascals(0), Kilopascals(0), LitersPerHour(100))
        );

    [Fact]
    public void CheckValve_NegativeOpening_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "openingDifferentialPressure",
            NotNegative,
            () => Check("x", "a", "b", -1)
        );

    [Fact]
    public void Orifice_ImpossibleValues_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "flow",
            Positive,
            () => OwnLine.Orifice("x", "a", "b", VolumeFlow.Zero, Kilopascals(300), InjectorDraw.Backflow.Allowed)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "backflow",
            "5",
            () => OwnLine.Orifice("x", "a", "b", LitersPerHour(1), Kilopascals(300), (InjectorDraw.Backflow)5)
        );
        Words.Refused<ArgumentOutOfRangeException>("commanded", NotNegative, () => Injector("x", "a", "b", 100, -1));
    }

    [Fact]
    public void Regulator_ImpossibleValues_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "setDifferentialPressure",
            Positive + "0 kPa.",
            () => _ = new OwnRegulator(Kilopascals(0), Gauge(0), Kilopascals(5), LitersPerHour(100))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "fullyOpenLoss",
            Positive,
            () => _ = new OwnRegulator(Kilopascals(300), Gauge(0), Kilopascals(-5), LitersPerHour(100))
        );
        var regulator = new OwnRegulator(Kilopascals(300), Gauge(0), Kilopascals(5), LitersPerHour(100));
        Words.Refused<ArgumentOutOfRangeException>(
            "pressureDifference",
            NotNegative,
            () => regulator.WithSlope(Kilopascals(-1), LitersPerHour(100))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "seatOverNetDiaphragm",
            "0 %, 100 %, 120 %",
            () => regulator.WithReturnInfluence(Ratio.FromPercent(120))
        );
        Assert.Throws<InvalidOperationException>(() =>
            OwnLine.ReducingRegulator("x", "a", "b", regulator.WithReturnInfluence(Ratio.FromPercent(5)))
        );
    }

    [Fact]
    public void Pump_RisingToItsEnd_IsRefused() =>
        Words.Refused<ArgumentException>(
            "points",
            () => Straight(OutsideRange.Refuse, (0, 500), (50, 400), (100, 400))
        );

    [Fact]
    public void Pump_HumpWithoutAPointAtNoFlow_IsRefused()
    {
        Words.Refused<ArgumentException>(
            "points",
            "20 L/h",
            () => Straight(OutsideRange.Refuse, (20, 500), (50, 520), (100, 400))
        );
        Assert.True(Straight(OutsideRange.Extend, (20, 500), (50, 520), (100, 400)).HasHump);
    }

    [Fact]
    public void Pump_BankOfHumps_IsRefused() =>
        Words.Refused<ArgumentException>(
            "pumps",
            "1, 2",
            () => Straight(OutsideRange.Refuse, (0, 500), (50, 520), (100, 400)).InParallel(2)
        );

    [Fact]
    public void Pump_UnorderedFlows_AreRefused() =>
        Words.Refused<ArgumentException>(
            "points",
            "2",
            () => Straight(OutsideRange.Refuse, (0, 500), (50, 400), (50, 300))
        );

    [Fact]
    public void Pump_OnePoint_IsRefused() =>
        Words.Refused<ArgumentException>(
            "points",
            "2, 1",
            () => PlainPump.Smooth([Point(0, 500)], OutsideRange.Refuse)
        );

    [Fact]
    public void Pump_HeldEnds_AreRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "outside",
            () => Straight(OutsideRange.HoldEnds, (0, 500), (50, 400))
        );

    [Fact]
    public void Pump_PowerLawThatRises_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "point",
            "500 kPa, 510 kPa",
            () => PlainPump.Power(Kilopascals(500), Point(100, 510), Ratio.FromDecimalFractions(2))
        );

    [Fact]
    public void Pump_PowerThroughPointsOutOfOrder_IsRefused() =>
        Words.Refused<ArgumentException>(
            "end",
            () => PlainPump.PowerThrough(Kilopascals(500), Point(100, 300), Point(150, 350))
        );

    [Fact]
    public void Pump_SpeedOfZero_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "speed",
            "0.01, 100, 0",
            () => Straight(OutsideRange.Refuse, (0, 500), (100, 300)).AtSpeed(Ratio.Zero)
        );

    [Fact]
    public void PumpPoint_NegativeFlow_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("flow", NotNegative, () => Point(-1, 500));

    /// <summary>The unit library refuses NaN itself; a gauge pressure is the only way in for a pressure.</summary>
    [Fact]
    public void Node_NotANumber_IsRefused()
    {
        Assert.ThrowsAny<ArgumentException>(() => Fixed("a", double.NaN));
        Assert.ThrowsAny<ArgumentException>(() => Drawn("a", double.PositiveInfinity));
        Assert.ThrowsAny<ArgumentException>(() => Junction("a", double.NaN));
    }
}
