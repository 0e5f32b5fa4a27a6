using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A straight passage with minor losses, by a choice of friction factor.</summary>
/// <remarks>
/// The root of an implicit factor is kept and improved by one Newton step per iteration, in <see cref="Dual{T}"/>, so it
/// converges together with the flows and its slope is exact. The formulas are those of <see cref="Friction"/>.
/// </remarks>
internal struct PipeLaw<T, TFriction> : ILinkLaw<PipeLaw<T, TFriction>, T>
    where T : struct, IScalar<T>
    where TFriction : struct, IPipeFriction
{
    private RoundPassage<T> passage;
    private T rough;

    /// <inheritdoc />
    public static bool IsCostly => TFriction.IsCostly;

    /// <inheritdoc />
    public readonly T FirstFlow => passage.First;

    /// <inheritdoc />
    public readonly T UsualSlope => passage.Usual;

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var pipe = (PipeSettings)settings;
        passage.Load(pipe);
        rough = T.Of(TFriction.Rough(pipe.Roughness / pipe.Bore));
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around) => passage.Carry((PipeSettings)settings, around);

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> size = Dual<T>.Abs(flow);
        Dual<T> square = passage.Dynamic * (flow * size);
        Dual<T> reynolds = passage.ReynoldsPerFlow * size;
        Dual<T> root = memory;
        Dual<T> factor = TFriction.Factor<Dual<T>>(reynolds, rough, ref root);
        memory = root.Number;
        Dual<T> friction = Dual<T>.Select(
            Dual<T>.Less(reynolds, Dual<T>.Of(Friction.LaminarUpTo)),
            passage.Laminar * flow,
            passage.Slender * (factor * square)
        );
        return new(friction + (passage.Minor * square));
    }
}
