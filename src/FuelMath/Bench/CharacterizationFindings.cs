using System.Collections.Immutable;
using UnitsNet.Units;

namespace FuelMath.Bench;

/// <summary>The findings of a characterization.</summary>
internal static class CharacterizationFindings
{
    private static readonly DataSource Model = new("SAE-J1832", "straight line with a time offset");

    private static readonly DataSource LackOfFit = new("Draper-Smith-1998", "test for lack of fit");

    internal static ImmutableArray<Finding> Of(PulseCharacterization of)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        string dead = Guard.Show(of.DeadTime, DurationUnit.Millisecond);
        if (of.DeadTime.InSi() < 0)
        {
            findings.Add(
                new Finding(
                    FindingCode.DeadTimeNegative,
                    Severity.Warning,
                    "injector",
                    "Dead time is negative: the line delivers before the pulse begins",
                    dead,
                    "not negative",
                    Model,
                    "Check whether the bench adds a dead time of its own, the unit of the widths, and the longest pulses."
                ).WithQuantities(of.DeadTime, SiUnits.Duration(0))
            );
        }

        if (of.Readings[0].WidthSi <= of.DeadTime.InSi())
        {
            findings.Add(
                new(
                    FindingCode.DeliveryInsideDeadTime,
                    Severity.Note,
                    "injector",
                    "Pulses deliver inside the dead time",
                    Guard.Show(of.Readings[0].PulseWidth, DurationUnit.Millisecond),
                    $"longer than the dead time of {dead}",
                    Model,
                    "They are left out of the short-pulse correction: do not command such pulses."
                )
            );
        }

        if (of.Conditions.Widths != WidthCorrections.None)
        {
            findings.Add(
                new(
                    FindingCode.WidthsCorrectedTwice,
                    Severity.Warning,
                    "readings",
                    $"The widths were already corrected for {CorrectionWords.Of(of.Conditions.Widths)}",
                    of.Conditions.Driven,
                    "plain widths",
                    Model,
                    "Do not enter this dead time or flow where that correction is made: it would be made twice."
                )
            );
        }

        if (of.LinearityTest is { } test && test.PValue.InSi() < 1 - of.Confidence.InSi())
        {
            findings.Add(
                new(
                    FindingCode.LineBent,
                    Severity.Warning,
                    "readings",
                    "Repeats scatter less than the means depart from the line",
                    FormattableString.Invariant($"probability {test.PValue.InSi():0.####}"),
                    FormattableString.Invariant($"at least {1 - of.Confidence.InSi():0.####}"),
                    LackOfFit,
                    "The line is bent or the widths are not what they say; the interval of scatter alone is too short. Take a smaller tolerance."
                )
            );
        }

        return findings.ToImmutable();
    }
}
