using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

[Properties(Arbitrary = [typeof(PumpArbitraries)])]
public sealed class PumpCombinationTests
{
    // The engine's acceleration of free fall, 32.2 ft/s2, and its water: 1.1e-5 ft2/s.
    private const double EngineGravity = 9.81456;
    private static readonly Density Water = Density.FromKilogramsPerCubicMeter(1000);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromPascalSeconds(1.0219e-3);
    private static readonly DataSource Source = new("Definition", "pump banks");

    /// <summary>
    /// Pumps of 50 m - 0.1 Q2 (L/s) from a reservoir at 10 m to one at 25 m, through 500 m of 100 mm and 0.05 mm roughness:
    /// 13.9753 L/s with one, 18.5032 with two side by side at 41.4408 m, 17.4987 with two in a row at 38.7593 m in all. The
    /// engine takes Swamee and Jain's friction factor, which differs from Colebrook's by up to 0.4 % here: 0.3 % of flow.
    /// </summary>
    [Theory]
    [Trait("Source", "Rossman-2020")]
    [InlineData(1, 1, 13.9753, 30.4691)]
    [InlineData(2, 1, 18.5032, 41.4408)]
    [InlineData(1, 2, 17.4987, 38.7593)]
    public void Bank_OnAPublishedNetwork_WorksWhereTheEngineSays(int parallel, int series, double liters, double head)
    {
        PumpCurve one = Curve(50, 0.1, 22, 1e-3, 1, 1000 * EngineGravity);
        PumpCurve bank = Bank(one, parallel, series);
        var pipe = new Hose(
            "pipe",
            Length.FromMeters(500),
            Length.FromMeters(0.1),
            Length.FromMillimeters(0.05),
            Ratio.Zero,
            Source
        );

        double flow = Meets(
            bank,
            q => (15 * 1000 * EngineGravity) + pipe.LossAt(VolumeFlow.FromCubicMetersPerSecond(q), Water, Thin).Pascals
        );

        Close.Within(0.003, liters, flow * 1000);
        Close.Within(
            0.003,
            head,
            bank.RiseAt(VolumeFlow.FromCubicMetersPerSecond(flow)).Pascals / (1000 * EngineGravity)
        );
    }

    /// <summary>
    /// The homework's pump of 365 - 20 Q2 (ft, ft3/s) on 290 + 26.3508 Q2: its answers were found again from its equations.
    /// The curve here goes through 200 points of that parabola; between them it errs by the cube of the spacing: 1e-5.
    /// </summary>
    [Theory]
    [Trait("Source", "Homework-pump")]
    [InlineData(1, 1, 1.27204, 332.638)]
    [InlineData(1, 2, 2.57515, 464.743)]
    [InlineData(2, 1, 1.54670, 353.039)]
    public void Bank_OfTheHomework_MeetsItsSystem(int parallel, int series, double cubicFeet, double feet)
    {
        PumpCurve bank = Bank(Curve(365, 20, 4, 1, 1, 1), parallel, series);

        double flow = Meets(bank, q => 290 + (26.3508 * q * q));

        Close.Within(1e-5, cubicFeet, flow);
        Close.Within(1e-5, feet, bank.RiseAt(VolumeFlow.FromCubicMetersPerSecond(flow)).Pascals);
    }

    /// <summary>Two equal pumps: twice the flow at a rise, twice the rise at a flow, twice the current in both.</summary>
    [Property]
    public void Bank_OfTwoEqualPumps_IsTheCurveStretched(PumpKnots knots, Along place)
    {
        PumpCurve one = knots.ToCurve();
        PumpCurve beside = PumpCombination.InParallel([one, one], Source);
        PumpCurve behind = PumpCombination.InSeries([one, one], Source);
        Pressure rise = Pressure.FromBars(place.Between(knots.Bar[0], knots.Bar[^1]));
        double greatest = one.GreatestFlow.CubicMetersPerSecond;

        // Where the curve is level in pressure an inverse is known to a millionth of the greatest flow.
        Close.WithinOf(
            greatest,
            2e-6,
            2 * one.FlowAt(rise).CubicMetersPerSecond,
            beside.FlowAt(rise).CubicMetersPerSecond
        );
        Close.Within(1e-9, 2 * one.CurrentAt(rise).Amperes, beside.CurrentAt(rise).Amperes);
        Close.WithinOf(
            greatest,
            2e-6,
            one.FlowAt(rise).CubicMetersPerSecond,
            behind.FlowAt(2 * rise).CubicMetersPerSecond
        );
    }

