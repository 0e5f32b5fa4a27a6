using System.Collections.Immutable;

namespace FuelMath.Bench;

/// <summary>Findings on corrections of pulse widths that are made twice, or not at all.</summary>
internal static class ControllerFindings
{
    private static readonly DataSource Rule = new("Definition", "each correction is made once");

    internal static ImmutableArray<Finding> Of(BenchConditions readings, WidthCorrections controller)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        WidthCorrections twice = readings.Widths & controller;
        if (twice != WidthCorrections.None)
        {
            findings.Add(
                new(
                    FindingCode.WidthsCorrectedTwice,
                    Severity.Warning,
                    "controller",
                    $"Widths would be corrected twice for {CorrectionWords.Of(twice)}",
                    readings.Driven,
                    "plain widths",
                    Rule,
                    "Take the readings again with plain widths, or switch that correction off in the controller."
                )
            );
        }

        WidthCorrections never =
            (WidthCorrections.Voltage | WidthCorrections.Pressure) & ~readings.Widths & ~controller;
        if (never != WidthCorrections.None)
        {
            findings.Add(
                new(
                    FindingCode.WidthsNotCorrected,
                    Severity.Note,
                    "controller",
                    $"Nobody corrects widths for {CorrectionWords.Of(never)}",
                    readings.Driven,
                    "each once",
                    Rule,
                    "The data hold at the voltage and pressure of the readings only; allow for others yourself."
                )
            );
        }

        return findings.ToImmutable();
    }
}
