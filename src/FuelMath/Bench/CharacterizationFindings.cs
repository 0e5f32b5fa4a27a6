using System.Collections.Immutable;
using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Sources;
using UnitsNet.Units;

namespace FuelMath.Bench;

/// <summary>What is odd about a characterization.</summary>
internal static class CharacterizationFindings
{
    private static readonly DataSource Model = new("SAE-J1832", "straight line with a time offset");

    internal static ImmutableArray<Finding> Of(PulseCharacterization of)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        string dead = Guard.Show(of.DeadTime, DurationUnit.Millisecond);
        if (of.DeadTime.InSi() < 0)
        {
            findings.Add(
                new(
                    Severity.Warning,
                    "Dead time is negative: the line delivers before the pulse begins",
                    dead,
                    "not negative",
                    Model,
                    "Check whether the bench adds a dead time of its own, the unit of the widths, and the longest pulses."
                )
            );
        }

        if (of.Readings[0].WidthSi <= of.DeadTime.InSi())
        {
            findings.Add(
                new(
                    Severity.Note,
                    "Pulses deliver inside the dead time",
                    Guard.Show(of.Readings[0].PulseWidth, DurationUnit.Millisecond),
                    $"longer than the dead time of {dead}",
                    Model,
                    "They are left out of the short-pulse correction: do not command such pulses."
                )
            );
        }

        return findings.ToImmutable();
    }
}
