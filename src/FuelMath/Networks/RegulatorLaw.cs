using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A regulator of either type, one way: the held pressure over flow, or that of the passage open to its stop.</summary>
/// <remarks>
/// <para>
/// Bypass: upstream = max(held + slope q - influence x downstream, downstream + open q|q|). Reducing: downstream =
/// min(held - slope q - influence x upstream, upstream - open q|q|).
/// </para>
/// <para>
/// The three states come out of one rising law: below no flow it is seated, which means satisfied for a reducing one; then it
/// regulates; then it is fully open, which means starved for a reducing one.
/// </para>
/// </remarks>
internal struct RegulatorLaw<T, TSide> : ILinkLaw<RegulatorLaw<T, TSide>, T>
    where T : struct, IScalar<T>
    where TSide : struct, IHeldSide
{
    /// <summary>The loss of the open passage where a cold start begins, Pa.</summary>
    private const double UsualLoss = 1e3;

    /// <summary>While it regulates, a regulator without slope has no scale of pressure of its own, Pa.</summary>
    private const double UsualPressure = 1e5;

    private T reference;
    private T held;
    private T slope;
    private T influence;
    private T open;
    private T first;
    private T usual;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public static T Set(ref RegulatorLaw<T, TSide> law, ReadOnlySpan<T> settings, T flow)
    {
        law.reference = settings[0];
        return flow;
    }

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var regulator = (RegulatorSettings)settings;
        reference = T.Of(regulator.Reference);
        slope = T.Of(regulator.Slope);
        influence = T.Of(regulator.Influence);
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around)
    {
        var regulator = (RegulatorSettings)settings;

        // Areas in units of the diaphragm less the seat, so that the force is a pressure. The pressure on the other side
        // is left to the law, which weighs it with the influence.
        T none = T.Of(0);
        T net = BypassValve.HeldPressure(
            T.Of(regulator.Setting),
            reference,
            none,
            1 + influence,
            influence,
            none,
            none
        );
        (T headHeld, T headOther) = TSide.IsUpstream
            ? (around.HeadFrom, around.HeadTo)
            : (around.HeadTo, around.HeadFrom);
        held = net + headHeld + (influence * headOther);
        open = BypassValve.FullyOpenLoss(T.Of(regulator.SquarePerDensity), around.Density, T.Of(1));
        first = T.Sqrt(UsualLoss / open);
        usual = UsualPressure / first;
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> wide = open * (flow * Dual<T>.Abs(flow));
        Dual<T> holding = (slope * flow) + (Dual<T>)(TSide.IsUpstream ? held : -held);
        Mask<T> holds = IsHolding(wide.Number, holding.Number, TSide.IsUpstream ? down : up);
        Dual<T> loss = Dual<T>.Select(Dual<T>.Lift(holds), holding, wide) + Stiff.OneWay(flow, reverse);
        T weight = T.Select(holds, -influence, T.Of(1));
        return TSide.IsUpstream ? new(loss, T.Of(1), weight) : new(loss, weight, T.Of(1));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly Mask<T> IsHolding(T wide, T holding, T other) =>
        TSide.IsUpstream
            ? T.Less(other + wide, holding - (influence * other))
            : T.Less(-holding - (influence * other), other - wide);

    /// <inheritdoc />
    public static T Trespass(ref RegulatorLaw<T, TSide> law, T flow) => T.Max(-flow, T.Of(0));

    /// <inheritdoc />
    public static T Condition(ref RegulatorLaw<T, TSide> law, T flow, T up, T down, T noFlow)
    {
        T wide = law.open * (flow * T.Abs(flow));
        T holding = (law.slope * flow) + (TSide.IsUpstream ? law.held : -law.held);
        Mask<T> holds = law.IsHolding(wide, holding, TSide.IsUpstream ? down : up);
        T opened = T.Select(
            holds,
            T.Of((int)Network.LineCondition.Regulating),
            T.Of((int)Network.LineCondition.FullyOpen)
        );
        return T.Select(T.Less(noFlow, flow), opened, T.Of((int)Network.LineCondition.Seated));
    }
}
