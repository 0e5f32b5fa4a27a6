using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A passage that is curved along its whole length, with minor losses: see <see cref="CurvedFriction.Factor"/>.
/// </summary>
/// <remarks>The root of the implicit law is kept as in <see cref="PipeLaw{T}"/>.</remarks>
internal struct CurvedPipeLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private RoundPassage<T> passage;
    private T rough;
    private T curvature;
    private T addition;
    private T most;

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
        var pipe = (CurvedSettings)part;
        passage.Load(pipe);
        rough = T.Of(pipe.Roughness / pipe.Bore / 3.7);
        curvature = T.Of(pipe.Curvature);
        addition = CurvedFriction.ItoTurbulentAddition(curvature);
    }

    /// <inheritdoc />
    public void Carry(LawSettings part, in Surroundings<T> around)
    {
        var pipe = (CurvedSettings)part;
        passage.Carry(pipe, around);
        most = pipe.GreatestReynolds / passage.ReynoldsPerFlow;
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> size = Dual<T>.Abs(flow);
        Dual<T> square = passage.Dynamic * (flow * size);
        Dual<T> reynolds = passage.ReynoldsPerFlow * size;
        Dual<T> viscous = 2.51 / Dual<T>.Max(reynolds, Dual<T>.Of(CurvedFriction.TurbulentLawFrom));
        Dual<T> x = Colebrook.Polish<Dual<T>>(memory, viscous, rough);
        memory = x.Number;
        Dual<T> turbulent = passage.Slender * (((1 / (x * x)) + addition) * square);
        Dual<T> bent = CurvedFriction.WhiteLaminarRatio(CurvedFriction.DeanNumber<Dual<T>>(reynolds, curvature));
        Dual<T> slow = bent * (passage.Laminar * flow);
        Mask<Dual<T>> isTurbulent = Dual<T>.Less(Dual<T>.Abs(slow), Dual<T>.Abs(turbulent));
        return new(Dual<T>.Select(isTurbulent, turbulent, slow) + (passage.Minor * square));
    }

    /// <summary>The Reynolds number of a flow.</summary>
    internal readonly T ReynoldsAt(T flow) => passage.ReynoldsPerFlow * T.Abs(flow);

    /// <summary>The flow in excess of the measured range of the law.</summary>
    public readonly T Trespass(T flow) => T.Max(T.Abs(flow) - most, T.Of(0));
}
