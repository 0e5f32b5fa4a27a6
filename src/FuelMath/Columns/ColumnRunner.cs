using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FuelMath.Formulas;

/// <summary>Runs a formula down columns, a block of rows at a time.</summary>
/// <remarks>
/// A block is checked argument by argument, computed by one call of the formula and judged, all within the first-level
/// cache: a column is read once, and the results are written once.
/// </remarks>
internal static class ColumnRunner
{
    /// <summary>
    /// Vectors in a block: with seven arguments of 512 bits it takes 9 kB. Larger ones gain nothing in the cache, and long
    /// columns take up to twice the time with them, because their memory is fetched while nothing is computed.
    /// </summary>
    private const int MostVectors = 16;

    private const int CacheLine = 64;

    /// <summary>
    /// Where the stack of a run ends within a line of the cache. The compiler keeps vectors on the stack wherever it ends, and
    /// where one lies in two lines a row of an injector's table takes a third longer: 9.0 instead of 6.8 ns. Left to itself
    /// the stack ends at another place in each process; of the four possible ones 16 and 48 are the quick ones.
    /// </summary>
    private const int StackEnd = 48;

    /// <summary>Runs the formula. The inputs have been checked: as many as arguments, equal lengths, no half overlap.</summary>
    internal static ColumnReport Run<TLane>(
        FormulaInfo formula,
        ReadOnlySpan<FormulaColumns.Input> inputs,
        Span<double> results
    )
        where TLane : struct, ILane<TLane>
    {
        if (results.IsEmpty)
        {
            return new(0, 0, null);
        }

        int vectors = Math.Min(MostVectors, ((results.Length - 1) / TLane.Count) + 1);
        int size = ((inputs.Length + 2) * vectors * Unsafe.SizeOf<TLane>()) + CacheLine;
        size += (int)((Address(stackalloc byte[CacheLine]) - size - StackEnd) & (CacheLine - 1));
        var block = new ColumnBlock<TLane>(formula, Aligned<TLane>(stackalloc byte[size]), vectors);
        block.Fix(inputs);
        int bad = 0;
        int? first = null;
        for (int from = 0; from < results.Length; from += vectors * TLane.Count)
        {
            Span<double> rows = results.Slice(from, Math.Min(vectors * TLane.Count, results.Length - from));
            block.Take(inputs, from, rows.Length);
            if (!block.Calculate(rows))
            {
                bad += Judge(rows, from, ref first);
            }
        }

        return new(results.Length, bad, first);
    }

    /// <summary>Makes each result that is not finite "not a number", and counts them.</summary>
    private static int Judge(Span<double> rows, int from, ref int? first)
    {
        int bad = 0;
        for (int row = 0; row < rows.Length; row++)
        {
            if (!double.IsFinite(rows[row]))
            {
                rows[row] = double.NaN;
                bad++;
                first ??= from + row;
            }
        }

        return bad;
    }

    /// <summary>The part that starts with a cache line, so that no vector lies across two.</summary>
    private static Span<TLane> Aligned<TLane>(Span<byte> memory)
        where TLane : struct, ILane<TLane>
    {
        return MemoryMarshal.Cast<byte, TLane>(memory[(int)(-Address(memory) & (CacheLine - 1))..]);
    }

    private static nint Address(Span<byte> memory) =>
        Unsafe.ByteOffset(ref Unsafe.NullRef<byte>(), ref MemoryMarshal.GetReference(memory));
}
