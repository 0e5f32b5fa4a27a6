using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A straight passage with minor losses: laminar, linear transition, Colebrook and White.</summary>
/// <remarks>
/// The root of the implicit law is kept and improved by one Newton step per iteration, in <see cref="Dual{T}"/>, so it
/// converges together with the flows and its slope is exact. The formulas are those of <see cref="Friction"/>.
/// </remarks>
internal struct PipeLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private RoundPassage<T> passage;
    private T rough;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => passage.First;

    /// <inheritdoc />
    public readonly T UsualSlope => passage.Usual;

    /// <inheritdoc />
    public readonly T Set(ReadOnlySpan<T> settings, T flow) => flow;

    /// <inheritdoc />
    public void Load(LawSettings part)
    {
        var pipe = (PipeSettings)part;
        passage.Load(pipe);
        rough = T.Of(pipe.Roughness / pipe.Bore / 3.7);
    }

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around) => passage.Carry((PipeSettings)part, around);

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> size = Dual<T>.Abs(flow);
        Dual<T> square = passage.Dynamic * (flow * size);
        Dual<T> reynolds = passage.ReynoldsPerFlow * size;
        Dual<T> root = Friction.TurbulentRootFrom<Dual<T>>(memory, reynolds, rough);
        memory = root.Number;
        Dual<T> factor = Friction.FactorAboveLaminar(reynolds, 1 / (root * root));
        Dual<T> friction = Dual<T>.Select(
            Dual<T>.Less(reynolds, Dual<T>.Of(Friction.LaminarUpTo)),
            passage.Laminar * flow,
            passage.Slender * (factor * square)
        );
        return new(friction + (passage.Minor * square));
    }

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Of(0);
}
