using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A caller's law in the form of the solver.</summary>
internal struct CustomLaw<T, TLaw> : ILinkLaw<CustomLaw<T, TLaw>, T>
    where T : struct, IScalar<T>
    where TLaw : struct, IFlowLaw
{
    private TLaw law;
    private T density;
    private T viscosity;
    private T first;
    private T usual;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var given = (CustomSettings<TLaw>)settings;
        (law, first) = (given.Caller, T.Of(given.Usual));
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around)
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
    public static T Trespass(ref CustomLaw<T, TLaw> law, T flow)
    {
        T rate = law.law.Loss(new FlowPoint<Dual<T>>(Dual<T>.Variable(flow), law.density, law.viscosity)).Rate;
        return T.Select(T.Less(rate, T.Of(0)), T.Abs(flow), T.Of(0));
    }
}
