using System.Collections.Immutable;

namespace FuelMath.Workbooks;

/// <summary>The functions of cells, for an add-in to register in a loop.</summary>
/// <example>
/// <code source="../../tests/FuelMath.Examples/SheetFunctionExamples.cs" region="Loop" />
/// </example>
/// <seealso href="../guide/add-ins.html">Functions for an add-in</seealso>
public static class SheetFunctions
{
    /// <summary>All functions that need only cells.</summary>
    public static ImmutableArray<SheetFunction> All { get; } =
    [.. FormulaFunctions.All, TableFunctions.DeadTimeFromTable, UnitFunctions.ConvertUnit, UnitFunctions.NumberIn];

    /// <summary>The functions that read solved states: pressures, flows, pulse widths, lambda and the verdict at a point.</summary>
    /// <param name="assessments">
    /// Gives the assessment that the add-in keeps under a name, or null where it has none; called from any thread of
    /// the host. An assessment has its states solved, so that a cell only reads one.
    /// </param>
    /// <returns>The functions.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="assessments"/> is null.</exception>
    public static ImmutableArray<SheetFunction> OfAssessments(Func<string, SystemAssessment?> assessments)
    {
        ArgumentNullException.ThrowIfNull(assessments);
        return [.. DocumentFunctions.All(assessments)];
    }
}
