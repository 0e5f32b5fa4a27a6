using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>A passage that is bent all along its length, with minor losses: see <see cref="CurvedFriction.Factor"/>.</summary>
/// <remarks>The root of the implicit law is kept as in <see cref="PipeLaw{T}"/>.</remarks>
internal struct CurvedPipeLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private T laminar;
    private T dynamic;
    private T reynoldsPerFlow;
    private T rough;
    private T curvature;
    private T addition;
    private double slender;
    private double minor;
    private T first;
    private T usual;
    private T most;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public void Load(LinkPart part)
    {
        var pipe = (CurvedPart)part;
        (slender, minor) = (pipe.Length / pipe.Bore, pipe.LossCoefficient);
        rough = T.Of(pipe.Roughness / pipe.Bore / 3.7);
        curvature = T.Of(pipe.Curvature);
        addition = CurvedFriction.ItoTurbulentAddition(curvature);
    }

    /// <inheritdoc />
    public void Carry(LinkPart part, in Surroundings<T> around)
    {
        var pipe = (CurvedPart)part;
        T bore = T.Of(pipe.Bore);
        T velocity = Friction.Velocity(T.Of(1), bore);
        dynamic = MinorLoss.PressureLoss(T.Of(1), around.Density, velocity);
        reynoldsPerFlow = Friction.Reynolds(velocity, bore, around.Density, around.Viscosity);
        laminar = Friction.LaminarFactor(reynoldsPerFlow) * slender * dynamic;
        first = PipeScale.Velocity / velocity;
        usual = PipeScale.UsualSlope(dynamic, slender, minor, first);
        most = pipe.GreatestReynolds / reynoldsPerFlow;
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> size = Dual<T>.Abs(flow);
        Dual<T> square = dynamic * (flow * size);
        Dual<T> reynolds = reynoldsPerFlow * size;
        Dual<T> viscous = 2.51 / Dual<T>.Max(reynolds, Dual<T>.Of(CurvedFriction.TurbulentLawFrom));
        Dual<T> x = Colebrook.Polish<Dual<T>>(memory, viscous, rough);
        memory = x.Number;
        Dual<T> turbulent = slender * (((1 / (x * x)) + addition) * square);
        Dual<T> bent = CurvedFriction.WhiteLaminarRatio(CurvedFriction.DeanNumber<Dual<T>>(reynolds, curvature));
        Dual<T> slow = bent * (laminar * flow);
        Mask<Dual<T>> isTurbulent = Dual<T>.Less(Dual<T>.Abs(slow), Dual<T>.Abs(turbulent));
        return new(Dual<T>.Select(isTurbulent, turbulent, slow) + (minor * square));
    }

    /// <summary>The Reynolds number of a flow.</summary>
    internal readonly T ReynoldsAt(T flow) => reynoldsPerFlow * T.Abs(flow);

    /// <summary>By how much a flow lies beyond what the law was measured for.</summary>
    public readonly T Trespass(T flow) => T.Max(T.Abs(flow) - most, T.Of(0));
}
