using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A stopped pump: no flow in either direction.</summary>
internal struct StoppedLaw<T> : ILinkLaw<StoppedLaw<T>, T>
    where T : struct, IScalar<T>
{
    /// <inheritdoc />
    public readonly T FirstFlow => T.Of(0);

    /// <inheritdoc />
    public readonly T UsualSlope => T.Of(Stiff.JudgedByFlow);

    /// <inheritdoc />
    public void Load(LawSettings settings) { }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around) { }

    /// <inheritdoc />
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory) => new(reverse * flow);

    /// <inheritdoc />
    public static T Trespass(ref StoppedLaw<T> law, T flow) => T.Abs(flow);

    /// <inheritdoc />
    public static T Condition(ref StoppedLaw<T> law, T flow, T up, T down, T noFlow) =>
        T.Of((int)Network.LineCondition.Stopped);
}
