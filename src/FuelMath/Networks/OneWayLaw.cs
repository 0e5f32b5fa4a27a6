using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Another law with a check valve.</summary>
internal struct OneWayLaw<T, TLaw> : ILinkLaw<OneWayLaw<T, TLaw>, T>
    where T : struct, IScalar<T>
    where TLaw : struct, ILinkLaw<TLaw, T>
{
    private TLaw law;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.NoisyLeast;

    /// <inheritdoc />
    public readonly T FirstFlow => law.FirstFlow;

    /// <inheritdoc />
    public readonly T UsualSlope => law.UsualSlope;

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        law = default;
        law.Load(settings);
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around) => law.Carry(settings, around);

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Balance<T> free = law.At(flow, up, down, reverse, ref memory);
        return new(free.Loss + Stiff.OneWay(flow, Stiff.CheckOver * reverse), free.Up, free.Down);
    }

    /// <inheritdoc />
    public static T Trespass(ref OneWayLaw<T, TLaw> law, T flow) => T.Max(-flow, T.Of(0));

    /// <inheritdoc />
    public static T Condition(ref OneWayLaw<T, TLaw> law, T flow, T up, T down, T noFlow) =>
        T.Select(T.Less(noFlow, flow), T.Of((int)Network.LineCondition.Open), T.Of((int)Network.LineCondition.Shut));
}
