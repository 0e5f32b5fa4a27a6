using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The true vapor pressure of a fuel. SI units, absolute pressure.</summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class VaporPressure
{
    internal static readonly DataSource FromReidSource = new("EPA-AP42", "chapter 7.1 (refined petroleum stocks)");

    internal static readonly DataSource AntoineSource = new("Poling-2001", "section 7-3 (Antoine equation)");

    internal static readonly DataSource WagnerSource = new("Poling-2001", "section 7-3 (Wagner equation)");

    internal static readonly DataSource WagnerOriginalSource = new("McGarry-1983", "Wagner equation");

    private const double PascalsPerPsi = 6894.757293168361;
    private const double RankinePerKelvin = 1.8;

    internal static readonly Symbol WagnerPressure = new("pv", "Pa", "true vapor pressure, absolute");

    internal static readonly Symbol BlendPressure = new(
        "pv",
        "Pa",
        "true vapor pressure of gasoline with ethanol, absolute, an estimate"
    );

    internal static readonly DataSource GasolineWithEthanolSource = new(
        "Pumphrey-2000",
        "Wilson equation, gasoline as one component; constants of [ChemSep-IPD]"
    );

    /// <summary>The vapor pressure of a gasoline from its Reid vapor pressure.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="reidPressure">Reid vapor pressure, Pa; 41 370 to 103 421 Pa (6 to 15 psi).</param>
    /// <param name="temperature">Temperature, K; 277 to 311 K is the range of the published table.</param>
    /// <returns>True vapor pressure, Pa absolute.</returns>
    /// <remarks>
    /// For gasolines without alcohol, with a distillation slope of 3 degrees Fahrenheit per percent at 10 percent
    /// evaporated. A Reid vapor pressure is measured with a vapor space of four times the liquid volume and lies below
    /// the true one. ln P = A - B/T, A = 15.64 - 1.854 S^0.5 - (0.8742 - 0.3280 S^0.5) ln RVP, B = 8742 - 1042 S^0.5 -
    /// (1049 - 179.4 S^0.5) ln RVP, in psi and degrees Rankine. Source: [EPA-AP42] chapter 7.1 (refined petroleum
    /// stocks).
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FromReid<T>(T reidPressure, T temperature)
        where T : struct, IScalar<T>
    {
        double rootOfSlope = Math.Sqrt(3);
        T reid = T.Log(reidPressure / PascalsPerPsi);
        T a = 15.64 - (1.854 * rootOfSlope) - ((0.8742 - (0.3280 * rootOfSlope)) * reid);
        T b = 8742 - (1042 * rootOfSlope) - ((1049 - (179.4 * rootOfSlope)) * reid);
        return T.Step(
            PascalsPerPsi * T.Exp(a - (b / (RankinePerKelvin * temperature))),
            Symbols.VaporPressure,
            FromReidSource
        );
    }

    /// <summary>The vapor pressure of a gasoline with ethanol, the gasoline taken as one component: x gamma p of both, after Wilson.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="ethanolFraction">Mole fraction of ethanol in the liquid, 0 to 1.</param>
    /// <param name="ethanolPressure">Vapor pressure of ethanol, Pa.</param>
    /// <param name="gasolinePressure">Vapor pressure of the gasoline by itself, Pa.</param>
    /// <param name="temperature">Temperature, K; 293 to 383 K is the range of the constants.</param>
    /// <returns>Vapor pressure of the blend, Pa absolute.</returns>
    /// <remarks>
    /// ln gamma1 = -ln s1 + x2 (L12/s1 - L21/s2), s1 = x1 + L12 x2, s2 = x2 + L21 x1, likewise gamma2. The form with
    /// one component for the gasoline is reported there to agree with measurements at 37.8 °C. The constants are those
    /// of ethanol with isopentane, the part of a gasoline that gives most of its vapor. Source: [Pumphrey-2000] the
    /// form with one component; [ChemSep-IPD] Wilson constants.
    /// </remarks>
    public static T GasolineWithEthanol<T>(T ethanolFraction, T ethanolPressure, T gasolinePressure, T temperature)
        where T : struct, IScalar<T>
    {
        T gasolineFraction = 1 - ethanolFraction;
        T first = T.Exp(0.691974 - (1013.459 / temperature));
        T second = T.Exp(-0.691974 - (165.729 / temperature));
        T ethanolSum = ethanolFraction + (first * gasolineFraction);
        T gasolineSum = gasolineFraction + (second * ethanolFraction);
        T difference = (first / ethanolSum) - (second / gasolineSum);
        T ofEthanol = T.Exp(gasolineFraction * difference) / ethanolSum;
        T ofGasoline = T.Exp(-1 * (ethanolFraction * difference)) / gasolineSum;
        return T.Step(
            (ethanolFraction * ofEthanol * ethanolPressure) + (gasolineFraction * ofGasoline * gasolinePressure),
            BlendPressure,
            GasolineWithEthanolSource
        );
    }

    /// <summary>The vapor pressure of a pure substance after Antoine: log10 P = a - b/(T + c).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="a">First coefficient, for Pa and the logarithm to base ten.</param>
    /// <param name="b">Second coefficient, K.</param>
    /// <param name="c">Third coefficient, K.</param>
    /// <param name="temperature">Temperature, K; inside the range of the coefficients.</param>
    /// <returns>Vapor pressure, Pa absolute.</returns>
    /// <remarks>
    /// Tables differ in units and in the base of the logarithm. Source: [Poling-2001] section 7-3 (Antoine equation).
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Antoine<T>(T a, T b, T c, T temperature)
        where T : struct, IScalar<T>
    {
        const double ln10 = 2.302585092994046;
        return T.Step(T.Exp(ln10 * (a - (b / (temperature + c)))), Symbols.VaporPressure, AntoineSource);
    }

    /// <summary>The vapor pressure of a pure substance after Wagner, exponents 1, 1.5, 2.5 and 5.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="criticalTemperature">Critical temperature, K.</param>
    /// <param name="criticalPressure">Critical pressure, Pa.</param>
    /// <param name="a">First coefficient.</param>
    /// <param name="b">Second coefficient.</param>
    /// <param name="c">Third coefficient.</param>
    /// <param name="d">Fourth coefficient.</param>
    /// <param name="temperature">Temperature, K; below the critical one and inside the range of the coefficients.</param>
    /// <returns>Vapor pressure, Pa absolute.</returns>
    /// <remarks>
    /// ln(P/Pc) = (a t + b t^1.5 + c t^2.5 + d t^5) Tc/T, t = 1 - T/Tc. Coefficients belong to their exponents: another
    /// set belongs to 1, 1.5, 3 and 6. Source: [Poling-2001] section 7-3 (Wagner equation).
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Wagner<T>(
        double criticalTemperature,
        double criticalPressure,
        double a,
        double b,
        double c,
        double d,
        T temperature
    )
        where T : struct, IScalar<T>
    {
        T t = 1 - (temperature / criticalTemperature);
        T root = T.Sqrt(t);
        T sum = (a * t) + (b * t * root) + (c * t * t * root) + (d * t * t * t * t * t);
        return T.Step(criticalPressure * T.Exp(sum * criticalTemperature / temperature), WagnerPressure, WagnerSource);
    }

    /// <summary>The vapor pressure of a pure substance after Wagner, exponents 1, 1.5, 3 and 6.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="criticalTemperature">Critical temperature, K.</param>
    /// <param name="criticalPressure">Critical pressure, Pa.</param>
    /// <param name="a">First coefficient.</param>
    /// <param name="b">Second coefficient.</param>
    /// <param name="c">Third coefficient.</param>
    /// <param name="d">Fourth coefficient.</param>
    /// <param name="temperature">Temperature, K; below the critical one and inside the range of the coefficients.</param>
    /// <returns>Vapor pressure, Pa absolute.</returns>
    /// <remarks>Source: [McGarry-1983] Wagner equation.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WagnerOriginal<T>(
        double criticalTemperature,
        double criticalPressure,
        double a,
        double b,
        double c,
        double d,
        T temperature
    )
        where T : struct, IScalar<T>
    {
        T t = 1 - (temperature / criticalTemperature);
        T cube = t * t * t;
        T sum = (a * t) + (b * t * T.Sqrt(t)) + (c * cube) + (d * cube * cube);
        return T.Step(
            criticalPressure * T.Exp(sum * criticalTemperature / temperature),
            WagnerPressure,
            WagnerOriginalSource
        );
    }
}
