using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A straight passage with minor losses as computed by general water-network engines.</summary>
internal struct CubicPipeLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private RoundPassage<T> passage;
    private T roughness;

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
        roughness = T.Of(pipe.Roughness / pipe.Bore);
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
        Dual<T> factor = Friction.FactorWithCubicPassage<Dual<T>>(
            Dual<T>.Max(reynolds, Dual<T>.Of(Friction.LaminarUpTo)),
            roughness
        );
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
