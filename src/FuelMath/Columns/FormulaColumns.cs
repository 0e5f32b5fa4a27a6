using System.Globalization;
using System.Runtime.Intrinsics;

namespace FuelMath.Formulas;

/// <summary>
/// Any listed formula over whole columns, such as a log, in the widest vectors of the machine. SI units.
/// </summary>
/// <remarks>
/// <para>
/// A row that a checked call would refuse gives "not a number" and is counted, so that one gap in a log does not stop the rest.
/// A result has the bits of <see cref="FormulaInfo.At{T}"/> in a vector, whatever its place, its neighbors, the length of
/// the run or the width of the vectors: pieces of a column may run on several threads. Without a logarithm or a power those
/// are the bits of a plain number, too; with one a result may differ in the last digits. Nothing is allocated.
/// </para>
/// <para>The results may be one of the inputs, row by row; they must not overlap one partly.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/ColumnExamples.cs" region="Run" />
/// </example>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public static partial class FormulaColumns
{
    private const int MostArguments = 16;

    /// <summary>Runs a formula; a bad row gives NaN and is counted.</summary>
    /// <param name="formula">The formula, listed or of your own; at most 16 arguments.</param>
    /// <param name="inputs">The inputs, in the order of the formula's arguments.</param>
    /// <param name="results">Receives the result of each row, in its SI unit.</param>
    /// <returns>The number of rows without a result, and the first of them.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// There are more or fewer inputs than arguments, a column has another length than the results, or overlaps them in part.
    /// </exception>
    public static ColumnReport Run(FormulaInfo formula, ReadOnlySpan<Input> inputs, Span<double> results)
    {
        ArgumentNullException.ThrowIfNull(formula);
        if (inputs.Length != formula.Arguments.Length || inputs.Length > MostArguments)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be {formula.Arguments.Length:exactly}, one for each argument of {formula.Name:part}, and at most {MostArguments:mostArguments}; there are {inputs.Length:value}.",
                nameof(inputs)
            );
        }

        foreach (ref readonly Input input in inputs)
        {
            if (input.IsColumn)
            {
                ColumnChecks.Shape(input.Column, nameof(inputs), results, nameof(results));
            }
        }

        return Vector512.IsHardwareAccelerated
            ? ColumnRunner.Run<WideLane>(formula, inputs, results)
            : ColumnRunner.Run<Lane>(formula, inputs, results);
    }

    /// <summary>Runs a formula over rows that must all have a result.</summary>
    /// <param name="formula">The formula, listed or of your own; at most 16 arguments.</param>
    /// <param name="inputs">The inputs, in the order of the formula's arguments.</param>
    /// <param name="results">
    /// Receives the result of each row, in its SI unit; NaN in bad rows, also when it throws.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    /// <exception cref="ArgumentException">As for <see cref="Run"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A row has no result.</exception>
    public static void RunStrict(FormulaInfo formula, ReadOnlySpan<Input> inputs, Span<double> results)
    {
        ColumnReport report = Run(formula, inputs, results);
        if (report.FirstBadRow is { } row)
        {
            throw Guard.Outside(
                report.FirstBadRow ?? 0,
                RefusalCode.NoResult,
                $"Every row must have a result of {formula.Name:part}; {report.BadRows:badRows} of {report.Rows:rows} have none, the first in row {row:index}.",
                nameof(inputs)
            );
        }
    }
}
