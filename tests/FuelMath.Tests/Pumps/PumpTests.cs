using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

[Properties(Arbitrary = [typeof(PumpArbitraries)])]
public sealed class PumpTests
{
    /// <summary>Bilinear by definition: midway between voltages and pressures lies the mean of the four corners.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void CurveAt_MidwayBetweenStraightCurves_GivesTheMean()
    {
        Pump pump = Pump(Curve(12, (2, 300, 8), (6, 160, 12)), Curve(14, (2, 350, 9), (6, 240, 15)));

        PumpCurve curve = pump.CurveAt(ElectricPotential.FromVolts(13));

        Close.Within(1e-12, (300 + 160 + 350 + 240) / 4.0, curve.FlowAt(Pressure.FromBars(4)).LitersPerHour);
        Close.Within(1e-12, (8 + 12 + 9 + 15) / 4.0, curve.CurrentAt(Pressure.FromBars(4)).Amperes);
        Close.Within(1e-15, 13, curve.Voltage.Volts);
    }

    [Property]
    public void CurveAt_BetweenVoltages_IsLinearInVoltageAtEachKnot(PumpKnots knots, Along along)
    {
        PumpCurve low = knots.ToCurve(10, 0.5, 1);
        PumpCurve high = knots.ToCurve(14, 1, 1.5);
        PumpCurve curve = Pump(low, high).CurveAt(ElectricPotential.FromVolts(along.Between(10, 14)));

        Assert.All(
            low.Points.Zip(high.Points),
            pair =>
            {
                Pressure at = pair.First.PressureRise;
                double flow = along.Between(pair.First.Flow.LitersPerHour, pair.Second.Flow.LitersPerHour);
                double current = along.Between(pair.First.Current.Amperes, pair.Second.Current.Amperes);
                Close.WithinOf(knots.LitersPerHour[0], 1e-12, flow, curve.FlowAt(at).LitersPerHour);
                Close.Within(1e-9, current, curve.CurrentAt(at).Amperes);
            }
        );
    }

    /// <summary>
    /// Slopes of three times the chord at 3.48 bar and of zero at 1.75 bar: the curve leaves its end as a third power, and
    /// a rounding of the pressure moves the flow by its cube root. At the point itself the flow is that of the point.
    /// </summary>
    [Fact]
    public void CurveAt_EndsAsAThirdPower_HasTheFlowOfItsPoint() =>
        CurveAt_BetweenVoltages_IsLinearInVoltageAtEachKnot(
            new PumpKnots([1.75, 3.48, 4.5, 6], [319.6, 193.6, 191.2, 152.9], [8.67, 4.85, 7.32, 9.58]),
            new Along(0.446909)
        );

    [Property]
    public void CurveAt_MeasuredVoltage_GivesTheMeasuredCurve(PumpKnots knots)
    {
        PumpCurve low = knots.ToCurve(10, 0.5, 1);
        PumpCurve high = knots.ToCurve(14, 1, 1.5);
        Pump pump = Pump(low, high);

        Assert.Equal(low.Points, pump.Curves[0].Points);
        Assert.Same(pump.Curves[0], pump.CurveAt(ElectricPotential.FromMillivolts(10_000)));
        Assert.Same(pump.Curves[1], pump.CurveAt(ElectricPotential.FromVolts(14 * (1 + 1e-12))));
    }

    [Property]
    public void CurveAt_MoreVoltage_GivesMoreFlow(PumpKnots knots, Along first, Along second)
    {
        Pump pump = Pump(knots.ToCurve(10, 0.5, 1), knots.ToCurve(12, 0.8, 1.2), knots.ToCurve(14, 1, 1.5));
        Pressure rise = Pressure.FromBars((knots.Bar[0] + knots.Bar[^1]) / 2);
        double low = Math.Min(first.Value, second.Value);
        double high = Math.Max(first.Value, second.Value);

        VolumeFlow less = pump.CurveAt(ElectricPotential.FromVolts(new Along(low).Between(10, 14))).FlowAt(rise);
        VolumeFlow more = pump.CurveAt(ElectricPotential.FromVolts(new Along(high).Between(10, 14))).FlowAt(rise);

        Assert.True(more.LitersPerHour >= less.LitersPerHour - (2e-6 * knots.LitersPerHour[0]));
    }

    /// <summary>The knots of both, as far as both reach; 3 bar stands in two units a rounding error apart and counts once.</summary>
    [Fact]
    public void CurveAt_DifferentPressures_HasTheKnotsThatBothReach()
    {
        PumpCurve low = Curve(12, (1, 320, 7), (3, 250, 9), (5, 150, 11));
        PumpCurve high = new(
            ElectricPotential.FromVolts(14),
            [
                Point(2, 350, 9),
                new(
                    Pressure.FromPoundsForcePerSquareInch(Pressure.FromBars(3).PoundsForcePerSquareInch * (1 + 1e-13)),
                    VolumeFlow.FromLitersPerHour(310),
                    ElectricCurrent.FromAmperes(11)
                ),
                Point(4, 270, 13),
                Point(8, 60, 18),
            ],
            PumpKnots.Source
        );

        PumpCurve curve = Pump(low, high).CurveAt(ElectricPotential.FromVolts(13));

        Assert.Equal([2, 3, 4, 5], curve.Points.Select(p => Math.Round(p.PressureRise.Bars, 9)));
        Close.Within(1e-9, 280, curve.FlowAt(Pressure.FromBars(3)).LitersPerHour);
        Words.OutsideTable("13 V, 2, 5, 6", () => curve.FlowAt(Pressure.FromBars(6)));
    }

