using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A stopped pump: no flow in either direction.</summary>
internal struct StoppedLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => T.Of(0);

    /// <inheritdoc />
    public readonly T UsualSlope => T.Of(Stiff.JudgedByFlow);

    /// <inheritdoc />
    public readonly T Set(ReadOnlySpan<T> settings, T flow) => flow;

    /// <inheritdoc />
    public void Load(LawSettings part) { }

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around) { }

    /// <inheritdoc />
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory) => new(reverse * flow);

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Abs(flow);
}
