using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A passage that is curved along its whole length, with minor losses: see <see cref="CurvedFriction.Factor"/>.
/// </summary>
/// <remarks>The root of the implicit law is kept as in <see cref="PipeLaw{T, TFriction}"/>.</remarks>
internal struct CurvedPipeLaw<T> : ILinkLaw<CurvedPipeLaw<T>, T>
    where T : struct, IScalar<T>
{
    private RoundPassage<T> passage;
    private T rough;
    private T curvature;
    private T addition;
    private T most;

    /// <inheritdoc />
    public readonly T FirstFlow => passage.First;

    /// <inheritdoc />
    public readonly T UsualSlope => passage.Usual;

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var pipe = (CurvedSettings)settings;
        passage.Load(pipe);
        rough = T.Of(pipe.Roughness / pipe.Bore / 3.7);
        curvature = T.Of(pipe.Curvature);
        addition = CurvedFriction.ItoTurbulentAddition(curvature);
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around)
    {
        var pipe = (CurvedSettings)settings;
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
        Dual<T> root = memory;
        Dual<T> straight = Friction.KeptColebrookFactor<Dual<T>>(
            Dual<T>.Max(reynolds, Dual<T>.Of(CurvedFriction.TurbulentLawFrom)),
            rough,
            ref root
        );
        memory = root.Number;
        Dual<T> turbulent = passage.Slender * ((straight + addition) * square);
        Dual<T> bent = CurvedFriction.WhiteLaminarRatio(CurvedFriction.DeanNumber<Dual<T>>(reynolds, curvature));
        Dual<T> slow = bent * (passage.Laminar * flow);
        Mask<Dual<T>> isTurbulent = Dual<T>.Less(Dual<T>.Abs(slow), Dual<T>.Abs(turbulent));
        return new(Dual<T>.Select(isTurbulent, turbulent, slow) + (passage.Minor * square));
    }

    /// <summary>The Reynolds number of a flow.</summary>
    internal readonly T ReynoldsAt(T flow) => passage.ReynoldsPerFlow * T.Abs(flow);

    /// <summary>The flow in excess of the measured range of the law.</summary>
    public static T Trespass(ref CurvedPipeLaw<T> law, T flow) => T.Max(T.Abs(flow) - law.most, T.Of(0));
}
