using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

[Properties(Arbitrary = [typeof(PumpArbitraries)])]
public sealed class PumpDriveTests
{
    /// <summary>A chopped supply: the motor's flow at the mean voltage, and the motor's power from the circuit.</summary>
    [Property]
    public void ByDuty_TakesNoMorePowerThanTheMotor(PumpKnots knots, Along place)
    {
        Pump pump = Chopped(knots, 0.9);
        var supply = ElectricPotential.FromVolts(13.5 / 0.9);
        Pressure rise = Pressure.FromBars(place.Between(knots.Bar[0], knots.Bar[^1]));

        PumpCurve motor = knots.ToCurve();
        PumpCurve fed = pump.CurveAt(supply);

        Close.Within(1e-12, (double)motor.ElectricPowerAt(rise).Watts, (double)fed.ElectricPowerAt(rise).Watts);
        Close.WithinOf(
            motor.GreatestFlow.LitersPerHour,
            2e-6,
            motor.FlowAt(rise).LitersPerHour,
            fed.FlowAt(rise).LitersPerHour
        );
        Assert.Contains("duty of 90 %", fed.EstimateBasis, StringComparison.Ordinal);
    }

    /// <summary>
    /// Example 7.33: 400 gal/min, 126 ft and 17.5 hp at 3500 rpm are 194.286 gal/min, 29.7257 ft and 2.00531 hp at 1700 rpm.
    /// The worked notebook gives fifteen digits; six are kept.
    /// </summary>
    [Fact]
    [Trait("Source", "TP-410")]
    public void BySpeed_OfThePublishedPump_GivesThePublishedPoint()
    {
        const double feet = 2989.0669;
        const double horsepower = 745.69987;
        PumpCurve.Point At(double head, double gallons) =>
            new(
                Pressure.FromPascals(head * feet),
                VolumeFlow.FromUsGallonsPerMinute(gallons),
                ElectricCurrent.FromAmperes(17.5 * horsepower / 100)
            );
        var volts = ElectricPotential.FromVolts(100);
        var curve = new PumpCurve(volts, [At(126, 400), At(140, 100)], PumpKnots.Source);

        PumpCurve slow = PumpEstimate.AtSpeed(curve, Ratio.FromDecimalFractions(1700.0 / 3500));

        Close.Within(3e-6, 194.286, slow.Points[0].Flow.UsGallonsPerMinute);
        Close.Within(3e-6, 29.7257, slow.Points[0].PressureRise.Pascals / feet);
        Close.Within(3e-6, 2.00531, (double)slow.ElectricPowerAt(slow.LeastPressureRise).Watts / horsepower);
    }

    /// <summary>"Ten percent more speed: ten percent more flow, 21 percent more head, 33 percent more power."</summary>
    [Property]
    public void AtSpeed_TenPercentMore_IsTheRuleOfTheTrade(PumpKnots knots)
    {
        PumpCurve curve = knots.ToCurve();
        PumpCurve fast = PumpEstimate.AtSpeed(curve, Ratio.FromPercent(110));

        for (int i = 0; i < curve.Points.Length; i++)
        {
            Close.Within(1e-12, 1.1 * curve.Points[i].Flow.LitersPerHour, fast.Points[i].Flow.LitersPerHour);
            Close.Within(1e-12, 1.21 * curve.Points[i].PressureRise.Bars, fast.Points[i].PressureRise.Bars);
            Close.Within(1e-12, 1.331 * curve.Points[i].Current.Amperes, fast.Points[i].Current.Amperes);
        }
    }

    /// <summary>
    /// No efficiency changes along corresponding points, at another speed as at another voltage. Where a curve ends level in
    /// pressure its flow is known to a millionth.
    /// </summary>
    [Property]
    public void Estimates_KeepTheEfficiencyOfCorrespondingPoints(PumpKnots knots)
    {
        PumpCurve curve = knots.ToCurve();
        PumpCurve weak = PumpEstimate.AtVoltage(curve, ElectricPotential.FromVolts(11));
        PumpCurve slow = PumpEstimate.AtSpeed(curve, Ratio.FromPercent(60));
        double before = curve.EfficiencyAt(curve.LeastPressureRise).DecimalFractions;

        Close.Within(2e-6, before, weak.EfficiencyAt(weak.LeastPressureRise).DecimalFractions);
        Close.Within(2e-6, before, slow.EfficiencyAt(slow.LeastPressureRise).DecimalFractions);
        Assert.Contains("scaled from 13.5 V", weak.EstimateBasis, StringComparison.Ordinal);
    }

    [Fact]
    public void BySpeed_AtAnyVoltage_HoldsTheFlowAndThePower()
    {
        Pump pump = Single()
            .WithDrive(
                "controlled",
                PumpDrive.BySpeed(
                    Ratio.FromPercent(80),
                    ElectricPotential.FromVolts(9),
                    ElectricPotential.FromVolts(16)
                )
            );
        Pressure rise = Pressure.FromBars(2);

        PumpCurve low = pump.CurveAt(ElectricPotential.FromVolts(9));
        PumpCurve high = pump.CurveAt(ElectricPotential.FromVolts(16));

        Assert.Equal(low.FlowAt(rise).LitersPerHour, high.FlowAt(rise).LitersPerHour, 1e-9);
        Assert.Equal((double)low.ElectricPowerAt(rise).Watts, (double)high.ElectricPowerAt(rise).Watts, 1e-9);
    }

    [Fact]
    public void CurveAt_BelowWhatTheControllerNeeds_IsRefused()
    {
        Pump pump = Single()
            .WithDrive(
                "controlled",
                PumpDrive.BySpeed(
                    Ratio.FromPercent(80),
                    ElectricPotential.FromVolts(9),
                    ElectricPotential.FromVolts(16)
                )
            );

        var refused = Assert.Throws<OutsideTableException>(() => pump.CurveAt(ElectricPotential.FromVolts(8)));

        Assert.Equal(9, refused.Minimum, 1e-12);
    }

    [Fact]
    public void BySpeed_WithTwoCurves_IsRefused()
    {
        PumpKnots knots = new([1, 5], [300, 100], [8, 12]);
        var pump = new Pump(
            "p",
            [knots.ToCurve(12, 0.9, 0.9), knots.ToCurve()],
            StandardFuels.NHeptane,
            PumpKnots.Source
        );

        var refused = Assert.Throws<ArgumentException>(() =>
            pump.WithDrive(
                "c",
                PumpDrive.BySpeed(
                    Ratio.FromPercent(80),
                    ElectricPotential.FromVolts(9),
                    ElectricPotential.FromVolts(16)
                )
            )
        );

        Words.Says("'p', 2", refused);
    }

    [Fact]
    public void ByDuty_OfNothing_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => PumpDrive.ByDuty(Ratio.FromPercent(2)));

        Words.Says("5 %, 100 %, 2 %", refused);
    }

    [Fact]
    public void AtVoltage_TooFarAway_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            PumpEstimate.AtVoltage(Single().Curves[0], ElectricPotential.FromVolts(6))
        );

        Words.Says("9.45 V, 17.55 V, 6 V", refused);
    }

    private static Pump Single() =>
        new("p", [new PumpKnots([1, 5], [300, 100], [8, 12]).ToCurve()], StandardFuels.NHeptane, PumpKnots.Source);

    private static Pump Chopped(PumpKnots knots, double duty) =>
        new Pump("p", [knots.ToCurve()], StandardFuels.NHeptane, PumpKnots.Source).WithDrive(
            "chopped",
            PumpDrive.ByDuty(Ratio.FromDecimalFractions(duty))
        );
}