    /// <summary>At each shared point a bank gives the sum of its pumps, whatever they are.</summary>
    [Property]
    public void InParallel_AtASharedRise_AddsUpFlows(PumpKnots a, PumpKnots b)
    {
        (double least, double greatest) = (Math.Max(a.Bar[0], b.Bar[0]), Math.Min(a.Bar[^1], b.Bar[^1]));
        if (!(greatest > least + 0.01))
        {
            return;
        }

        PumpCurve bank = PumpCombination.InParallel([a.ToCurve(), b.ToCurve()], Source);
        Assert.All(
            bank.Points,
            p =>
                Close.Within(
                    1e-9,
                    a.ToCurve().FlowAt(p.PressureRise).LitersPerHour + b.ToCurve().FlowAt(p.PressureRise).LitersPerHour,
                    p.Flow.LitersPerHour
                )
        );
    }

    [Fact]
    public void Bank_AtTwoVoltages_IsRefused()
    {
        PumpCurve one = Curve(50, 0.1, 20, 1, 12, 1);
        var refused = Assert.Throws<ArgumentException>(() =>
            PumpCombination.InParallel([one, Curve(50, 0.1, 20, 1, 14, 1)], Source)
        );

        Words.Says("12 V, 14 V", refused);
    }

    [Fact]
    public void Bank_OfOne_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            PumpCombination.InSeries([Curve(50, 0.1, 20, 1, 12, 1)], Source)
        );

        Words.Says("1", refused);
    }

    [Fact]
    public void InSeries_WithoutSharedFlow_IsRefused()
    {
        var small = new PumpCurve(
            ElectricPotential.FromVolts(12),
            [
                new(Pressure.FromPascals(10), VolumeFlow.FromCubicMetersPerSecond(1), ElectricCurrent.FromAmperes(99)),
                new(Pressure.FromPascals(20), VolumeFlow.Zero, ElectricCurrent.FromAmperes(99)),
            ],
            Source
        );
        var large = new PumpCurve(
            ElectricPotential.FromVolts(12),
            [
                new(Pressure.FromPascals(10), VolumeFlow.FromCubicMetersPerSecond(5), ElectricCurrent.FromAmperes(99)),
                new(Pressure.FromPascals(20), VolumeFlow.FromCubicMetersPerSecond(2), ElectricCurrent.FromAmperes(99)),
            ],
            Source
        );

        var refused = Assert.Throws<ArgumentException>(() => PumpCombination.InSeries([small, large], Source));

        Assert.Contains("must share a range of flow", refused.Message, StringComparison.Ordinal);
    }

    private static PumpCurve Bank(PumpCurve one, int parallel, int series) =>
        parallel == 2 ? PumpCombination.InParallel([one, one], Source)
        : series == 2 ? PumpCombination.InSeries([one, one], Source)
        : one;

    /// <summary>A parabola through 200 points, in whatever units; the current only needs to be enough.</summary>
    private static PumpCurve Curve(
        double shutoff,
        double factor,
        double most,
        double flowUnit,
        double volts,
        double riseUnit
    ) =>
        new(
            ElectricPotential.FromVolts(volts),
            Enumerable
                .Range(0, 200)
                .Select(i => most * (199 - i) / 199)
                .Select(q => new PumpCurve.Point(
                    Pressure.FromPascals(riseUnit * (shutoff - (factor * q * q))),
                    VolumeFlow.FromCubicMetersPerSecond(q * flowUnit),
                    ElectricCurrent.FromAmperes(1e6)
                )),
            Source
        );

    private static double Meets(PumpCurve curve, Func<double, double> system)
    {
        (double low, double high) = (0, curve.GreatestFlow.CubicMetersPerSecond);
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            bool more = curve.RiseAt(VolumeFlow.FromCubicMetersPerSecond(middle)).Pascals > system(middle);
            (low, high) = more ? (middle, high) : (low, middle);
        }

        return low;
    }
}
