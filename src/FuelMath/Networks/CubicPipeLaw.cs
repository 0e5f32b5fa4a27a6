using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>A straight passage with minor losses as general water-network engines compute it.</summary>
internal struct CubicPipeLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private T laminar;
    private T dynamic;
    private T reynoldsPerFlow;
    private T roughness;
    private double slender;
    private double minor;
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
        var pipe = (PipePart)part;
        (slender, minor) = (pipe.Length / pipe.Bore, pipe.LossCoefficient);
        roughness = T.Of(pipe.Roughness / pipe.Bore);
    }

    /// <inheritdoc />
    public void Carry(LinkPart part, in Surroundings<T> around)
    {
        T bore = T.Of(((PipePart)part).Bore);
        T velocity = Friction.Velocity(T.Of(1), bore);
        dynamic = MinorLoss.PressureLoss(T.Of(1), around.Density, velocity);
        reynoldsPerFlow = Friction.Reynolds(velocity, bore, around.Density, around.Viscosity);
        laminar = Friction.LaminarFactor(reynoldsPerFlow) * slender * dynamic;
        first = PipeScale.Velocity / velocity;
        usual = PipeScale.UsualSlope(dynamic, slender, minor, first);
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> size = Dual<T>.Abs(flow);
        Dual<T> square = dynamic * (flow * size);
        Dual<T> reynolds = reynoldsPerFlow * size;
        Dual<T> factor = Friction.FactorWithCubicPassage<Dual<T>>(
            Dual<T>.Max(reynolds, Dual<T>.Of(Friction.LaminarUpTo)),
            roughness
        );
        Dual<T> friction = Dual<T>.Select(
            Dual<T>.Less(reynolds, Dual<T>.Of(Friction.LaminarUpTo)),
            laminar * flow,
            slender * (factor * square)
        );
        return new(friction + (minor * square));
    }

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Of(0);
}
