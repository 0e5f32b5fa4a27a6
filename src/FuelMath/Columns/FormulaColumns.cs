using System.Globalization;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace FuelMath.Formulas;

/// <summary>
/// Any listed formula over whole columns, such as a log, in the widest vectors of the machine. SI units.
/// </summary>
/// <remarks>
/// <para>
/// A row that a checked call would refuse gives NaN and is counted, so that a gap in a log does not stop the rest. A
/// result is bit-identical to <see cref="FormulaInfo.At{T}"/> in a vector, whatever its place, its neighbors or the
/// length of the run: pieces of a column may run on several threads. A formula with a logarithm or a power may differ
/// from a plain number by a few units in the last place; see <see cref="FrictionColumns"/>. One with bounds between its
/// arguments runs row by row. Nothing is allocated.
/// </para>
/// <para>The results may be one of the inputs, row by row; they must not overlap one partly.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/ColumnExamples.cs" region="Run" />
/// </example>
public static class FormulaColumns
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
    public static ColumnReport Run(FormulaInfo formula, ReadOnlySpan<ColumnInput> inputs, Span<double> results)
    {
        ArgumentNullException.ThrowIfNull(formula);
        if (inputs.Length != formula.Arguments.Length || inputs.Length > MostArguments)
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Must be {formula.Arguments.Length}, one for each argument of {formula.Name}, and at most {MostArguments}; there are {inputs.Length}."
                ),
                nameof(inputs)
            );
        }

        foreach (ref readonly ColumnInput input in inputs)
        {
            if (input.IsColumn)
            {
                ColumnChecks.Shape(input.Column, nameof(inputs), results, nameof(results));
            }
        }

        if (formula.Bounds.Length > 0)
        {
            RowByRow(formula, inputs, results);
        }
        else if (Vector512.IsHardwareAccelerated)
        {
            RunIn<WideLane>(formula, inputs, results);
        }
        else
        {
            RunIn<Lane>(formula, inputs, results);
        }

        return Judge(results);
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
    public static void RunStrict(FormulaInfo formula, ReadOnlySpan<ColumnInput> inputs, Span<double> results)
    {
        ColumnReport report = Run(formula, inputs, results);
        if (report.FirstBadRow is { } row)
        {
            throw new ArgumentOutOfRangeException(
                nameof(inputs),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Every row must have a result of {formula.Name}; {report.BadRows} of {report.Rows} have none, the first in row {row}."
                )
            );
        }
    }

    /// <summary>Runs the formula in vectors of one width, whatever the machine; for tests as well.</summary>
    internal static void RunIn<TLane>(FormulaInfo formula, ReadOnlySpan<ColumnInput> inputs, Span<double> results)
        where TLane : struct, ILane<TLane>
    {
        Row<TLane> row = default;
        Span<TLane> at = row;
        at = at[..inputs.Length];
        Row<TLane> lowest = default;
        Row<TLane> highest = default;
        TLane none = TLane.Of(double.NaN);
        Span<double> rest = stackalloc double[TLane.Count];
        for (int i = 0; i < inputs.Length; i++)
        {
            // Less is strict, and false for NaN.
            ((Span<TLane>)lowest)[i] = TLane.Of(Math.BitDecrement(FormulaChecks.Below(formula.Arguments[i].Minimum)));
            ((Span<TLane>)highest)[i] = TLane.Of(Math.BitIncrement(FormulaChecks.Above(formula.Arguments[i].Maximum)));
        }

        for (int from = 0; from < results.Length; from += TLane.Count)
        {
            int rows = Math.Min(TLane.Count, results.Length - from);
            Mask<TLane> isGood = TLane.Less(TLane.Of(0), TLane.Of(1));
            for (int i = 0; i < inputs.Length; i++)
            {
                ref readonly ColumnInput input = ref inputs[i];
                FormulaArgument argument = formula.Arguments[i];
                TLane value =
                    !input.IsColumn ? TLane.Of(input.Number)
                    : rows == TLane.Count ? TLane.Load(input.Column[from..])
                    : Rest<TLane>(input.Column[from..], rest);
                isGood = TLane.And(
                    isGood,
                    TLane.And(TLane.Less(((Span<TLane>)lowest)[i], value), TLane.Less(value, ((Span<TLane>)highest)[i]))
                );
                at[i] = TLane.Min(TLane.Max(value, TLane.Of(argument.Minimum)), TLane.Of(argument.Maximum));
            }

            TLane result = TLane.Select(isGood, formula.At<TLane>(at), none);
            if (rows == TLane.Count)
            {
                TLane.Store(result, results[from..]);
            }
            else
            {
                TLane.Store(result, rest);
                rest[..rows].CopyTo(results[from..]);
            }
        }
    }

    /// <summary>The last rows, filled up with the last of them.</summary>
    private static TLane Rest<TLane>(ReadOnlySpan<double> from, Span<double> full)
        where TLane : struct, ILane<TLane>
    {
        from.CopyTo(full);
        full[from.Length..].Fill(from[^1]);
        return TLane.Load(full);
    }

    private static void RowByRow(FormulaInfo formula, ReadOnlySpan<ColumnInput> inputs, Span<double> results)
    {
        Span<double> arguments = stackalloc double[inputs.Length];
        for (int at = 0; at < results.Length; at++)
        {
            for (int i = 0; i < arguments.Length; i++)
            {
                arguments[i] = inputs[i].IsColumn ? inputs[i].Column[at] : inputs[i].Number;
            }

            results[at] = formula.TryCalculate(FormulaUnits.Si, arguments, out double value, out _)
                ? value
                : double.NaN;
        }
    }

    /// <summary>Counts the rows without a finite result, and sets them to NaN.</summary>
    private static ColumnReport Judge(Span<double> results)
    {
        int bad = 0;
        int? first = null;
        int at = 0;
        while (at < results.Length)
        {
            if (at <= results.Length - Vector<double>.Count)
            {
                var block = new Vector<double>(results[at..]);
                if (Vector.EqualsAll(block - block, Vector<double>.Zero))
                {
                    at += Vector<double>.Count;
                    continue;
                }
            }

            int end = Math.Min(at + Vector<double>.Count, results.Length);
            for (; at < end; at++)
            {
                if (!double.IsFinite(results[at]))
                {
                    results[at] = double.NaN;
                    bad++;
                    first ??= at;
                }
            }
        }

        return new(results.Length, bad, first);
    }

    [InlineArray(MostArguments)]
    private struct Row<TLane>
    {
        private TLane first;
    }
}
