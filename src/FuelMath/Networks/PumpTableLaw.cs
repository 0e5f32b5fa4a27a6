using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A pump with a check valve whose rise is given by pieces over flow; extrapolated linearly beyond the ends.
/// </summary>
internal struct PumpTableLaw<T> : ILinkLaw<PumpTableLaw<T>, T>
    where T : struct, IScalar<T>
{
    private PieceTable<T> table;
    private T first;
    private T usual;
    private bool extend;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <summary>The flow of the first point.</summary>
    internal readonly T Begin => table.Begin;

    /// <summary>The flow of the last point.</summary>
    internal readonly T End => table.End;

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var pump = (PumpTableSettings)settings;
        extend = pump.Extend;
        table.Load(pump.Pieces);
        Finish();
    }

    /// <inheritdoc />
    public static T Set(ref PumpTableLaw<T> law, ReadOnlySpan<T> settings, T flow)
    {
        law.table.Set(settings);
        law.Finish();
        return flow;
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around) { }

    /// <inheritdoc />
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        return new(Stiff.OneWay(flow, reverse) - RiseAt(Dual<T>.Max(flow, Dual<T>.Of(0))));
    }

    /// <summary>The rise at a flow that is not negative, Pa.</summary>
    internal readonly Dual<T> RiseAt(Dual<T> forward) => table.At(forward);

    /// <inheritdoc />
    public static T Trespass(ref PumpTableLaw<T> law, T flow) => T.Max(-flow, T.Of(0));

    /// <inheritdoc />
    public static T Condition(ref PumpTableLaw<T> law, T flow, T up, T down, T noFlow) =>
        PumpSettings.Condition(ref law, flow, up, down, noFlow);

    /// <summary>Zero also for a pump that extrapolates, and for one held closed by its check valve.</summary>
    /// <inheritdoc />
    public static T OutsideData(ref PumpTableLaw<T> law, T flow)
    {
        T none = T.Of(0);
        if (law.extend)
        {
            return none;
        }

        // The slack of Guard.IsWithin; below a curve that begins at no flow the valve is shut.
        T span = law.End - law.Begin;
        Mask<T> near =
            T.Less(flow - law.End, Guard.EdgeTolerance * T.Min(span, law.End))
            & T.Less(law.Begin - flow, Guard.EdgeTolerance * T.Min(span, law.Begin));
        return T.Select(T.Less(flow, none) | near, none, T.Max(flow - law.End, law.Begin - flow));
    }

    /// <summary>Computes the scales from the new pieces.</summary>
    private void Finish()
    {
        first = 0.5 * table.End;
        usual = T.Max(T.Abs(table.AtBegin), T.Abs(table.AtEnd)) / table.End;
    }
}
