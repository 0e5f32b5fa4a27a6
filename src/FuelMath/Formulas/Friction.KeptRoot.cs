using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <content>The same laws with a root that a solver keeps between iterations.</content>
public static partial class Friction
{
    /// <summary>
    /// The turbulent factor by one Newton step from a root that is near: kept by a solver, it converges along with the flows.
    /// </summary>
    /// <param name="reynolds">Reynolds number of turbulent flow.</param>
    /// <param name="rough">Roughness over 3.7 bores.</param>
    /// <param name="root">1/sqrt(f): that of the last iteration, then of this one.</param>
    [MethodImpl(Inline)]
    internal static T KeptColebrookFactor<T>(T reynolds, T rough, ref T root)
        where T : struct, IScalar<T>
    {
        root = Colebrook.Polish(root, 2.51 / reynolds, rough);
        return 1 / (root * root);
    }

    /// <summary>The factor above laminar flow with a kept root.</summary>
    /// <inheritdoc cref="KeptColebrookFactor" />
    [MethodImpl(Inline)]
    internal static T FactorAboveLaminar<T>(T reynolds, T rough, ref T root)
        where T : struct, IScalar<T> =>
        FactorAboveLaminar(reynolds, KeptColebrookFactor(T.Max(reynolds, T.Of(TurbulentFrom)), rough, ref root));

    /// <summary>
    /// The factor in any regime with a root that a solver keeps. Source: [White-2003] section 6.4; [Colebrook-1939];
    /// [Common-practice] the straight passage.
    /// </summary>
    /// <inheritdoc cref="KeptColebrookFactor" />
    [MethodImpl(Inline)]
    internal static T Factor<T>(T reynolds, T relativeRoughness, ref T root)
        where T : struct, IScalar<T> =>
        FactorWith(reynolds, FactorAboveLaminar(reynolds, relativeRoughness / 3.7, ref root));

    /// <summary>The factor in any regime by the one above laminar flow.</summary>
    [MethodImpl(Inline)]
    private static T FactorWith<T>(T reynolds, T aboveLaminar)
        where T : struct, IScalar<T> =>
        T.Step(
            T.Select(T.Less(reynolds, T.Of(LaminarUpTo)), LaminarFactor(reynolds), aboveLaminar),
            Symbols.FrictionFactor,
            FactorSource
        );
}
