using System.Runtime.CompilerServices;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Formulas;

/// <summary>How a liquid yields to pressure. SI units.</summary>
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

    /// <summary>The bulk modulus of a quick change, which keeps its heat, from that of a slow one: 1/Ks = 1/KT - T a^2/(rho cp).</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="isothermalModulus">Isothermal bulk modulus, Pa; greater than zero.</param>
    /// <param name="expansion">Coefficient of volume expansion, 1/K.</param>
    /// <param name="density">Density, kg/m3.</param>
    /// <param name="heatCapacity">Isobaric heat capacity, J/(kg K).</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <returns>Isentropic bulk modulus, Pa; not below the isothermal one.</returns>
    /// <remarks>An identity of thermodynamics. Published tables of bulk moduli mix the two kinds, which differ by 20 to 35 % for fuels. Source: [Poling-2001] relations of heat capacity and compressibility.</remarks>
    [MethodImpl(Inline)]
    public static T IsentropicModulus<T>(T isothermalModulus, T expansion, T density, T heatCapacity, T temperature)
        where T : struct, IScalar<T> =>
        T.Step(
            1 / ((1 / isothermalModulus) - (temperature * expansion * expansion / (density * heatCapacity))),
            Isentropic,
            IsentropicModulusSource
        );

    /// <summary>Speed of sound: c = sqrt(Ks/rho).</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="isentropicModulus">Isentropic bulk modulus, Pa.</param>
    /// <param name="density">Density, kg/m3; greater than zero.</param>
    /// <returns>Speed of sound, m/s.</returns>
    /// <remarks>Source: [White-2003] section 9.2.</remarks>
    [MethodImpl(Inline)]
    public static T SoundSpeed<T>(T isentropicModulus, T density)
        where T : struct, IScalar<T> => T.Step(T.Sqrt(isentropicModulus / density), Sound, SoundSpeedSource);

    /// <summary>Density under a pressure above that of the tabulated density: rho exp(dp/K).</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="density">Density at the lower pressure, kg/m3.</param>
    /// <param name="bulkModulus">Bulk modulus, Pa; taken as constant.</param>
    /// <param name="pressureRise">Rise of pressure, Pa; small against the bulk modulus.</param>
    /// <returns>Density, kg/m3.</returns>
    /// <remarks>Source: [White-2003] section 1.8 (bulk modulus).</remarks>
    [MethodImpl(Inline)]
    public static T DensityUnderPressure<T>(T density, T bulkModulus, T pressureRise)
        where T : struct, IScalar<T> =>
        T.Step(density * T.Exp(pressureRise / bulkModulus), Pressed, DensityUnderPressureSource);
}
