using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Pumps;

[Properties(Arbitrary = [typeof(PumpArbitraries)])]
public sealed class PumpCurveTests
{
    /// <summary>
    /// Share of the greatest flow by which rounding may move a flow. Where the data bend sharply at an end, the curve
    /// ends level in pressure: the flow there goes with the root of the pressure, and a rounding error of 1e-16 of 40 bar
    /// over a least rise of 0.01 bar becomes 6e-7.
    /// </summary>
    private const double LevelEnd = 1e-6;

    /// <summary>The same after a unit round trip, which moves a pressure by up to 2e-12: root of 8e-9.</summary>
    private const double LevelEndInOtherUnits = 1e-4;

    // ---- Reference: numbers that others published -------------------------------------------------------

    /// <summary>
    /// The nine points of RPN15A and SciPy's values between them, laid on a pump: flow is x, pressure rise is 2 less y. Turning
    /// and moving the data turns and moves a shape-preserving cubic with them. Values as printed, to 15 digits.
    /// </summary>
    [Theory]
    [Trait("Source", "SciPy")]
    [InlineData(8.015, 1.72931867874347e-06)]
    [InlineData(8.04, 6.91509147664885e-06)]
    [InlineData(8.115, 0.0052925769379873)]
    [InlineData(8.14, 0.0176971673759195)]
    [InlineData(8.3175, 0.0790833850670749)]
    [InlineData(8.445, 0.105601163766302)]
    [InlineData(8.825, 0.226675717128073)]
    [InlineData(8.95, 0.303836183047449)]
    [InlineData(9.4, 0.608434982672152)]
    [InlineData(9.6, 0.760247639340382)]
    [InlineData(10.5, 0.969198606986201)]
    [InlineData(11, 0.98604336253505)]
    [InlineData(12.75, 0.99921190395597)]
    [InlineData(13.5, 0.999603364012177)]
    [InlineData(16.25, 0.999952814230678)]
    [InlineData(17.5, 0.999976140427269)]
    public void RiseAt_PublishedMonotoneData_GivesThePublishedValues(double x, double y)
    {
        PumpCurve curve = Turned(
            [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20],
            [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994]
        );

        Close.WithinOf(1, 1e-12, 2 - y, curve.RiseAt(VolumeFlow.FromLitersPerHour(x)).Bars);
    }

    /// <summary>The same data rounded, with results published to 4 decimals in a numerics manual.</summary>
    [Theory]
    [Trait("Source", "Fritsch-Carlson-1980")]
    [InlineData(9.191, 0.4640)]
    [InlineData(10.392, 0.9645)]
    [InlineData(11.593, 0.9965)]
    public void RiseAt_RoundedMonotoneData_GivesThePublishedValues(double x, double y)
    {
        PumpCurve curve = Turned(
            [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20],
            [0, 0.27643e-4, 0.43750e-1, 0.16918, 0.46943, 0.94374, 0.99864, 0.99992, 0.99999]
        );

        Close.WithinOf(1, 0.5e-4 + 1e-12, 2 - y, curve.RiseAt(VolumeFlow.FromLitersPerHour(x)).Bars);
    }

