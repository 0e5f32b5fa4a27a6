using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What stands behind the verdict of an assessment, as tables for print, CSV and JSON.</summary>
/// <remarks>
/// <para>
/// Verdicts and findings, then for each operating point what was given, pressures along the path, flows, pumps, surge
/// tanks, lambda of each chamber, pulsing and the evidence of the solver, then sets of injectors on the bench and the
/// contributions of uncertain inputs. A table that would be empty is left out. The numbers that a tuner enters are in a
/// <see cref="TuningSheet"/>.
/// </para>
/// <para>
/// Caution: predicted numbers are no clearance to load an engine: verify with a gauge, and with a sensor at light load.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SheetExamples.cs" region="Tables" />
/// </example>
/// <seealso href="../guide/sheets.html">Sheets</seealso>
public sealed class AssessmentTables
{
    /// <summary>Makes the tables of an assessment.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    public AssessmentTables(SystemAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        Assessment = assessment;
        Judgement = [VerdictTables.Verdicts(assessment), VerdictTables.Findings(assessment)];
        Evidence =
        [
            .. NotEmpty([.. StateTables.All(assessment), .. BenchTables.All(assessment), .. Scatter(assessment)]),
        ];
        All = [.. NotEmpty(Judgement), .. Evidence];
    }

    /// <summary>The assessment.</summary>
    public SystemAssessment Assessment { get; }

    /// <summary>The verdict on each point and set, then every finding with the places where it holds.</summary>
    public ImmutableArray<SheetTable> Judgement { get; }

    /// <summary>The numbers behind them, those of the operating points first.</summary>
    public ImmutableArray<SheetTable> Evidence { get; }

    /// <summary>All tables that have rows; their names differ.</summary>
    public ImmutableArray<SheetTable> All { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{All.Length} tables of {Assessment}");

    private static IEnumerable<SheetTable> Scatter(SystemAssessment assessment) =>
        assessment.Shares.IsEmpty ? [] : [ScatterTable.Of(assessment)];

    private static IEnumerable<SheetTable> NotEmpty(IEnumerable<SheetTable> tables) =>
        tables.Where(t => !t.Rows.IsEmpty);
}
