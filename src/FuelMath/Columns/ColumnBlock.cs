using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The rows of a run that are in work: their arguments, which of them are good, and their results.</summary>
/// <remarks>
/// The last rows, too few for a vector, are computed in one that is filled up with the last row, so that what a row
/// gives depends neither on its place nor on its neighbors. All rows are read before any is written.
/// </remarks>
internal ref struct ColumnBlock<TLane>
    where TLane : struct, ILane<TLane>
{
    private readonly FormulaInfo formula;
    private readonly int count;

    /// <summary>The arguments of each vector of rows, side by side as the formula reads them.</summary>
    private readonly Span<TLane> arguments;

    private readonly Span<TLane> found;

    /// <summary>A mask of good rows for each vector; filled in where not all are good.</summary>
    private readonly Span<TLane> good;

    private bool isFixedGood;
    private bool isAllGood;

    internal ColumnBlock(FormulaInfo formula, Span<TLane> memory, int vectors)
    {
        this.formula = formula;
        count = formula.Arguments.Length;
        arguments = memory[..(count * vectors)];
        found = memory.Slice(count * vectors, vectors);
        good = memory.Slice((count + 1) * vectors, vectors);
    }

    private static Mask<TLane> Yes => TLane.Less(TLane.Of(0), TLane.Of(1));

    /// <summary>Writes the numbers that are the same in all rows, once for all blocks.</summary>
    internal void Fix(ReadOnlySpan<FormulaColumns.Input> inputs)
    {
        isFixedGood = true;
        for (int i = 0; i < inputs.Length; i++)
        {
            if (!inputs[i].IsColumn)
            {
                TLane value = TLane.Of(inputs[i].Number);
                isFixedGood &= TLane.All(formula.Checks.Admit(i, ref value));
                for (int at = i; at < arguments.Length; at += count)
                {
                    arguments[at] = value;
                }
            }
        }
    }

    /// <summary>Reads rows and checks them. A number out of range is replaced, and its row marked.</summary>
    internal void Take(ReadOnlySpan<FormulaColumns.Input> inputs, int from, int rows)
    {
        isAllGood = true;
        if (!isFixedGood)
        {
            Mark(default);
        }

        for (int i = 0; i < inputs.Length; i++)
        {
            if (inputs[i].IsColumn && !Read(i, inputs[i].Column.Slice(from, rows)))
            {
                Repair(i, Vectors(rows));
            }
        }

        if (formula.Bounds.Length > 0)
        {
            Bound(Vectors(rows));
        }
    }

    /// <summary>Computes the rows and writes their results, "not a number" where a row is bad.</summary>
    /// <returns>Whether all are finite.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal readonly bool Calculate(Span<double> results)
    {
        int vectors = Vectors(results.Length);
        formula.Reading.Run<TLane>(arguments[..(vectors * count)], found[..vectors]);
        if (!isAllGood)
        {
            for (int v = 0; v < vectors; v++)
            {
                found[v] = TLane.Select(new(good[v]), found[v], TLane.Of(double.NaN));
            }
        }

        int whole = results.Length / TLane.Count;
        TLane sum = TLane.Of(0);
        for (int v = 0; v < whole; v++)
        {
            // Zero, unless it is infinite or not a number.
            sum += found[v] - found[v];
            TLane.Store(found[v], results[(v * TLane.Count)..]);
        }

        if (whole < vectors)
        {
            sum += found[whole] - found[whole];
            StoreRest(found[whole], results[(whole * TLane.Count)..]);
        }

        return TLane.All(TLane.LessOrEqual(sum, TLane.Of(0)));
    }

    private static int Vectors(int rows) => ((rows - 1) / TLane.Count) + 1;

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static TLane LoadRest(ReadOnlySpan<double> from)
    {
        Span<double> full = stackalloc double[TLane.Count];
        from.CopyTo(full);
        full[from.Length..].Fill(from[^1]);
        return TLane.Load(full);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void StoreRest(TLane result, Span<double> to)
    {
        Span<double> full = stackalloc double[TLane.Count];
        TLane.Store(result, full);
        full[..to.Length].CopyTo(to);
    }

    /// <summary>Reads a column; says whether every number lies strictly in its range, as in most blocks.</summary>
    private readonly bool Read(int argument, ReadOnlySpan<double> column)
    {
        int whole = column.Length / TLane.Count;
        bool isAllInside = ReadWhole(argument, column[..(whole * TLane.Count)]);
        if (whole * TLane.Count < column.Length)
        {
            TLane value = LoadRest(column[(whole * TLane.Count)..]);
            arguments[(whole * count) + argument] = value;
            FormulaInfo.Argument range = formula.Arguments[argument];
            isAllInside &=
                TLane.All(TLane.LessOrEqual(TLane.Of(range.Minimum), value))
                && TLane.All(TLane.LessOrEqual(value, TLane.Of(range.Maximum)));
        }

        return isAllInside;
    }

    /// <summary>The rows that fill vectors. It calls nothing, so that its limits stay in registers.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private readonly bool ReadWhole(int argument, ReadOnlySpan<double> column)
    {
        TLane minimum = TLane.Of(formula.Arguments[argument].Minimum);
        TLane maximum = TLane.Of(formula.Arguments[argument].Maximum);
        Mask<TLane> isInside = TLane.LessOrEqual(minimum, maximum);
        for (int at = argument; column.Length >= TLane.Count; at += count)
        {
            TLane value = TLane.Load(column);
            isInside = TLane.And(isInside, TLane.LessOrEqual(minimum, value));
            isInside = TLane.And(isInside, TLane.LessOrEqual(value, maximum));
            arguments[at] = value;
            column = column[TLane.Count..];
        }

        return TLane.All(isInside);
    }

    /// <summary>Marks rows whose number lies out of range, and puts one into its place that the formula takes.</summary>
    private void Repair(int argument, int vectors)
    {
        Mark(Yes);
        for (int v = 0; v < vectors; v++)
        {
            good[v] = TLane
                .And(new(good[v]), formula.Checks.Admit(argument, ref arguments[(v * count) + argument]))
                .Bits;
        }
    }

    /// <summary>Marks rows in which a bound between arguments does not hold.</summary>
    private void Bound(int vectors)
    {
        for (int v = 0; v < vectors; v++)
        {
            Mask<TLane> holds = formula.Checks.Hold<TLane>(arguments.Slice(v * count, count));
            if (!TLane.All(holds))
            {
                Mark(Yes);
                good[v] = TLane.And(new(good[v]), holds).Bits;
            }
        }
    }

    /// <summary>Starts the masks, unless they have been.</summary>
    private void Mark(Mask<TLane> from)
    {
        if (isAllGood)
        {
            good.Fill(from.Bits);
            isAllGood = false;
        }
    }
}