    /// <summary>
    /// Worked examples 7.15, 7.17 and 7.34: head, flow, weight of the liquid and efficiency of a pump give its brake
    /// power. Tolerance 0.5 %: head and power are printed with three or four digits, the constant of the formula with
    /// three.
    /// </summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(421, 62.305, 100, 0.70, 15.2)]
    [InlineData(3406.5, 54.64, 1330, 0.67, 1496)]
    [InlineData(428, 62.4, 700, 0.707, 107.06)]
    public void HydraulicPowerAt_WorkedExamples_GiveTheBrakePower(
        double feet,
        double poundsPerCubicFoot,
        double gallonsPerMinute,
        double efficiency,
        double horsepower
    )
    {
        Pressure rise = Pressure.FromPoundsForcePerSquareFoot(feet * poundsPerCubicFoot);
        VolumeFlow flow = VolumeFlow.FromUsGallonsPerMinute(gallonsPerMinute);
        ElectricPotential voltage = ElectricPotential.FromVolts(480);
        ElectricCurrent current = Power.FromMechanicalHorsepower(horsepower * 1.1) / voltage;
        var curve = new PumpCurve(
            voltage,
            [new(rise * 0.8, flow * 1.2, current), new(rise, flow, current), new(rise * 1.1, flow * 0.6, current)],
            PumpKnots.Source
        );

        Close.Within(0.005, horsepower * efficiency, (double)curve.HydraulicPowerAt(rise).MechanicalHorsepower);
        Close.Within(1e-12, horsepower * 1.1, (double)curve.ElectricPowerAt(rise).MechanicalHorsepower);
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void FlowAt_StraightPoints_GivesTheLine()
    {
        PumpCurve curve = Curve((4, 300), (5, 280), (7, 240), (8, 220));

        Close.Within(1e-12, 260, curve.FlowAt(Pressure.FromBars(6)).LitersPerHour);
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void RiseAt_TwoPoints_GivesTheLine()
    {
        PumpCurve curve = Curve((2, 300), (6, 100));

        Close.Within(1e-12, 5, curve.RiseAt(VolumeFlow.FromLitersPerHour(150)).Bars);
    }

    // ---- Properties: what must hold for every curve -----------------------------------------------------

    [Property]
    public void FlowAt_BetweenTwoPoints_StaysBetweenTheirFlows(PumpKnots knots, Along along)
    {
        PumpCurve curve = knots.ToCurve();

        for (int i = 1; i < knots.Bar.Length; i++)
        {
            double bar = along.Between(knots.Bar[i - 1], knots.Bar[i]);
            double flow = curve.FlowAt(Pressure.FromBars(bar)).LitersPerHour;
            Assert.InRange(flow, knots.LitersPerHour[i] - 1e-9, knots.LitersPerHour[i - 1] + 1e-9);
        }
    }

    [Property]
    public void FlowAt_Points_GivesTheirFlowsAndCurrents(PumpKnots knots)
    {
        PumpCurve curve = knots.ToCurve();

        Assert.All(
            curve.Points,
            p =>
            {
                Close.WithinOf(
                    knots.LitersPerHour[0],
                    LevelEnd,
                    p.Flow.LitersPerHour,
                    curve.FlowAt(p.PressureRise).LitersPerHour
                );
                Close.Within(1e-12, p.Current.Amperes, curve.CurrentAt(p.PressureRise).Amperes);
            }
        );
    }

    [Property]
    public void FlowAt_MorePressure_GivesLessFlow(PumpKnots knots, Along first, Along second)
    {
        PumpCurve curve = knots.ToCurve();
        double low = Math.Min(first.Value, second.Value);
        double high = Math.Max(first.Value, second.Value);
        VolumeFlow more = curve.FlowAt(Pressure.FromBars(new Along(low).Between(knots.Bar[0], knots.Bar[^1])));
        VolumeFlow less = curve.FlowAt(Pressure.FromBars(new Along(high).Between(knots.Bar[0], knots.Bar[^1])));

        Assert.True(less.LitersPerHour <= more.LitersPerHour + (LevelEnd * knots.LitersPerHour[0]));
    }

    /// <summary>
    /// The rise comes back to rounding of the greatest rise, as does the flow except where the curve is so steep that one
    /// rounding step of pressure is many of flow; so the check is on the rise.
    /// </summary>
    [Property]
    public void RiseAt_ThenFlowAt_ComesBack(PumpKnots knots, Along along)
    {
        PumpCurve curve = knots.ToCurve();
        Pressure rise = Pressure.FromBars(along.Between(knots.Bar[0], knots.Bar[^1]));

        Pressure back = curve.RiseAt(curve.FlowAt(rise));

        Close.WithinOf(knots.Bar[^1], 1e-10, rise.Bars, back.Bars);
    }

    [Property]
    public void FlowAt_SameCurveInOtherUnits_GivesTheSameFlow(PumpKnots knots)
    {
        PumpCurve metric = knots.ToCurve();
        PumpCurve imperial = new(
            metric.Voltage.ToUnit(ElectricPotentialUnit.Millivolt),
            metric.Points.Select(p => new PumpCurve.Point(
                p.PressureRise.ToUnit(PressureUnit.PoundForcePerSquareInch),
                p.Flow.ToUnit(VolumeFlowUnit.UsGallonPerHour),
                p.Current.ToUnit(ElectricCurrentUnit.Milliampere)
            )),
            metric.Source
        );
        VolumeFlow middle = VolumeFlow.FromLitersPerHour((knots.LitersPerHour[0] + knots.LitersPerHour[^1]) / 2);

        // A unit round trip moves a knot by up to 2e-12, and the steepest curve, 40 bar over 0.1 L/h, magnifies it.
        Close.WithinOf(knots.Bar[^1], 1e-6, metric.RiseAt(middle).Bars, imperial.RiseAt(middle).Bars);
    }

    [Property]
    public void FlowAt_EdgeInAnyPressureUnit_CountsAsTheEdge(PumpKnots knots)
    {
        PumpCurve curve = knots.ToCurve();

        foreach (PressureUnit unit in Pressure.Units)
        {
            double flow = curve.FlowAt(curve.GreatestPressureRise.ToUnit(unit)).LitersPerHour;
            Close.WithinOf(knots.LitersPerHour[0], LevelEndInOtherUnits, knots.LitersPerHour[^1], flow);
        }
    }

    [Property]
    public void HydraulicPower_AtThePoints_IsLessThanElectric(PumpKnots knots)
    {
        PumpCurve curve = knots.ToCurve();

        Assert.All(
            curve.Points,
            p =>
                Assert.True(curve.HydraulicPowerAt(p.PressureRise).Watts <= curve.ElectricPowerAt(p.PressureRise).Watts)
        );
    }

    private static PumpCurve Turned(double[] x, double[] y) => Curve([.. x.Zip(y, (a, b) => (2 - b, a)).Reverse()]);

    private static PumpCurve Curve(params (double Bar, double LitersPerHour)[] points) =>
        new(
            ElectricPotential.FromVolts(PumpKnots.Volts),
            points.Select(p => Point(p.Bar, p.LitersPerHour)),
            PumpKnots.Source
        );

    private static PumpCurve.Point Point(double bar, double litersPerHour) =>
        new(Pressure.FromBars(bar), VolumeFlow.FromLitersPerHour(litersPerHour), ElectricCurrent.FromAmperes(10));
}
