using FuelMath.Findings;
using FuelMath.Internal;

namespace FuelMath.Systems;

/// <summary>What there is to say of injectors: time, repeatability, pressure and voltage.</summary>
internal sealed class InjectorFindings(SolvedSystem solved)
{
    internal void Look()
    {
        for (int s = 0; s < solved.Parts.Stages.Length; s++)
        {
            StageResult stage = solved.Parts.Stages[s];
            if (stage.IsShut || solved.Point.Command.Kind == FuelCommandKind.AllOpen)
            {
                continue;
            }

            double duty = stage.DutyCycle.InSi();
            double limit = solved.System.Limits.DutyCycle.InSi();
            if (stage.IsHeldOpen)
            {
                solved.Add(
                    Severity.Danger,
                    $"The {stage.Name} injectors have no time left to close",
                    Show.Percent(duty),
                    Show.Percent(limit),
                    "Fit larger injectors, raise the rail pressure within what every part allows, or lower the demand: the mixture can no longer be metered."
                );
            }
            else if (duty > limit)
            {
                solved.Add(
                    Severity.Warning,
                    $"Duty cycle of the {stage.Name} injectors is high",
                    Show.Percent(duty),
                    Show.Percent(limit),
                    "Keep a reserve for heat, low voltage and ageing: larger injectors, or more of the secondaries."
                );
            }

            if (
                solved.Parts.Injectors.FirstOrDefault(i => i.Stage == stage.Name && !i.Pulse.IsRepeatable) is
                { } wandering
            )
            {
                solved.Add(
                    Severity.Warning,
                    $"The {stage.Name} injectors are asked for a pulse shorter than they repeat",
                    $"{Show.Milliseconds(wandering.Pulse.EffectiveWidth.InSi())} after dead time",
                    Show.Milliseconds(wandering.Seat.Injector.SmallestRepeatableWidth.InSi()),
                    "The mixture will wander. Use smaller injectors for this range or a longer, less frequent pulse.",
                    wandering.Seat.Injector.Rating.Source
                );
            }

            LookAtDifferentialPressure(solved.System.Stages[s]);
        }

        LookAtInjectorVoltage();
    }

    private void LookAtDifferentialPressure(InjectorStage stage)
    {
        double believed = stage.Belief.DifferentialPressure.InSi();
        double limit = solved.System.Limits.PressureDeviation.InSi();
        InjectorResult? worst = solved
            .Parts.Injectors.Where(i => i.Stage == stage.Name)
            .MaxBy(i => Math.Abs(i.DifferentialPressure.InSi() - believed));
        if (worst is null)
        {
            return;
        }

        double off = (worst.DifferentialPressure.InSi() / believed) - 1;
        if (Math.Abs(off) > limit)
        {
            solved.Add(
                off < -0.15 ? Severity.Danger : Severity.Warning,
                $"Injector differential pressure at '{worst.Seat.Node}' is not what the controller was told",
                $"{Show.Bar(worst.DifferentialPressure.InSi())}, {Show.Percent(Math.Abs(off))} {(off < 0 ? "below" : "above")} {Show.Bar(believed)}",
                $"within {Show.Percent(limit)}",
                off < 0
                    ? "Less fuel passes at the same pulse width: find the pressure loss, or give the controller a measured pressure."
                    : "More fuel passes at the same pulse width: find what lifts the pressure, or give the controller a measured pressure."
            );
        }
    }

    private void LookAtInjectorVoltage()
    {
        InjectorResult? lowest = solved.Parts.Injectors.Where(i => !i.IsShut).MinBy(i => i.Voltage.InSi());
        double limit = solved.System.Limits.VoltageDrop.InSi();
        if (lowest is not null && solved.Point.Supply.InSi() - lowest.Voltage.InSi() is var drop && drop > limit)
        {
            solved.Add(
                Severity.Warning,
                "Voltage drop to the injectors is high",
                Show.Volts(drop),
                Show.Volts(limit),
                "Their dead time grows while the controller compensates for the voltage it measures: check supply, ground and contacts under load."
            );
        }
    }
}
