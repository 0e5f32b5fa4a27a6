using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Friction in a pipe that is bent all along its length, as a coiled hose is. SI units.</summary>
/// <remarks>
/// <para>
/// The bend causes a secondary flow across the pipe, which raises the loss and keeps the flow laminar up to higher
/// Reynolds numbers. The correlations differ by up to 58 % inside their stated ranges, so each is named.
/// <see cref="Factor"/> is what networks use.
/// </para>
/// <para>A curvature is bore over the diameter of the curve of the center line. All factors are Darcy's.</para>
/// </remarks>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public static class CurvedFriction
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource DeanNumberSource = new(
        "White-1929",
        "the number that curvature counts by, after Dean"
    );

    internal static readonly DataSource WhiteLaminarRatioSource = new(
        "White-1929",
        "equation for laminar flow in curved pipes"
    );

    internal static readonly DataSource MoriNakayamaLaminarRatioSource = new("Mori-Nakayama-1965", "laminar flow");

    internal static readonly DataSource SchmidtLaminarRatioSource = new("Schmidt-1967", "laminar flow");

    internal static readonly DataSource ItoCriticalReynoldsSource = new("Ito-1959", "critical Reynolds number");

    internal static readonly DataSource ItoTurbulentFactorSource = new("Ito-1959", "turbulent flow");

    internal static readonly DataSource ItoTurbulentAdditionSource = new("Ito-1959", "turbulent flow");

    internal static readonly DataSource FactorSource = new("White-1929", "laminar");

    internal static readonly DataSource PressureLossSource = new("White-2003", "section 6.3 (Darcy-Weisbach)");

    internal static readonly Symbol LaminarRatioResult = new(
        "rc",
        "",
        "laminar friction factor over that of a straight pipe"
    );

    internal static readonly Symbol ItoCriticalReynoldsResult = new("Rec", "", "critical Reynolds number");

    internal static readonly Symbol ItoTurbulentFactorResult = new("f", "", "Darcy friction factor of a smooth bend");

    internal static readonly Symbol ItoTurbulentAdditionResult = new(
        "df",
        "",
        "what a bend adds to the friction factor"
    );

    /// <summary>The least curvature of <see cref="Factor"/>; a gentler bend counts as straight.</summary>
    /// <remarks>Source: [Ito-1959] the law ends where Re (d/D)^2 is 0.034, here at the critical Reynolds number.</remarks>
    public const double LeastCurvature = 1 / 300.0;

    /// <summary>The greatest curvature of <see cref="Factor"/>; a tighter bend counts as a fitting.</summary>
    /// <remarks>Source: [Ito-1959] the tightest coil measured, 16.4 bores wide.</remarks>
    public const double GreatestCurvature = 1 / 16.4;

    /// <summary>The greatest Re (d/D)^2 of <see cref="Factor"/>.</summary>
    /// <remarks>Source: [Ito-1959] range of the first turbulent law.</remarks>
    public const double GreatestReynoldsTimesSquare = 300;

    private const double NoEffect = 11.6;

    // Below this Reynolds number flow in any bent pipe is laminar: the turbulent law only has to stay below the laminar
    // one.
    internal const double TurbulentLawFrom = 2000;
    private const double Least = 1e-9;

    internal static readonly Symbol DeanStep = new("De", "", "Dean number");

    internal static readonly Symbol FactorStep = new("f", "", "Darcy friction factor of a curved pipe");

    /// <summary>The Dean number: De = Re sqrt(d/D). Source: [White-1929] (after Dean).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, not negative.</param>
    /// <param name="curvature">Bore over the diameter of the curve, 0 to 1.</param>
    /// <returns>The Dean number.</returns>
    [MethodImpl(Inline)]
    public static T DeanNumber<T>(T reynolds, T curvature)
        where T : struct, IScalar<T> => T.Step(reynolds * T.Sqrt(curvature), DeanStep, DeanNumberSource);

    /// <summary>Laminar factor over that of a straight pipe after White: 1/(1 - (1 - (11.6/De)^0.45)^(1/0.45)).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="dean">Dean number, 0 to 2000; below 11.6 the bend has no effect.</param>
    /// <returns>The ratio, 1 or more.</returns>
    /// <remarks>Source: [White-1929] equation for laminar flow in curved pipes.</remarks>
    [MethodImpl(Inline)]
    public static T WhiteLaminarRatio<T>(T dean)
        where T : struct, IScalar<T>
    {
        T rest = 1 - T.Pow(NoEffect / T.Max(dean, T.Of(NoEffect)), 0.45);
        return T.Step(1 / (1 - T.Pow(T.Max(rest, T.Of(Least)), 1 / 0.45)), LaminarRatioResult, WhiteLaminarRatioSource);
    }

    /// <summary>Laminar factor over that of a straight pipe after Mori and Nakayama: 0.108 sqrt(De) / (1 - 3.253/sqrt(De)).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="dean">Dean number, 42.4 to 2000.</param>
    /// <returns>The ratio.</returns>
    /// <remarks>Source: [Mori-Nakayama-1965] laminar flow.</remarks>
    [MethodImpl(Inline)]
    public static T MoriNakayamaLaminarRatio<T>(T dean)
        where T : struct, IScalar<T>
    {
        T root = T.Sqrt(dean);
        return T.Step(0.108 * root / (1 - (3.253 / root)), LaminarRatioResult, MoriNakayamaLaminarRatioSource);
    }

    /// <summary>Laminar factor over that of a straight pipe after Schmidt: 1 + 0.14 c^0.97 Re^(1 - 0.644 c^0.312).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, 100 to the critical one.</param>
    /// <param name="curvature">Bore over the diameter of the curve, 0.01 to 0.2.</param>
    /// <returns>The ratio.</returns>
    /// <remarks>Source: [Schmidt-1967] laminar flow.</remarks>
    [MethodImpl(Inline)]
    public static T SchmidtLaminarRatio<T>(T reynolds, T curvature)
        where T : struct, IScalar<T>
    {
        T exponent = 1 - (0.644 * T.Pow(curvature, 0.312));
        return T.Step(
            1 + (0.14 * (T.Pow(curvature, 0.97) * T.Exp(exponent * T.Log(reynolds)))),
            LaminarRatioResult,
            SchmidtLaminarRatioSource
        );
    }

    /// <summary>The Reynolds number up to which flow stays laminar in a bend: 20000 c^0.32.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="curvature">Bore over the diameter of the curve, 1/860 to 1/7.</param>
    /// <returns>The critical Reynolds number.</returns>
    /// <remarks>Source: [Ito-1959] critical Reynolds number.</remarks>
    [MethodImpl(Inline)]
    public static T ItoCriticalReynolds<T>(T curvature)
        where T : struct, IScalar<T> =>
        T.Step(20000 * T.Pow(curvature, 0.32), ItoCriticalReynoldsResult, ItoCriticalReynoldsSource);

    /// <summary>Turbulent factor of a smooth bend after Ito: 0.304 Re^-0.25 + 0.029 sqrt(c).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, with Re c^2 from 0.034 to 300.</param>
    /// <param name="curvature">Bore over the diameter of the curve, 1/648 to 1/16.4.</param>
    /// <returns>The Darcy friction factor.</returns>
    /// <remarks>Source: [Ito-1959] turbulent flow.</remarks>
    [MethodImpl(Inline)]
    public static T ItoTurbulentFactor<T>(T reynolds, T curvature)
        where T : struct, IScalar<T> =>
        T.Step(
            (0.304 / T.Sqrt(T.Sqrt(reynolds))) + ItoTurbulentAddition(curvature),
            ItoTurbulentFactorResult,
            ItoTurbulentFactorSource
        );

    /// <summary>What a bend adds to the turbulent factor after Ito: 0.029 sqrt(c).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="curvature">Bore over the diameter of the curve, 1/648 to 1/16.4.</param>
    /// <returns>The addition to the Darcy friction factor.</returns>
    /// <remarks>Source: [Ito-1959] turbulent flow.</remarks>
    [MethodImpl(Inline)]
    public static T ItoTurbulentAddition<T>(T curvature)
        where T : struct, IScalar<T> =>
        T.Step(0.029 * T.Sqrt(curvature), ItoTurbulentAdditionResult, ItoTurbulentAdditionSource);

    /// <summary>
    /// The factor in any regime: the greater of the laminar one after White, and that of Colebrook and White plus Ito's
    /// addition for the bend.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reynolds">Reynolds number, greater than 0; Re c^2 at most 300.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 0.05.</param>
    /// <param name="curvature">Bore over the diameter of the curve, 1/300 to 1/16.4.</param>
    /// <returns>The Darcy friction factor.</returns>
    /// <remarks>
    /// In a bend the change from laminar to turbulent flow is continuous. With a smooth wall the two laws meet at 0.63
    /// to 0.89 of Ito's critical Reynolds number, and up to there the greater exceeds the laminar law by at most a
    /// fifth; with a rough one they meet sooner (0.57 at 0.003 of the bore, 0.24 at 0.05) and the greater is up to 113
    /// % above it. Ito measured smooth pipes; this library assumes that roughness adds as much as in a straight pipe.
    /// Source: [White-1929] laminar; [Ito-1959] addition of the bend; [Colebrook-1939] the rest.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T Factor<T>(T reynolds, T relativeRoughness, T curvature)
        where T : struct, IScalar<T>
    {
        T laminar = Friction.LaminarFactor(reynolds) * WhiteLaminarRatio(DeanNumber(reynolds, curvature));
        T straight = Friction.ColebrookFactor(T.Max(reynolds, T.Of(TurbulentLawFrom)), relativeRoughness);
        return T.Step(T.Max(laminar, straight + ItoTurbulentAddition(curvature)), FactorStep, FactorSource);
    }

    /// <summary>The pressure lost to friction in a bent passage after Darcy and Weisbach, with <see cref="Factor"/>.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="velocity">Mean velocity, m/s; either sign; Re c^2 at most 300.</param>
    /// <param name="bore">Inner diameter, m; greater than zero.</param>
    /// <param name="length">Length along the center line, m.</param>
    /// <param name="roughness">Roughness of the wall, m; 0 to a twentieth of the bore.</param>
    /// <param name="coilDiameter">Diameter of the curve of the center line, m; 16.4 to 300 bores.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="dynamicViscosity">Dynamic viscosity, Pa s; greater than zero.</param>
    /// <returns>Pressure lost, Pa, with the sign of the velocity.</returns>
    /// <remarks>
    /// Below a Reynolds number of 1 a bend has no effect, and the law is that of creeping flow in a straight pipe.
    /// Source: [White-2003] section 6.3 (Darcy-Weisbach); [Ito-1959] and [White-1929] the factor.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T PressureLoss<T>(
        T velocity,
        T bore,
        T length,
        T roughness,
        T coilDiameter,
        T density,
        T dynamicViscosity
    )
        where T : struct, IScalar<T>
    {
        T reynolds = Friction.Reynolds(velocity, bore, density, dynamicViscosity);
        T factor = Factor(T.Max(reynolds, T.Of(Friction.CreepingBelow)), roughness / bore, bore / coilDiameter);
        T loss = Friction.PressureLossWith(factor, reynolds, velocity, bore, length, density, dynamicViscosity);
        return T.Step(loss, Symbols.PressureLoss, PressureLossSource);
    }
}
