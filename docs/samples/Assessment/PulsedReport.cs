using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>Injectors that were pulsed on the bench, from a document of raw readings, and what each reading says.</summary>
internal sealed class PulsedReport
{
    private readonly List<(BenchedInjector Injector, PulseCharacterization Found)> all;

    internal PulsedReport(BenchRecord record)
    {
        Name = record.Name;
        all =
        [
            .. record
                .Injectors.Where(i => !i.Now.Pulses.IsEmpty)
                .Select(i => (i, new PulseCharacterization(i.Now.Pulses, Ratio.FromPercent(1), Ratio.FromPercent(95)))),
        ];
    }

    internal string Name { get; }

    internal IEnumerable<PulseCharacterization> Found => all.Select(a => a.Found);

    /// <summary>Two charts for each injector, with their words.</summary>
    internal IEnumerable<(string Title, string Chart, string Words)> Figures =>
        all.SelectMany(a =>
            new[]
            {
                (
                    $"Pulses of {a.Injector.Name}",
                    Charts.Finish(BenchCharts.Line(a.Found)),
                    $"Mass over pulse width: a line that meets no mass at {Say.Milliseconds(a.Found.DeadTime)} ms."
                ),
                (
                    $"Pulses of {a.Injector.Name} about their line",
                    Charts.Finish(BenchCharts.Departure(a.Found)),
                    $"Departure of the readings from that line, linear from {Say.Milliseconds(a.Found.LinearFrom)} ms."
                ),
            }
        );

    /// <summary>What each injector's readings say, a line each; lines that belong to the one before are indented.</summary>
    internal IEnumerable<string> Lines()
    {
        yield return $"Pulses on the bench: {Name}";
        foreach ((BenchedInjector injector, PulseCharacterization found) in all)
        {
            yield return (
                $"  {injector.Name} at {Say.Volts(found.AtInjector)} V and {Say.Bar(found.Conditions.DifferentialPressure)} bar, {found.Readings.Length} readings"
            );
            yield return (
                $"    static flow {Say.Number(found.StaticMassFlow.GramsPerSecond, "0.000")} g/s, dead time {Say.Milliseconds(found.DeadTime)} ms "
                + $"({Say.Milliseconds(found.DeadTimeLow)} to {Say.Milliseconds(found.DeadTimeHigh)} ms, 95 %)"
            );
            yield return (
                $"    linear from {Say.Milliseconds(found.LinearFrom)} to {Say.Milliseconds(found.LinearTo)} ms within {Say.Percent(found.LinearityTolerance)} %"
                + (
                    found.LinearityTest is { } test
                        ? $"; scatter alone would bend it so with probability {Say.Number(test.PValue.DecimalFractions, "0.00")}"
                        : ""
                )
            );
            for (int i = 0; i < found.Correction.EffectiveWidths.Length; i++)
            {
                yield return (
                    $"    {Say.Milliseconds(found.Correction.EffectiveWidths[i])} ms beyond the dead time: add {Say.Milliseconds(found.Correction.Corrections[i])} ms"
                );
            }

            if (!injector.Now.Leakage.IsEmpty)
            {
                var leak = new LeakageVerdict(
                    injector.Now.Leakage,
                    AcceptanceLimits.LeakageLimit.CommonPractice,
                    LeakageVerdict.DropVolume.Estimate,
                    Ratio.FromPercent(95)
                );
                yield return ($"    leakage {leak} (common practice: at most {leak.Limit}): {leak.Verdict}");
            }

            foreach (CoilVerdict.Reading coil in injector.Now.Coil)
            {
                yield return (
                    $"    coil {Say.Number(coil.Coil.AtTwentyCelsius.Ohms, "0.00")} ohm at 20 degC, {coil.Coil.Impedance} impedance (common practice)"
                );
            }

            foreach (Finding finding in found.Findings)
            {
                yield return ($"    {finding}");
            }
        }
    }
}
