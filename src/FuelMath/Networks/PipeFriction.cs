using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A choice of friction factor above laminar flow, known to the compiler.</summary>
internal interface IPipeFriction
{
    /// <inheritdoc cref="ILinkLaw{TLaw, T}.IsCostly" />
    static abstract bool IsCostly { get; }

    /// <summary>What the factor is asked with for a roughness over bore.</summary>
    static abstract double Rough(double relativeRoughness);

    /// <summary>The factor at a Reynolds number that is not laminar; below, anything finite.</summary>
    static abstract T Factor<T>(T reynolds, T rough, ref T root)
        where T : struct, IScalar<T>;
}

/// <summary><see cref="Pipe.FrictionLaw.ColebrookStraightPassage"/>.</summary>
internal readonly struct ColebrookFriction : IPipeFriction
{
    /// <inheritdoc />
    public static bool IsCostly => true;

    /// <inheritdoc />
    public static double Rough(double relativeRoughness) => relativeRoughness / 3.7;

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Factor<T>(T reynolds, T rough, ref T root)
        where T : struct, IScalar<T> => Friction.FactorAboveLaminar(reynolds, rough, ref root);
}

/// <summary><see cref="Pipe.FrictionLaw.SwameeJainCubicPassage"/>.</summary>
internal readonly struct SwameeJainFriction : IPipeFriction
{
    /// <inheritdoc />
    public static bool IsCostly => false;

    /// <inheritdoc />
    public static double Rough(double relativeRoughness) => relativeRoughness;

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Factor<T>(T reynolds, T rough, ref T root)
        where T : struct, IScalar<T> =>
        Friction.FactorWithCubicPassage(T.Max(reynolds, T.Of(Friction.LaminarUpTo)), rough);
}
