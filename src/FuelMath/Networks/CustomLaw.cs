using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A caller's law in the form of the solver.</summary>
internal struct CustomLaw<T, TLaw> : ILinkLaw<T>
    where T : struct, IScalar<T>
    where TLaw : struct, IFlowLaw
{
    private TLaw law;
    private T density;
    private T viscosity;
    private T first;
    private T usual;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public void Load(LawSettings part)
    {
        var settings = (CustomSettings<TLaw>)part;
        (law, first) = (settings.Caller, T.Of(settings.Usual));
    }

    /// <inheritdoc />
    public readonly T Set(ReadOnlySpan<T> settings, T flow) => flow;

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around)
    {
        (density, viscosity) = (around.Density, around.Viscosity);
        usual = law.Loss(new FlowPoint<T>(first, density, viscosity)) / first;
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        KeptRoot<Dual<T>> kept = new() { Root = memory };
        Dual<T> loss = law.Loss(new FlowPoint<Dual<T>>(flow, density, viscosity, ref kept));
        memory = kept.Root.Number;
        return new(loss);
    }

    /// <summary>The flow where the loss falls: the state there may not be the only one.</summary>
    public T Trespass(T flow)
    {
        T rate = law.Loss(new FlowPoint<Dual<T>>(Dual<T>.Variable(flow), density, viscosity)).Rate;
        return T.Select(T.Less(rate, T.Of(0)), T.Abs(flow), T.Of(0));
    }
}