    /// <summary>
    /// Two curves of 96 % efficiency at their only pressure above zero: midway the mean flow would take 107 %, because voltage
    /// and current both rise. Measured curves are checked, those between them are drawn.
    /// </summary>
    [Fact]
    public void CurveAt_BetweenVeryEfficientCurves_IsDrawnAllTheSame()
    {
        // 3 bar x 144 L/h is 12 W of 12.5 W; 3 bar x 576 L/h is 48 W of 50 W.
        Pump pump = Pump(Curve(5, (1, 150, 2.5), (3, 144, 2.5)), Curve(10, (1, 600, 5), (3, 576, 5)));

        PumpCurve curve = pump.CurveAt(ElectricPotential.FromVolts(7.5));

        Close.Within(1e-9, 360, curve.FlowAt(Pressure.FromBars(3)).LitersPerHour);
    }

    [Theory]
    [InlineData(11.9)]
    [InlineData(14.1)]
    public void CurveAt_OutsideTheVoltages_Refuses(double volts) =>
        Words.OutsideTable(
            $"'trainer', 12, 14, {volts}",
            () =>
                Pump(Curve(12, (2, 300, 8), (6, 160, 12)), Curve(14, (2, 350, 9), (6, 240, 15)))
                    .CurveAt(ElectricPotential.FromVolts(volts))
        );

    [Fact]
    public void CurveAt_OneVoltage_AcceptsOnlyThat()
    {
        Pump pump = Pump(Curve(12, (2, 300, 8), (6, 160, 12)));

        Assert.Same(pump.Curves[0], pump.CurveAt(ElectricPotential.FromVolts(12)));
        Words.OutsideTable("'trainer', 12, 12.5", () => pump.CurveAt(ElectricPotential.FromVolts(12.5)));
    }

    [Fact]
    public void Constructor_VoltagesNotRising_NamesTheIndex() =>
        Words.Refused<ArgumentException>(
            "curves",
            "1",
            () => Pump(Curve(14, (2, 350, 9), (6, 240, 15)), Curve(12, (2, 300, 8), (6, 160, 12)))
        );

    [Fact]
    public void Constructor_LessFlowAtMoreVoltage_SaysWhere() =>
        Words.Refused<ArgumentException>(
            "curves",
            "2 bar, 300 L/h, 14 V, 350 L/h, 12 V",
            () => Pump(Curve(12, (2, 350, 9), (6, 240, 15)), Curve(14, (2, 300, 8), (6, 160, 12)))
        );

    [Fact]
    public void Constructor_NoCommonPressures_SaysWhich() =>
        Words.Refused<ArgumentException>(
            "curves",
            "12 V, 14 V",
            () => Pump(Curve(12, (1, 350, 9), (2, 240, 10)), Curve(14, (2, 300, 11), (6, 160, 14)))
        );

    [Fact]
    public void Constructor_NoCurves_Refuses() => Words.Refused<ArgumentException>("curves", () => Pump());

    [Fact]
    public void Constructor_BlankNameOrNull_SaysWhich()
    {
        PumpCurve[] curves = [Curve(12, (2, 300, 8), (6, 160, 12))];

        Words.Refused<ArgumentException>(
            "name",
            () => _ = new Pump(" ", curves, StandardFuels.NHeptane, PumpKnots.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "curves",
            () => new Pump("p", null!, StandardFuels.NHeptane, PumpKnots.Source)
        );
        Assert.Throws<ArgumentException>(
            "curves",
            () => new Pump("p", [null!], StandardFuels.NHeptane, PumpKnots.Source)
        );
        Assert.Throws<ArgumentNullException>("fluid", () => new Pump("p", curves, null!, PumpKnots.Source));
        Assert.Throws<ArgumentNullException>("source", () => new Pump("p", curves, StandardFuels.NHeptane, null!));
    }

    private static Pump Pump(params PumpCurve[] curves) =>
        new("trainer", curves, StandardFuels.NHeptane, PumpKnots.Source);

    private static PumpCurve Curve(double volts, params (double Bar, double LitersPerHour, double Amperes)[] points) =>
        new(
            ElectricPotential.FromVolts(volts),
            points.Select(p => Point(p.Bar, p.LitersPerHour, p.Amperes)),
            PumpKnots.Source
        );

    private static PumpCurve.Point Point(double bar, double litersPerHour, double amperes) =>
        new(Pressure.FromBars(bar), VolumeFlow.FromLitersPerHour(litersPerHour), ElectricCurrent.FromAmperes(amperes));
}
