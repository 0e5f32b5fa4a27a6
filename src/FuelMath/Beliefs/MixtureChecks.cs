using System.Collections.Immutable;
using FuelMath.Findings;
using FuelMath.Injectors;
using FuelMath.Internal;
using FuelMath.Quantities;
using FuelMath.Sources;

namespace FuelMath.Beliefs;

/// <summary>What there is to say of a predicted mixture.</summary>
internal sealed class MixtureChecks(FittedInjectors set, MixturePoint point)
{
    private static readonly DataSource ByDefinition = new("Definition", "total air over total fuel");

    private readonly List<Finding> found = [];

    internal ImmutableArray<Finding> Found => [.. found.OrderByDescending(f => f.Severity)];

    internal void LookAtBank(BankMixture bank, bool isClosedLoop)
    {
        if (bank.IsAtLimit)
        {
            double left = bank.RemainingCorrection?.InSi() ?? double.PositiveInfinity;
            Add(
                left > 1 ? Severity.Danger : Severity.Warning,
                $"The correction of bank {bank.Bank} is at its limit at '{point.Name}'",
                $"{Show.Percent(bank.Correction.InSi())} applied, {Show.Percent(left)} of that still needed",
                $"{Show.Percent(set.Limits.LowestCorrection.InSi())} to {Show.Percent(set.Limits.HighestCorrection.InSi())}",
                left > 1
                    ? "The mixture stays leaner than asked for: do not load the engine. Correct what the controller was told, or the injectors."
                    : "The mixture stays richer than asked for. Correct what the controller was told, or fit smaller injectors."
            );
        }
        else if (isClosedLoop && bank.RemainingCorrection is { } rest && Math.Abs(rest.InSi() - 1) > 1e-6)
        {
            Add(
                Severity.Warning,
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
                    Severity.Note,
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

            InjectorPulse[] pulses = [.. chambers.Select(c => delivery.Pulse(s, c, widths[s]))];
            string stage = set.Stages[s].Name;
            if (pulses.Any(p => p.IsHeldOpen))
            {
                Add(
                    Severity.Danger,
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
                    new(
                        Severity.Warning,
                        $"Stage '{stage}' is asked for a pulse shorter than it repeats at '{point.Name}'",
                        $"{Show.Milliseconds(pulses[short_].EffectiveWidth.InSi())} after dead time",
                        Show.Milliseconds(injector.LeastEffectiveWidthSi),
                        injector.Rating.Source,
                        "The mixture will wander: smaller injectors for this range, or fewer and longer pulses."
                    )
                );
            }
        }
    }

    internal void LookAtChambers(IReadOnlyList<ChamberMixture> chambers, IEnumerable<BankMixture> banks)
    {
        double limit = set.Limits.LeanDeviation.InSi();
        foreach (BankMixture bank in banks)
        {
            foreach (int chamber in bank.Chambers)
            {
                if (chambers[chamber - 1].Lambda is not { } lambda)
                {
                    Add(
                        Severity.Danger,
                        $"Chamber {chamber} gets no fuel at '{point.Name}'",
                        "no fuel",
                        $"lambda {Show.Lambda(point.Target.Si)}",
                        "The pulse ends inside the dead time: correct the dead time that the controller was told."
                    );
                }
                else if ((lambda.Si / point.Target.Si) - 1 > limit)
                {
                    bool hidden = bank.Lambda is { } seen && (seen.Si / point.Target.Si) - 1 <= limit;
                    Add(
                        Severity.Danger,
                        $"Chamber {chamber} runs leaner than asked for at '{point.Name}'"
                            + (hidden ? ", and the sensor does not show it" : ""),
                        $"lambda {Show.Lambda(lambda.Si)}",
                        $"{Show.Lambda(point.Target.Si)} within {Show.Percent(limit)}",
                        "Do not load the engine: clean, exchange or individually correct that injector first."
                    );
                }
            }
        }
    }

    private void Add(Severity severity, string what, string value, string limit, string action) =>
        found.Add(new(severity, what, value, limit, set.Limits.Source, action));
}
