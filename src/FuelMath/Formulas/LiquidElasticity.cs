using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Compressibility of liquids. SI units.</summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class LiquidElasticity
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource IsentropicModulusSource = new(
        "Poling-2001",
        "relations of heat capacity and compressibility"
    );

    internal static readonly DataSource SoundSpeedSource = new("White-2003", "section 9.2");

    internal static readonly DataSource DensityUnderPressureSource = new("White-2003", "section 1.8 (bulk modulus)");

    internal static readonly Symbol Isentropic = new("Ks", "Pa", "isentropic bulk modulus");

    internal static readonly Symbol Sound = new("c", "m/s", "speed of sound");

    internal static readonly Symbol Pressed = new("rhop", "kg/m3", "density under pressure");

    internal static readonly Symbol Compressibility = new(
        "kappa",
        "1/Pa",
        "isothermal compressibility of a petroleum liquid"
    );

    internal static readonly DataSource PetroleumCompressibilitySource = new("API-MPMS-11.2.1M", "equation for F");

    internal static readonly Symbol ModulusError = new(
        "eK",
        "",
        "half the distance of two estimates, as a share of the upper"
    );

    internal static readonly DataSource GasolineModulusErrorSource = new(
        "API-MPMS-11.2.1M",
        "equation for F, against an ideal mixture"
    );

    internal static readonly Symbol Gasoline = new("KT", "Pa", "isothermal bulk modulus of gasoline, an estimate");

    internal static readonly DataSource GasolineModulusSource = new(
        "API-MPMS-11.2.1M",
        "equation for F, as the upper of two estimates"
    );

    /// <summary>The compressibility of a petroleum liquid: F = exp(-1.62080 + 0.00021592 t + 870960/rho^2 + 4209.2 t/rho^2) / GPa.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="densityAt15">Density at 15 °C, kg/m³; 638 to 1074.</param>
    /// <param name="celsius">Temperature in °C; -30 to 90.</param>
    /// <returns>Isothermal compressibility, 1/Pa, a mean value from atmospheric pressure up.</returns>
    /// <remarks>
    /// Within 6.5 % for petroleum liquids (from memory). Pure n-alkanes of 6 to 12 carbons are 4 to 10 % more compressible than
    /// it says, aromatics 16 to 42 % less. Source: [API-MPMS-11.2.1M] equation for F.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T PetroleumCompressibility<T>(T densityAt15, T celsius)
        where T : struct, IScalar<T>
    {
        T square = densityAt15 * densityAt15;
        T exponent = -1.62080 + (0.00021592 * celsius) + ((870_960 + (4_209.2 * celsius)) / square);
        return T.Step(1e-9 * T.Exp(exponent), Compressibility, PetroleumCompressibilitySource);
    }

    /// <summary>The isothermal bulk modulus of a gasoline, an estimate between an upper and a lower one.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="densityAt15">Density at 15 °C, kg/m³; 653 to 770.</param>
    /// <param name="celsius">Temperature in °C; 0 to 80.</param>
    /// <returns>Isothermal bulk modulus, Pa.</returns>
    /// <remarks>
    /// The upper estimate is the inverse of <see cref="PetroleumCompressibility{T}"/>. The lower is an ideal mixture of
    /// eight pure hydrocarbons by their equations of state, composed like a gasoline: 0.82 of the upper estimate at 0
    /// °C and 0.66 at 80, nearly the same for gasolines of 726 and 749 kg/m³. This is their mean, 0.908 - 1.75e-4 t -
    /// 1e-5 t^2 of the upper one; <see cref="GasolineModulusError{T}"/> is half their distance.
    /// Source: [API-MPMS-11.2.1M] equation for F; the mixture from [Span-2003], [Lemmon-2006] and [Blackham-Lemmon-IC8].
    /// </remarks>
    [MethodImpl(Inline)]
    public static T GasolineModulus<T>(T densityAt15, T celsius)
        where T : struct, IScalar<T> =>
        T.Step(
            (1 - GasolineModulusError(celsius)) / PetroleumCompressibility(densityAt15, celsius),
            Gasoline,
            GasolineModulusSource
        );

    /// <summary>
    /// Half the distance between the upper and the lower estimate of a gasoline's bulk modulus, as a fraction of the
    /// upper.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="celsius">Temperature in °C; 0 to 80.</param>
    /// <returns>The fraction: 0.09 at 0 °C, 0.10 at 20, 0.17 at 80.</returns>
    /// <remarks>Source: [API-MPMS-11.2.1M] equation for F, against the mixture that <see cref="GasolineModulus{T}"/> names.</remarks>
    [MethodImpl(Inline)]
    public static T GasolineModulusError<T>(T celsius)
        where T : struct, IScalar<T> =>
        T.Step(0.092 + (celsius * (1.75e-4 + (1e-5 * celsius))), ModulusError, GasolineModulusErrorSource);

    /// <summary>
    /// The isentropic bulk modulus (quick change) from the isothermal one (slow change): 1/Ks = 1/KT - T a^2/(rho cp).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="isothermalModulus">Isothermal bulk modulus, Pa; greater than zero.</param>
    /// <param name="expansion">Coefficient of volume expansion, 1/K.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="heatCapacity">Isobaric heat capacity, J/(kg K).</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <returns>Isentropic bulk modulus, Pa; not below the isothermal one.</returns>
    /// <remarks>An identity of thermodynamics. Published tables of bulk moduli mix the two kinds, which differ by 19 to 23 % for alcohols and by 27 to 33 % for hydrocarbons. Source: [Poling-2001] relations of heat capacity and compressibility.</remarks>
    [MethodImpl(Inline)]
    public static T IsentropicModulus<T>(T isothermalModulus, T expansion, T density, T heatCapacity, T temperature)
        where T : struct, IScalar<T> =>
        T.Step(
            1 / ((1 / isothermalModulus) - (temperature * expansion * expansion / (density * heatCapacity))),
            Isentropic,
            IsentropicModulusSource
        );

    /// <summary>Speed of sound: c = sqrt(Ks/rho).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="isentropicModulus">Isentropic bulk modulus, Pa.</param>
    /// <param name="density">Density, kg/m³; greater than zero.</param>
    /// <returns>Speed of sound, m/s.</returns>
    /// <remarks>Source: [White-2003] section 9.2.</remarks>
    [MethodImpl(Inline)]
    public static T SoundSpeed<T>(T isentropicModulus, T density)
        where T : struct, IScalar<T> => T.Step(T.Sqrt(isentropicModulus / density), Sound, SoundSpeedSource);

    /// <summary>Density under a pressure above that of the tabulated density: rho exp(dp/K).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="density">Density at the lower pressure, kg/m³.</param>
    /// <param name="bulkModulus">Bulk modulus, Pa; taken as constant.</param>
    /// <param name="pressureRise">Rise of pressure, Pa; small against the bulk modulus.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>Source: [White-2003] section 1.8 (bulk modulus).</remarks>
    [MethodImpl(Inline)]
    public static T DensityUnderPressure<T>(T density, T bulkModulus, T pressureRise)
        where T : struct, IScalar<T> =>
        T.Step(density * T.Exp(pressureRise / bulkModulus), Pressed, DensityUnderPressureSource);
}
