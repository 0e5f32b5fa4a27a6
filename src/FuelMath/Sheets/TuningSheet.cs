using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>The numbers that a tuner enters in an engine's controller, with the verdict that they depend on.</summary>
/// <remarks>
/// <para>
/// Every print begins with the verdict and the date of the data. For a system or set that must not run the instruction
/// says so in place of "enter". Each number has its conditions, its unit and the meaning of its uncertainty.
/// </para>
/// <para>
/// Caution: a lean cylinder destroys an engine. The sheet is no clearance to load it: verify with a sensor at light
/// load first.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SheetExamples.cs" region="Sheet" />
/// </example>
/// <seealso href="../guide/sheets.html">Sheets</seealso>
public sealed partial class TuningSheet
{
    /// <summary>The line width that fits A4 or letter paper, portrait, in a 9 point monospaced font.</summary>
    public const int PageWidth = 92;

    /// <summary>Creates the sheet of an assessment whose data have no date.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// It has no operating points, or a stage of its system without <see cref="InjectorStage.Belief"/>.
    /// </exception>
    public TuningSheet(SystemAssessment assessment)
        : this(assessment, null) { }

    private TuningSheet(SystemAssessment assessment, DateOnly? dated)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Points.IsEmpty)
        {
            throw Guard.Empty(nameof(assessment));
        }

        assessment.System.CheckBeliefs(nameof(assessment));
        (Assessment, Dated) = (assessment, dated);
        Instruction = Words(assessment.Verdict.Kind, assessment.Verdict.Reasons.FirstOrDefault());
        Stages = [.. assessment.System.Stages.Select(s => new StageSheet(assessment, s))];
        Common = [.. CommonTables.All(assessment)];
        Tables = [.. Stages.SelectMany(s => s.Tables), .. Common];
    }

    /// <summary>The assessment.</summary>
    public SystemAssessment Assessment { get; }

    /// <summary>The date of the data; null where not given.</summary>
    public DateOnly? Dated { get; }

    /// <summary>The instruction for the numbers.</summary>
    public string Instruction { get; }

    /// <summary>The part for each injector stage.</summary>
    public ImmutableArray<StageSheet> Stages { get; }

    /// <summary>The common tables: fuel, regulator, settings, operating points.</summary>
    public ImmutableArray<SheetTable> Common { get; }

    /// <summary>All tables, those of the stages first; their names differ.</summary>
    public ImmutableArray<SheetTable> Tables { get; }

    /// <summary>Creates the sheet of an assessment whose data have a date.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="dated">The date of the newest of its data.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <exception cref="ArgumentException">It has no operating points.</exception>
    public static TuningSheet FromDated(SystemAssessment assessment, DateOnly dated) => new(assessment, dated);

    /// <summary>The head: system, verdict, instruction, source and date of the data.</summary>
    /// <param name="width">The longest line, in characters; 60 or more.</param>
    /// <returns>The lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="width"/> is below 60.</exception>
    public ImmutableArray<string> Head(int width)
    {
        Guard.InRange(width, SheetText.Narrowest, 1000);
        FuelSystem system = Assessment.System;
        string date = Dated is { } day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "not stated";
        string[] paragraphs =
        [
            $"SHEET FOR TUNING: {system.Name}",
            $"VERDICT: {Verdict.Words(Assessment.Verdict.Kind).ToUpperInvariant()}",
            Instruction,
            $"Date of the data: {date}. Source: {system.Source}. Fuel: {system.Fuel.Name}.",
        ];
        return [.. paragraphs.SelectMany(p => SheetText.Wrap(p, width, ""))];
    }

    /// <summary>The whole sheet as text; no line is longer than the width.</summary>
    /// <param name="width">The longest line, in characters; 60 or more.</param>
    /// <returns>The lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="width"/> is below 60.</exception>
    public ImmutableArray<string> ToLines(int width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.AddRange(Head(width));
        foreach (StageSheet stage in Stages)
        {
            lines.Add("");
            lines.AddRange(SheetText.Wrap($"STAGE {stage.Stage}: {stage.Instruction}", width, ""));
            foreach (SheetTable table in stage.Tables)
            {
                lines.Add("");
                lines.AddRange(table.ToLines(width));
            }
        }

        foreach (SheetTable table in Common)
        {
            lines.Add("");
            lines.AddRange(table.ToLines(width));
        }

        lines.Add("");
        lines.AddRange(SheetText.Wrap(Caution, width, ""));
        return lines.ToImmutable();
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Stages.Length} stages, {Instruction}");

    internal const string Caution =
        "Before load: leak test at rail pressure, sensor reading at light load, then step by step. A predicted lambda is no "
        + "clearance. Makers' data, local codes and licensed practice come first.";

    internal static string Words(Verdict.Outcome kind, Finding? why)
    {
        string because = why is null ? "" : $" {why.What}: {why.Value}.";
        return kind switch
        {
            Verdict.Outcome.Holds => "Enter these numbers, then verify with a sensor at light load.",
            Verdict.Outcome.ActFirst => $"Act first, then enter these numbers.{because}",
            Verdict.Outcome.NotKnown =>
                $"Not known to be right: find out what is missing before you enter these numbers.{because}",
            _ => $"DO NOT RUN THE ENGINE LIKE THIS, and do not enter these numbers to run it.{because}",
        };
    }
}
