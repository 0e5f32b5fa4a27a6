using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>A closed volume of liquid with some gas in it that is pressurized, slowly or quickly. SI units.</summary>
/// <remarks>
/// In a slow change heat flows to the walls and the gas keeps its temperature: use the exponent 1. A change within tens
/// of milliseconds is adiabatic: use <see cref="AdiabaticExponentOfAir"/> for the gas and the isentropic modulus for
/// the liquid.
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public static class PressureRise
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    /// <summary>Ratio of the specific heats of air, 1.4. Source: [Cengel-Boles-2015] table A-2.</summary>
    public const double AdiabaticExponentOfAir = 1.4;

    internal static readonly DataSource ComplianceSource = new(
        "Cengel-Boles-2015",
        "polytropic process of an ideal gas"
    );

    internal static readonly DataSource PressedInVolumeSource = new(
        "Cengel-Boles-2015",
        "polytropic process of an ideal gas"
    );

    internal static readonly Symbol Yield = new("C", "m3/Pa", "compliance");

    internal static readonly Symbol Pressed = new("dVp", "m3", "volume pressed in");

    /// <summary>
    /// The compliance of a closed volume whose gas follows a polytropic law: V (1/K + s) + Vg/(n p), with the gas
    /// volume Vg = Va (p1/p)^(1/n).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volume">Volume of liquid, m³.</param>
    /// <param name="bulkModulus">Bulk modulus of the liquid for a change of this speed, Pa; greater than zero.</param>
    /// <param name="swelling">Relative increase of the enclosed volume for each unit of pressure, 1/Pa.</param>
    /// <param name="gasAtStart">Volume of gas at the pressure at the start, m³.</param>
    /// <param name="start">Absolute pressure at the start, Pa; greater than zero.</param>
    /// <param name="pressure">Absolute pressure now, Pa; greater than zero.</param>
    /// <param name="exponent">Polytropic exponent; at least 1.</param>
    /// <returns>Compliance, m³/Pa.</returns>
    /// <remarks>Source: [White-2003] section 1.8 (bulk modulus); [Cengel-Boles-2015] polytropic process of an ideal gas.</remarks>
    [MethodImpl(Inline)]
    public static T Compliance<T>(T volume, T bulkModulus, T swelling, T gasAtStart, T start, T pressure, T exponent)
        where T : struct, IScalar<T>
    {
        T gas = gasAtStart * T.Exp(T.Log(start / pressure) / exponent);
        return T.Step(
            (volume * ((1 / bulkModulus) + swelling)) + (gas / (exponent * pressure)),
            Yield,
            ComplianceSource
        );
    }

    /// <summary>
    /// The volume of liquid that must be pressed into a closed volume to raise its pressure, while its gas follows a
    /// polytropic law: V (1/K + s)(p2 - p1) + Va (1 - (p1/p2)^(1/n)).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volume">Volume of liquid, m³.</param>
    /// <param name="bulkModulus">Bulk modulus of the liquid for a change of this speed, Pa; greater than zero.</param>
    /// <param name="swelling">Relative increase of the enclosed volume for each unit of pressure, 1/Pa.</param>
    /// <param name="gasAtStart">Volume of gas at the pressure at the start, m³.</param>
    /// <param name="start">Absolute pressure at the start, Pa; greater than zero.</param>
    /// <param name="end">Absolute pressure at the end, Pa; greater than zero.</param>
    /// <param name="exponent">Polytropic exponent; at least 1.</param>
    /// <returns>Volume of liquid, m³.</returns>
    /// <remarks>Source: [White-2003] section 1.8 (bulk modulus); [Cengel-Boles-2015] polytropic process of an ideal gas.</remarks>
    [MethodImpl(Inline)]
    public static T PressedInVolume<T>(T volume, T bulkModulus, T swelling, T gasAtStart, T start, T end, T exponent)
        where T : struct, IScalar<T>
    {
        T left = T.Exp(T.Log(start / end) / exponent);
        return T.Step(
            (volume * ((1 / bulkModulus) + swelling) * (end - start)) + (gasAtStart * (1 - left)),
            Pressed,
            PressedInVolumeSource
        );
    }
}
