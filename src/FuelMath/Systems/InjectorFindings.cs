namespace FuelMath;

/// <summary>What there is to say of injectors: time, repeatability, pressure and voltage.</summary>
internal sealed class InjectorFindings(SolvedSystem solved)
{
    /// <summary>A mixture that is met differs from the one asked for by the tolerance of the rounds.</summary>
    private const double Rounding = 1e-6;

    internal void Find()
    {
        for (int s = 0; s < solved.Parts.Stages.Length; s++)
        {
            SystemState.StageResult stage = solved.Parts.Stages[s];
            if (stage.IsShut || solved.Point.Command.Kind == FuelCommand.CommandKind.AllOpen)
            {
                continue;
            }

            double duty = stage.DutyCycle.InSi();
            double limit = solved.System.Limits.DutyCycle.InSi();
            if (stage.IsHeldOpen)
            {
                solved.Add(
                    FindingCode.InjectorHeldOpen,
                    Severity.Danger,
                    stage.Name,
                    $"Injectors of stage '{stage.Name}' have no time left to close",
                    Shown.Percent(duty),
                    Shown.Percent(limit),
                    "Fit larger injectors, raise the rail pressure within what every part allows, or lower the demand: the mixture can no longer be metered."
                );
            }
            else if (duty > limit)
            {
                solved.Add(
                    FindingCode.DutyCycleHigh,
                    Severity.Warning,
                    stage.Name,
                    $"Duty cycle of stage '{stage.Name}' is high",
                    Shown.Percent(duty),
                    Shown.Percent(limit),
                    "Keep a reserve for heat, low voltage and aging: larger injectors, or more of the secondaries."
                );
            }

            if (
                solved.Parts.Injectors.FirstOrDefault(i => i.Stage == stage.Name && !i.Pulse.IsRepeatable) is
                { } wandering
            )
            {
                solved.Add(
                    FindingCode.PulseNotRepeatable,
                    Severity.Warning,
                    stage.Name,
                    $"Stage '{stage.Name}' is asked for a pulse shorter than its injectors repeat",
                    Shown.Milliseconds(wandering.Pulse.EffectiveWidth.InSi()).As(n => $"{n} after dead time"),
                    Shown.Milliseconds(wandering.Seat.Injector.SmallestRepeatableWidth.InSi()),
                    "The mixture will wander. Use smaller injectors for this range or a longer, less frequent pulse.",
                    wandering.Seat.Injector.Rating.Source
                );
            }
            else if (s == 0 && solved.IsAtLeastPulse(s) && Excess() is > Rounding and var excess)
            {
                double least = solved.System.Stages[s].Seats.Max(i => i.Injector.LeastEffectiveWidthSi);
                solved.Add(
                    FindingCode.PulseNotRepeatable,
                    Severity.Warning,
                    stage.Name,
                    $"Stage '{stage.Name}' would need a pulse shorter than its injectors repeat, and gets the shortest that they do",
                    $"{Show.Percent(excess)} more fuel than asked for",
                    Shown.Milliseconds(least).As(n => $"{n} after dead time"),
                    "The engine runs rich here, and no correction helps. Use smaller injectors for this range or a longer, less frequent pulse.",
                    solved.System.Stages[s].Seats[0].Injector.Rating.Source
                );
            }

            new PressureFindings(solved).Find(solved.System.Stages[s]);
        }

        LookAtInjectorVoltage();
    }

    /// <summary>Fuel beyond what was asked for, as a share of it.</summary>
    private double Excess() =>
        solved.Parts is { Target: { } asked, Lambda: { } reached } ? (asked.Si / reached.Si) - 1 : 0;

    private void LookAtInjectorVoltage()
    {
        SystemState.InjectorResult? lowest = solved.Parts.Injectors.Where(i => !i.IsShut).MinBy(i => i.Voltage.InSi());
        double limit = solved.System.Limits.VoltageDrop.InSi();
        if (lowest is not null && solved.Parts.SourceVolts - lowest.Voltage.InSi() is var drop && drop > limit)
        {
            solved.Add(
                FindingCode.InjectorVoltageLow,
                Severity.Warning,
                "injectors",
                "Voltage drop to the injectors is high",
                Shown.Volts(drop),
                Shown.Volts(limit),
                "Their dead time grows while the controller compensates for the voltage it measures: check supply, ground and contacts under load."
            );
        }
    }
}
