using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Round conductors: size and resistance. SI units.</summary>
/// <seealso href="../guide/wiring.html">Wiring</seealso>
public static class WireResistance
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource AwgDiameterSource = new(
        "ASTM-B258",
        "the rule of the gauge: 36 is 0.005 in, 4/0 is 0.46 in"
    );

    internal static readonly DataSource AwgFromAreaSource = new(
        "ASTM-B258",
        "the rule of the gauge: 36 is 0.005 in, 4/0 is 0.46 in"
    );

    internal static readonly DataSource AreaSource = new("Definition", "area of a circle");

    internal static readonly DataSource ResistanceSource = new(
        "NBS-Handbook-100",
        "section 2 (temperature coefficient)"
    );

    internal static readonly DataSource CarriedResistanceSource = new(
        "NBS-Handbook-100",
        "section 2 (temperature coefficient), as the ratio of two states"
    );

    internal static readonly DataSource TemperatureFromResistanceSource = new(
        "NBS-Handbook-100",
        "section 2 (temperature coefficient), solved for the temperature"
    );

    internal static readonly Symbol AwgDiameterResult = new("dw", "m", "diameter of the wire");

    internal static readonly Symbol AwgFromAreaResult = new("n", "", "gauge number");

    internal static readonly Symbol TemperatureFromResistanceResult = new("t", "degC", "temperature now");

    /// <summary>Resistivity of annealed copper at 20 °C, ohm m. Source: [NBS-Handbook-100] table 1.</summary>
    public const double CopperResistivity = 1.7241e-8;

    /// <summary>
    /// Temperature coefficient of annealed copper from 20 °C, 1/K. Source: [NBS-Handbook-100] table 1.
    /// </summary>
    public const double CopperCoefficient = 0.00393;

    /// <summary>The diameter of a wire gauge: d = 0.127 mm x 92^((36 - n)/39).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="gauge">Gauge number, -3 (called 4/0) to 40.</param>
    /// <returns>Diameter, m, unrounded.</returns>
    /// <remarks>Source: [ASTM-B258] the rule of the gauge: 36 is 0.005 in, 4/0 is 0.46 in.</remarks>
    [MethodImpl(Inline)]
    public static T AwgDiameter<T>(T gauge)
        where T : struct, IScalar<T>
    {
        const double ln92 = 4.5217885770490405;
        return T.Step(1.27e-4 * T.Exp(ln92 / 39 * (36 - gauge)), AwgDiameterResult, AwgDiameterSource);
    }

    /// <summary>The gauge of an area, rarely a whole number: the inverse of <see cref="AwgDiameter"/>.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="area">Area of a solid round wire, m²; greater than zero.</param>
    /// <returns>Gauge number; below zero for 2/0 and thicker.</returns>
    /// <remarks>Source: [ASTM-B258] the rule of the gauge: 36 is 0.005 in, 4/0 is 0.46 in.</remarks>
    [MethodImpl(Inline)]
    public static T AwgFromArea<T>(T area)
        where T : struct, IScalar<T>
    {
        const double ln92 = 4.5217885770490405;
        const double areaOf36 = Math.PI / 4 * 1.27e-4 * 1.27e-4;
        return T.Step(36 - (39 / (2 * ln92) * T.Log(area / areaOf36)), AwgFromAreaResult, AwgFromAreaSource);
    }

    /// <summary>The area of a round conductor: pi d^2 / 4.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="diameter">Diameter, m.</param>
    /// <returns>Area, m².</returns>
    /// <remarks>Source: [Definition] area of a circle.</remarks>
    [MethodImpl(Inline)]
    public static T Area<T>(T diameter)
        where T : struct, IScalar<T> => T.Step(Math.PI / 4 * diameter * diameter, Symbols.Area, AreaSource);

    /// <summary>The resistance of a length of conductor: R = rho20 (1 + a20 (t - 20)) L / A.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="resistivity20">Resistivity at 20 °C, ohm m.</param>
    /// <param name="coefficient20">Temperature coefficient from 20 °C, 1/K.</param>
    /// <param name="length">Length of the conductor, m; out and back are two.</param>
    /// <param name="area">Area of metal, m²; greater than zero.</param>
    /// <param name="temperatureCelsius">Temperature of the conductor, °C.</param>
    /// <returns>Resistance, ohm.</returns>
    /// <remarks>Source: [NBS-Handbook-100] section 2 (temperature coefficient).</remarks>
    [MethodImpl(Inline)]
    public static T Resistance<T>(T resistivity20, T coefficient20, T length, T area, T temperatureCelsius)
        where T : struct, IScalar<T> =>
        T.Step(
            resistivity20 * (1 + (coefficient20 * (temperatureCelsius - 20))) * length / area,
            Symbols.Resistance,
            ResistanceSource
        );

    /// <summary>
    /// A measured resistance converted to another temperature: R = R1 (1 + a20 (t - 20)) / (1 + a20 (t1 - 20)).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="resistance">Resistance as measured, ohm.</param>
    /// <param name="coefficient20">Temperature coefficient from 20 °C, 1/K.</param>
    /// <param name="measuredCelsius">Temperature at which it was measured, °C.</param>
    /// <param name="temperatureCelsius">Temperature, °C.</param>
    /// <returns>Resistance, ohm.</returns>
    /// <remarks>Source: [NBS-Handbook-100] section 2 (temperature coefficient), as the ratio of two states.</remarks>
    [MethodImpl(Inline)]
    public static T CarriedResistance<T>(T resistance, T coefficient20, T measuredCelsius, T temperatureCelsius)
        where T : struct, IScalar<T> =>
        T.Step(
            resistance
                * (1 + (coefficient20 * (temperatureCelsius - 20)))
                / (1 + (coefficient20 * (measuredCelsius - 20))),
            Symbols.Resistance,
            CarriedResistanceSource
        );

    /// <summary>The temperature from a measured resistance: the inverse of <see cref="CarriedResistance"/>.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="resistance">Resistance as measured, ohm; greater than zero.</param>
    /// <param name="coefficient20">Temperature coefficient from 20 °C, 1/K; greater than zero.</param>
    /// <param name="measuredCelsius">Temperature at which it was measured, °C.</param>
    /// <param name="resistanceNow">Resistance now, ohm.</param>
    /// <returns>Temperature now, °C.</returns>
    /// <remarks>Source: [NBS-Handbook-100] section 2 (temperature coefficient), solved for the temperature.</remarks>
    [MethodImpl(Inline)]
    public static T TemperatureFromResistance<T>(T resistance, T coefficient20, T measuredCelsius, T resistanceNow)
        where T : struct, IScalar<T> =>
        T.Step(
            20 + (((resistanceNow / resistance * (1 + (coefficient20 * (measuredCelsius - 20)))) - 1) / coefficient20),
            TemperatureFromResistanceResult,
            TemperatureFromResistanceSource
        );
}
