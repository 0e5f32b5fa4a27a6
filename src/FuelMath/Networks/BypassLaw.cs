using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>
/// A bypass regulator, one way: upstream = max(held + slope q - influence x downstream, downstream + open q|q|).
/// </summary>
/// <remarks>The three states come out of one rising law: seated below no flow, regulating, and fully open.</remarks>
internal struct BypassLaw<T> : ILinkLaw<T>
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

        // Areas in units of the diaphragm less the seat, so that the force is a pressure. The return pressure is left
        // to the balance, which weighs it with the influence.
        T net = BypassValve.HeldPressure(
            T.Of(regulator.Setting),
            reference,
            T.Of(0),
            1 + influence,
            influence,
            T.Of(0),
            T.Of(0)
        );
        held = net + around.HeadFrom + (influence * around.HeadTo);
        open = regulator.Square + BypassValve.FullyOpenLoss(T.Of(regulator.SquarePerDensity), around.Density, T.Of(1));
        first = RegulatorScale.Flow(open);
        usual = RegulatorScale.UsualSlope(first);
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> wide = open * (flow * Dual<T>.Abs(flow));
        Dual<T> holding = (slope * flow) + (Dual<T>)held;
        Mask<T> holds = IsHolding(wide.Number, holding.Number, down);
        return new(
            Dual<T>.Select(Dual<T>.Lift(holds), holding, wide) + Stiff.OneWay(flow, reverse),
            T.Of(1),
            T.Select(holds, -influence, T.Of(1))
        );
    }

    /// <summary>Whether it regulates at a flow, rather than being open to its stop.</summary>
    internal readonly Mask<T> Holds(T flow, T down) =>
        IsHolding(open * (flow * T.Abs(flow)), (slope * flow) + held, down);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly Mask<T> IsHolding(T wide, T holding, T down) => T.Less(down + wide, holding - (influence * down));

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(-flow, T.Of(0));
}
