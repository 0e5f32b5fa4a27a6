using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Another law with a check valve.</summary>
internal struct OneWayLaw<T, TLaw> : ILinkLaw<T>
    where T : struct, IScalar<T>
    where TLaw : struct, ILinkLaw<T>
{
    private TLaw law;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.NoisyLeast;

    /// <inheritdoc />
    public readonly T FirstFlow => law.FirstFlow;

    /// <inheritdoc />
    public readonly T UsualSlope => law.UsualSlope;

    /// <inheritdoc />
    public T Set(ReadOnlySpan<T> settings, T flow) => law.Set(settings, flow);

    /// <inheritdoc />
    public void Load(LawSettings part)
    {
        law = default;
        law.Load(part);
    }

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around) => law.Carry(part, around);

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Balance<T> free = law.At(flow, up, down, reverse, ref memory);
        return new(free.Loss + Stiff.OneWay(flow, Stiff.CheckOver * reverse), free.Up, free.Down);
    }

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(-flow, T.Of(0));
}
