using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>A reducing regulator, one way: downstream = min(held - slope q - influence x
/// upstream, upstream - open q|q|).</summary>
/// <remarks>Seated means satisfied, fully open means starved.</remarks>
internal struct ReducingLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private T reference;
    private T held;
    private T slope;
    private T influence;
    private T open;
    private T first;
    private T usual;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public void Load(LinkPart part)
    {
        var regulator = (RegulatorPart)part;
        reference = T.Of(regulator.Reference);
        slope = T.Of(regulator.Slope);
        influence = T.Of(regulator.Influence);
    }

    /// <param name="pressure">The reference pressure, Pa gauge. <see cref="Carry"/> follows.</param>
    internal void SetReference(T pressure) => reference = pressure;

    /// <inheritdoc />
    public void Carry(LinkPart part, in Surroundings<T> around)
    {
        var regulator = (RegulatorPart)part;

        // Areas in units of the diaphragm less the seat, so that the force is a pressure. The supply is left to the
        // balance, which weighs it with the influence.
        T net = ReducingValve.HeldPressure(
            T.Of(regulator.Setting),
            reference,
            T.Of(0),
            1 + influence,
            influence,
            T.Of(0),
            T.Of(0)
        );
        held = net + around.HeadTo + (influence * around.HeadFrom);
        open = regulator.Square + BypassValve.FullyOpenLoss(T.Of(regulator.SquarePerDensity), around.Density, T.Of(1));
        first = RegulatorScale.Flow(open);
        usual = RegulatorScale.UsualSlope(first);
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> wide = open * (flow * Dual<T>.Abs(flow));
        Dual<T> holding = (slope * flow) - (Dual<T>)held;
        Mask<T> holds = IsHolding(wide.Number, holding.Number, up);
        return new(
            Dual<T>.Select(Dual<T>.Lift(holds), holding, wide) + Stiff.OneWay(flow, reverse),
            T.Select(holds, -influence, T.Of(1)),
            T.Of(1)
        );
    }

    /// <summary>
    /// The greatest pressure that it holds, Pa at elevation zero: at no flow, and with a supply that has decayed to the same
    /// pressure.
    /// </summary>
    internal readonly T Held => held / (1 + influence);

    /// <summary>Whether it regulates at a flow, rather than being open to its stop.</summary>
    internal readonly Mask<T> Holds(T flow, T up) => IsHolding(open * (flow * T.Abs(flow)), (slope * flow) - held, up);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly Mask<T> IsHolding(T wide, T holding, T up) => T.Less(-holding - (influence * up), up - wide);

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(-flow, T.Of(0));
}
