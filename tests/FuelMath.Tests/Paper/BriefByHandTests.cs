using UnitsNet;

namespace FuelMath.Tests.Paper;

/// <summary>
/// The bundled brief, computed by hand: air by volume over time and the ideal gas, fuel by lambda and 14.6, flow by the roots of
/// pressure and density (gasoline 730 kg/m3, n-heptane 683.8 kg/m3; values from memory), 300 kPa across the injectors.
/// </summary>
public sealed class BriefByHandTests
{
    private const double Displacement = 3e-3;
    private const double StaticFlow = 270e-6 / 60 * 683.8 * 1.0332; // root of 730 / 683.8
    private const double DeadTime = 0.915e-3; // 0.9 ms at 14 V, at 13.8 V

    private static readonly BriefAssessment First = new(
        BriefDocument.ReadFile(BundledRuns.PathOf("circuit-car-brief.json"))
    );

    /// <summary>0.9 ms more or less of 17 ms is a percent or so; the hand takes no drop of voltage and no slope of the regulator.</summary>
    private const double ByHand = 0.012;

    [Theory]
    [InlineData(SystemBrief.Input.VolumetricEfficiency, 0.80, 1.10)]
    [InlineData(SystemBrief.Input.ChargeTemperature, 288.15, 343.15)]
    public void DutyAtPeak_OverAnEstimatesRange_IsThatOfTheHand(SystemBrief.Input input, double least, double greatest)
    {
        BriefAssessment.OutputMovement duty = Movement(input, BriefAssessment.Output.DutyCycle, "peak power");
        double Of(double value) =>
            input == SystemBrief.Input.VolumetricEfficiency ? Duty(value, 313.15) : Duty(0.95, value);
        Close.Within(ByHand, Duty(0.95, 313.15), duty.Value.DecimalFractions);
        Close.Within(ByHand, Of(least), duty.AtLeast!.Value.DecimalFractions);
        Close.Within(ByHand, Of(greatest), duty.AtGreatest!.Value.DecimalFractions);
    }

    /// <summary>At idle an injector is open for little longer than its dead time: what that is off by is missing or over.</summary>
    [Fact]
    public void LambdaAtIdle_OverTheRangeOfDeadTimes_IsThatOfTheHand()
    {
        BriefAssessment.OutputMovement lean = Movement(
            SystemBrief.Input.DeadTime,
            BriefAssessment.Output.LeanDeviation,
            "idle"
        );
        double effective = Air(0.95, 313.15, 38e3, 900) / 14.6 / StaticFlow * (120.0 / 900);
        double Lean(double dead) => (effective / (effective - (1.017 * (dead - 0.9e-3)))) - 1;
        Close.WithinOf(1, ByHand, Lean(1.5e-3), lean.AtGreatest!.Value.DecimalFractions);
        Close.WithinOf(1, ByHand, Lean(0.5e-3), lean.AtLeast!.Value.DecimalFractions);
    }

    /// <summary>Movement over the room to the limit: dead time 16.5 of 5 %, breathing 11.7 of 5.8 %, flow 5.3 of 4.7 %.</summary>
    [Fact]
    public void Order_IsThatOfTheHand() =>
        Assert.Equal(
            [
                SystemBrief.Input.DeadTime,
                SystemBrief.Input.VolumetricEfficiency,
                SystemBrief.Input.InjectorFlow,
                SystemBrief.Input.ChargeTemperature,
            ],
            First.Influences.Take(4).Select(i => i.Estimate.Input)
        );

    private static BriefAssessment.OutputMovement Movement(
        SystemBrief.Input input,
        BriefAssessment.Output output,
        string point
    ) =>
        First
            .Influences.Single(i => i.Estimate.Input == input)
            .Movements.Single(m => m.Output == output && m.Point == point);

    /// <summary>Air of one cylinder, kg/s, times the turns that it takes: two.</summary>
    private static double Air(double efficiency, double kelvins, double pascals, double rpm) =>
        efficiency * pascals / (287.05 * kelvins) * Displacement / 6 * rpm / 120;

    private static double Duty(double efficiency, double kelvins)
    {
        double period = 120.0 / 7000;
        double effective = Air(efficiency, kelvins, 98e3, 7000) / (14.6 * 0.88) / StaticFlow * period;
        return (effective + DeadTime) / period;
    }
}
