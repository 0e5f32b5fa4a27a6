using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A pump with a check valve whose rise is given by pieces over flow; extrapolated linearly beyond the ends.
/// </summary>
internal struct PumpTableLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private PieceTable<T> table;
    private T first;
    private T usual;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <summary>The flow of the first point.</summary>
    internal readonly T Begin => table.Begin;

    /// <summary>The flow of the last point.</summary>
    internal readonly T End => table.End;

    /// <inheritdoc />
    public void Load(LawSettings part)
    {
        table.Load(((PumpTableSettings)part).Pieces);
        Finish();
    }

    /// <inheritdoc />
    public T Set(ReadOnlySpan<T> settings, T flow)
    {
        table.Set(settings);
        Finish();
        return flow;
    }

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around) { }

    /// <inheritdoc />
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        return new(Stiff.OneWay(flow, reverse) - RiseAt(Dual<T>.Max(flow, Dual<T>.Of(0))));
    }

    /// <summary>The rise at a flow that is not negative, Pa.</summary>
    internal readonly Dual<T> RiseAt(Dual<T> forward) => table.At(forward);

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(-flow, T.Of(0));

    /// <summary>Computes the scales from the new pieces.</summary>
    private void Finish()
    {
        first = 0.5 * table.End;
        usual = T.Max(T.Abs(table.AtBegin), T.Abs(table.AtEnd)) / table.End;
    }
}
