using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The findings of a predicted mixture.</summary>
internal sealed class MixtureChecks(FittedInjectors set, MixturePoint point)
{
    private static readonly DataSource ByDefinition = new("Definition", "total air over total fuel");

    private readonly List<Finding> found = [];

    internal ImmutableArray<Finding> Found => [.. found.OrderByDescending(f => f.Severity)];

    internal void LookAtBank(PredictedMixture.BankMixture bank, bool isClosedLoop, double? needed)
    {
        if (bank.IsAtLimit)
        {
            found.Add(
                CorrectionJudgement.Of(
                    needed,
                    (bank.RemainingCorrection?.InSi() ?? double.PositiveInfinity) > 1,
                    set.Limits.LowestCorrection.InSi(),
                    set.Limits.HighestCorrection.InSi(),
                    set.Limits.Source,
                    $" at '{point.Name}'",
                    bank.Bank
                )
            );
        }
        else if (isClosedLoop && bank.RemainingCorrection is { } rest && Math.Abs(rest.InSi() - 1) > 1e-6)
        {
            Add(
                FindingCode.CorrectionHunts,
                Severity.Warning,
                $"bank {bank.Bank}",
                $"No correction of bank {bank.Bank} meets the lambda at '{point.Name}'",
                $"lambda {Show.Lambda(bank.Lambda!.Value.Si)}",
                Show.Lambda(point.Target.Si),
                "The fuel jumps where a stage joins, or where the shortest pulses end, and the correction will hunt: correct what the controller was told about each stage."
            );
        }

        if (isClosedLoop && bank.Chambers.Length > 1)
        {
            found.Add(
                new(
                    FindingCode.SensorHidesChambers,
                    Severity.Note,
                    $"bank {bank.Bank}",
                    $"One sensor stands for {bank.Chambers.Length} chambers of bank {bank.Bank}",
                    $"correction {Show.Percent(bank.Correction.InSi())}",
                    "none",
                    ByDefinition,
                    "A chamber that misfires sends its oxygen to the sensor, which then reads falsely lean and adds fuel to all: rule out misfires before trusting a correction."
                )
            );
        }
    }

    internal void LookAtPulses(PointDelivery delivery, int[] chambers, double[] widths)
    {
        for (int s = 0; s < widths.Length; s++)
        {
            if (widths[s] == 0)
            {
                continue;
            }

            Injector.PulseResult[] pulses = [.. chambers.Select(c => delivery.Pulse(s, c, widths[s]))];
            string stage = set.Stages[s].Name;
            if (pulses.Any(p => p.IsHeldOpen))
            {
                Add(
                    FindingCode.InjectorHeldOpen,
                    Severity.Danger,
                    stage,
                    $"Injectors of stage '{stage}' have no time left to close at '{point.Name}'",
                    $"pulse {Show.Milliseconds(widths[s])}",
                    $"period {Show.Milliseconds(point.Cycle.InSi() / set.Stages[s].PulsesPerCycle)}",
                    "The mixture is no longer metered: larger injectors, more pressure, or less demand."
                );
            }

            if (Array.FindIndex(pulses, p => !p.IsRepeatable) is >= 0 and var short_)
            {
                Injector injector = set.Stages[s].Fitted[chambers[short_]];
                found.Add(
                    Finding.Of(
                        FindingCode.PulseNotRepeatable,
                        Severity.Warning,
                        stage,
                        $"Stage '{stage}' is asked for a pulse shorter than it repeats at '{point.Name}'",
                        Shown.Milliseconds(pulses[short_].EffectiveWidth.InSi()).As(n => $"{n} after dead time"),
                        Shown.Milliseconds(injector.LeastEffectiveWidthSi),
                        injector.Rating.Source,
                        "The mixture will wander: smaller injectors for this range, or fewer and longer pulses."
                    )
                );
            }
        }
    }

    internal void LookAtChambers(
        IReadOnlyList<PredictedMixture.ChamberMixture> chambers,
        IReadOnlyCollection<PredictedMixture.BankMixture> banks
    )
    {
        foreach (PredictedMixture.BankMixture bank in banks)
        {
            found.AddRange(
                new MixtureJudgement(
                    set.Fuel,
                    point.Target,
                    set.Limits.LeanDeviation.InSi(),
                    set.Limits.Source,
                    $" at '{point.Name}'",
                    banks.Count > 1 ? bank.Bank : null
                ).Of([.. bank.Chambers.Select(c => chambers[c - 1])], bank.Lambda)
            );
        }
    }

    private void Add(
        FindingCode code,
        Severity severity,
        string part,
        string what,
        Shown value,
        Shown limit,
        string action
    ) => found.Add(Finding.Of(code, severity, part, what, value, limit, set.Limits.Source, action));
}
