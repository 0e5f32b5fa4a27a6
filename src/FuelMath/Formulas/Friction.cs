using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Friction of flow in a round pipe: the Darcy friction factor and the pressure loss. SI units.</summary>
/// <remarks>
/// All factors are Darcy's, four times Fanning's. No formula branches on a value, so each reads in any scalar.
/// </remarks>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public static partial class Friction
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource VelocitySource = new("Definition", "flow over the area of a circle");

    internal static readonly DataSource ReynoldsSource = new("White-2003", "section 1.6 (definition)");

    internal static readonly DataSource LaminarFactorSource = new(
        "White-2003",
        "section 6.4 (laminar fully developed pipe flow)"
    );

    internal static readonly DataSource ColebrookFactorSource = new(
        "Colebrook-1939",
        "equation of the transition curve"
    );

    internal static readonly DataSource SwameeJainFactorSource = new(
        "Swamee-Jain-1976",
        "equation for the friction factor"
    );

    internal static readonly DataSource HaalandFactorSource = new("Haaland-1983", "equation for the friction factor");

    internal static readonly DataSource SerghidesFactorSource = new("Serghides-1984", "the solution of three terms");

    internal static readonly DataSource FullyRoughFactorSource = new(
        "Colebrook-1939",
        "the limit for a great Reynolds number"
    );

    private static readonly DataSource PassageSource = new("Common-practice", "the straight passage");

    internal static readonly DataSource FactorSource = new("White-2003", "section 6.4");

    internal static readonly DataSource FactorWithCubicPassageSource = new(
        "Rossman-2020",
        "section 12.1, after Dunlop"
    );

    internal static readonly DataSource PressureLossSource = new("White-2003", "sections 6.3 (Darcy-Weisbach) and 6.4");

    /// <summary>The Reynolds number up to which flow is taken as laminar.</summary>
    public const double LaminarUpTo = 2000;

    /// <summary>The Reynolds number from which flow is taken as turbulent.</summary>
    public const double TurbulentFrom = 4000;

    /// <summary>Below this Reynolds number the loss is computed without the friction factor, which is infinite at no flow.</summary>
    internal const double CreepingBelow = 1;

    /// <summary>The mean velocity of a flow through a round bore: v = 4 Q / (pi D^2).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volumeFlow">Volume flow, m³/s; its sign is kept.</param>
    /// <param name="bore">Inner diameter, m; greater than zero.</param>
    /// <returns>Velocity, m/s.</returns>
    /// <remarks>Source: [Definition] flow over the area of a circle.</remarks>
    [MethodImpl(Inline)]
    public static T Velocity<T>(T volumeFlow, T bore)
        where T : struct, IScalar<T> =>
        T.Step(4 / Math.PI * volumeFlow / (bore * bore), Symbols.Velocity, VelocitySource);

    /// <summary>The Reynolds number: Re = rho |v| D / mu.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="velocity">Mean velocity, m/s; either sign.</param>
    /// <param name="bore">Inner diameter, m.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="dynamicViscosity">Dynamic viscosity, Pa s; greater than zero.</param>
    /// <returns>The Reynolds number, not negative.</returns>
    /// <remarks>Source: [White-2003] section 1.6 (definition).</remarks>
    [MethodImpl(Inline)]
    public static T Reynolds<T>(T velocity, T bore, T density, T dynamicViscosity)
        where T : struct, IScalar<T> =>
        T.Step(density * T.Abs(velocity) * bore / dynamicViscosity, Symbols.Reynolds, ReynoldsSource);

    /// <summary>The factor of laminar flow: f = 64 / Re.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, greater than 0 and at most 2000.</param>
    /// <returns>The Darcy friction factor.</returns>
    /// <remarks>Source: [White-2003] section 6.4 (laminar fully developed pipe flow).</remarks>
    [MethodImpl(Inline)]
    public static T LaminarFactor<T>(T reynolds)
        where T : struct, IScalar<T> => T.Step(64 / reynolds, Symbols.FrictionFactor, LaminarFactorSource);

    /// <summary>
    /// The factor of turbulent flow after Colebrook and White, solved to rounding error:
    /// 1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re sqrt(f))).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, 4000 to 1e11.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 0.05.</param>
    /// <returns>The Darcy friction factor.</returns>
    /// <remarks>Source: [Colebrook-1939] equation of the transition curve.</remarks>
    [MethodImpl(Inline)]
    public static T ColebrookFactor<T>(T reynolds, T relativeRoughness)
        where T : struct, IScalar<T>
    {
        T x = T.Step(
            T.Implicit<Colebrook>(2.51 / reynolds, relativeRoughness / 3.7),
            Symbols.RootOfFriction,
            ColebrookFactorSource
        );
        return T.Step(1 / (x * x), Symbols.FrictionFactor, ColebrookFactorSource);
    }

    /// <summary>An explicit approximation: f = 0.25 / log10(e/(3.7 D) + 5.74/Re^0.9)^2.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, 5000 to 1e8.</param>
    /// <param name="relativeRoughness">Roughness over bore, 1e-6 to 0.01.</param>
    /// <returns>The Darcy friction factor, within 3 % of the implicit law in that range.</returns>
    /// <remarks>Source: [Swamee-Jain-1976] equation for the friction factor.</remarks>
    [MethodImpl(Inline)]
    public static T SwameeJainFactor<T>(T reynolds, T relativeRoughness)
        where T : struct, IScalar<T>
    {
        T x = -Colebrook.C * T.Log((relativeRoughness / 3.7) + (5.74 / T.Pow(reynolds, 0.9)));
        return T.Step(1 / (x * x), Symbols.FrictionFactor, SwameeJainFactorSource);
    }

    /// <summary>An explicit approximation: 1/sqrt(f) = -1.8 log10((e/(3.7 D))^1.11 + 6.9/Re).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, 4000 to 1e8.</param>
    /// <param name="relativeRoughness">Roughness over bore, greater than 0 and at most 0.05.</param>
    /// <returns>The Darcy friction factor, within 2 % of the implicit law in that range.</returns>
    /// <remarks>Source: [Haaland-1983] equation for the friction factor.</remarks>
    [MethodImpl(Inline)]
    public static T HaalandFactor<T>(T reynolds, T relativeRoughness)
        where T : struct, IScalar<T>
    {
        T x = -0.9 * Colebrook.C * T.Log(T.Pow(relativeRoughness / 3.7, 1.11) + (6.9 / reynolds));
        return T.Step(1 / (x * x), Symbols.FrictionFactor, HaalandFactorSource);
    }

    /// <summary>An explicit approximation by three substitutions and an extrapolation of them.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, 4000 to 1e8.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0.00004 to 0.05.</param>
    /// <returns>The Darcy friction factor, within 0.0025 % of the implicit law in that range.</returns>
    /// <remarks>Source: [Serghides-1984] the solution of three terms; its bound of 0.0023 % was found at 70 points.</remarks>
    [MethodImpl(Inline)]
    public static T SerghidesFactor<T>(T reynolds, T relativeRoughness)
        where T : struct, IScalar<T>
    {
        T rough = relativeRoughness / 3.7;
        T viscous = 2.51 / reynolds;
        T a = -Colebrook.C * T.Log(rough + (12 / reynolds));
        T b = -Colebrook.C * T.Log(rough + (viscous * a));
        T c = -Colebrook.C * T.Log(rough + (viscous * b));
        T change = b - a;
        T x = a - (change * change / (c - (2 * b) + a));
        return T.Step(1 / (x * x), Symbols.FrictionFactor, SerghidesFactorSource);
    }

    /// <summary>The factor of a fully rough pipe: f = 0.25 / log10(e/(3.7 D))^2.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="relativeRoughness">Roughness over bore, greater than 0 and at most 0.05.</param>
    /// <returns>The Darcy friction factor where the Reynolds number no longer matters.</returns>
    /// <remarks>Source: [Colebrook-1939] the limit for a great Reynolds number.</remarks>
    [MethodImpl(Inline)]
    public static T FullyRoughFactor<T>(T relativeRoughness)
        where T : struct, IScalar<T>
    {
        T x = -Colebrook.C * T.Log(relativeRoughness / 3.7);
        return T.Step(1 / (x * x), Symbols.FrictionFactor, FullyRoughFactorSource);
    }

    /// <summary>
    /// The factor in any regime, the default of this library: laminar to 2000, Colebrook and White from 4000, and
    /// linear in the Reynolds number between.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, greater than 0.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 0.05.</param>
    /// <returns>The Darcy friction factor.</returns>
    /// <remarks>
    /// Between 2000 and 4000 the flow is unsettled and no formula is right; the linear transition is a convention that
    /// keeps the law continuous for a solver. Source: [White-2003] section 6.4; [Colebrook-1939]; [Common-practice] the
    /// straight passage.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T Factor<T>(T reynolds, T relativeRoughness)
        where T : struct, IScalar<T>
    {
        T turbulent = ColebrookFactor(T.Max(reynolds, T.Of(TurbulentFrom)), relativeRoughness);
        return FactorWith(reynolds, FactorAboveLaminar(reynolds, turbulent));
    }

    /// <summary>
    /// The factor in any regime with another transition: laminar to 2000, Swamee and Jain from 4000, and a cubic
    /// between.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, greater than 0.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 0.05.</param>
    /// <returns>The Darcy friction factor.</returns>
    /// <remarks>
    /// The cubic meets both neighbors in value and slope. Source: [Rossman-2020] section 12.1, after Dunlop.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T FactorWithCubicPassage<T>(T reynolds, T relativeRoughness)
        where T : struct, IScalar<T>
    {
        // 5.74 / 4000^0.9, and its slope by the natural logarithm of Re, times 4 / ln 10.
        const double atFourThousand = 3.28895476345399058690e-03;
        const double slopeThere = -5.14214965799093883760e-03;
        T inside = (relativeRoughness / 3.7) + atFourThousand;
        T root = -Colebrook.C * T.Log(inside);
        T fa = 1 / (root * root);
        T fb = (2 + (slopeThere / (inside * root))) * fa;
        T r = reynolds / LaminarUpTo;
        T x1 = (7 * fa) - fb;
        T x2 = 0.128 - (17 * fa) + (2.5 * fb);
        T x3 = (13 * fa) - (2 * fb) - 0.128;
        T x4 = 0.032 - (3 * fa) + (0.5 * fb);
        T cubic = x1 + (r * (x2 + (r * (x3 + (r * x4)))));
        T turbulent = SwameeJainFactor(T.Max(reynolds, T.Of(TurbulentFrom)), relativeRoughness);
        return T.Step(
            Pick(reynolds, LaminarFactor(reynolds), cubic, turbulent),
            Symbols.FrictionFactor,
            FactorWithCubicPassageSource
        );
    }

    /// <summary>The pressure lost to friction after Darcy and Weisbach: dp = f (L/D) rho v|v| / 2.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="velocity">Mean velocity, m/s; either sign.</param>
    /// <param name="bore">Inner diameter, m; greater than zero.</param>
    /// <param name="length">Length, m.</param>
    /// <param name="roughness">Roughness of the wall, m; 0 to a twentieth of the bore.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="dynamicViscosity">Dynamic viscosity, Pa s; greater than zero.</param>
    /// <returns>Pressure lost, Pa, with the sign of the velocity.</returns>
    /// <remarks>
    /// Below a Reynolds number of 1 the same laminar law is written as 32 mu L v / D^2, so that value and slope are
    /// also right at no flow. Source: [White-2003] sections 6.3 (Darcy-Weisbach) and 6.4.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T PressureLoss<T>(T velocity, T bore, T length, T roughness, T density, T dynamicViscosity)
        where T : struct, IScalar<T>
    {
        T reynolds = Reynolds(velocity, bore, density, dynamicViscosity);
        T factor = Factor(reynolds, roughness / bore);
        T loss = PressureLossWith(factor, reynolds, velocity, bore, length, density, dynamicViscosity);
        return T.Step(loss, Symbols.PressureLoss, PressureLossSource);
    }

    /// <summary>The loss after Darcy and Weisbach by a factor that is right where flow does not creep.</summary>
    [MethodImpl(Inline)]
    internal static T PressureLossWith<T>(
        T factor,
        T reynolds,
        T velocity,
        T bore,
        T length,
        T density,
        T dynamicViscosity
    )
        where T : struct, IScalar<T>
    {
        T creeping = 32 * dynamicViscosity * length * velocity / (bore * bore);
        T flowing = factor * (length / bore) * (density * velocity * T.Abs(velocity) / 2);
        return T.Select(T.Less(reynolds, T.Of(CreepingBelow)), creeping, flowing);
    }

    /// <summary>The factor above laminar flow from the turbulent one: a linear transition, then turbulent.</summary>
    [MethodImpl(Inline)]
    private static T FactorAboveLaminar<T>(T reynolds, T turbulent)
        where T : struct, IScalar<T>
    {
        const double atLaminarEnd = 64 / LaminarUpTo;
        const double perReynolds = 1 / (TurbulentFrom - LaminarUpTo);
        T part = (reynolds - LaminarUpTo) * perReynolds;
        T between = T.Step(atLaminarEnd + ((turbulent - atLaminarEnd) * part), Symbols.FrictionFactor, PassageSource);
        return T.Select(T.Less(reynolds, T.Of(TurbulentFrom)), between, turbulent);
    }

    [MethodImpl(Inline)]
    private static T Pick<T>(T reynolds, T laminar, T between, T turbulent)
        where T : struct, IScalar<T> =>
        T.Select(
            T.Less(reynolds, T.Of(LaminarUpTo)),
            laminar,
            T.Select(T.Less(reynolds, T.Of(TurbulentFrom)), between, turbulent)
        );
}
