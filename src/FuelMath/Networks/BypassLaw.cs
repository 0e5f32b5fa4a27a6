using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A bypass regulator, one way: upstream = max(held + slope q - influence x downstream, downstream + open q|q|).
/// </summary>
/// <remarks>One rising law covers the three states: seated (below zero flow), regulating, and fully open.</remarks>
internal struct BypassLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private RegulatorBalance<T> valve;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => valve.First;

    /// <inheritdoc />
    public readonly T UsualSlope => valve.Usual;

    /// <inheritdoc />
    public T Set(ReadOnlySpan<T> settings, T flow)
    {
        valve.SetReference(settings[0]);
        return flow;
    }

    /// <inheritdoc />
    public void Load(LawSettings part) => valve.Load(part);

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around) =>
        valve.Carry(part, around.HeadFrom, around.HeadTo, around);

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> wide = valve.Open * (flow * Dual<T>.Abs(flow));
        Dual<T> holding = (valve.Slope * flow) + (Dual<T>)valve.Held;
        Mask<T> holds = IsHolding(wide.Number, holding.Number, down);
        return new(
            Dual<T>.Select(Dual<T>.Lift(holds), holding, wide) + Stiff.OneWay(flow, reverse),
            T.Of(1),
            T.Select(holds, -valve.Influence, T.Of(1))
        );
    }

    /// <summary>Whether it regulates at a flow, rather than being open to its stop.</summary>
    internal readonly Mask<T> Holds(T flow, T down) =>
        IsHolding(valve.Open * (flow * T.Abs(flow)), (valve.Slope * flow) + valve.Held, down);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly Mask<T> IsHolding(T wide, T holding, T down) =>
        T.Less(down + wide, holding - (valve.Influence * down));

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(-flow, T.Of(0));
}
