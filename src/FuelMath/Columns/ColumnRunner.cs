using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace FuelMath.Formulas;

/// <summary>Runs a formula over columns in the widest vectors of the machine.</summary>
/// <remarks>
/// The last rows, too few for a vector, are padded with the last row, so that the result of a row depends neither on
/// its place nor on its neighbors. Within a vector all rows are read before any is written.
/// </remarks>
internal static class ColumnRunner
{
    /// <summary>
    /// Runs the formula. The columns have been checked: equal lengths, numbers in range, no partial overlap.
    /// </summary>
    internal static void Run<TRow>(
        TRow row,
        ReadOnlySpan<double> a,
        ReadOnlySpan<double> b,
        ReadOnlySpan<double> c,
        Span<double> to
    )
        where TRow : struct, IRowFormula
    {
        if (Vector512.IsHardwareAccelerated)
        {
            RunIn<TRow, WideLane>(row, a, b, c, to);
        }
        else
        {
            RunIn<TRow, Lane>(row, a, b, c, to);
        }
    }

    /// <summary>Runs the formula in vectors of one width, whatever the machine; for tests as well.</summary>
    internal static void RunIn<TRow, TLane>(
        TRow row,
        ReadOnlySpan<double> a,
        ReadOnlySpan<double> b,
        ReadOnlySpan<double> c,
        Span<double> to
    )
        where TRow : struct, IRowFormula
        where TLane : struct, ILane<TLane>
    {
        int at = 0;
        for (; at <= to.Length - TLane.Count; at += TLane.Count)
        {
            TLane result = row.At(TLane.Load(a[at..]), TLane.Load(b[at..]), TLane.Load(c[at..]));
            TLane.Store(result, to[at..]);
        }

        if (at < to.Length)
        {
            TLane result = row.At(Rest<TLane>(a[at..]), Rest<TLane>(b[at..]), Rest<TLane>(c[at..]));
            Span<double> rest = stackalloc double[TLane.Count];
            TLane.Store(result, rest);
            rest[..(to.Length - at)].CopyTo(to[at..]);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static TLane Rest<TLane>(ReadOnlySpan<double> from)
        where TLane : struct, ILane<TLane>
    {
        Span<double> full = stackalloc double[TLane.Count];
        from.CopyTo(full);
        full[from.Length..].Fill(from[^1]);
        return TLane.Load(full);
    }
}
