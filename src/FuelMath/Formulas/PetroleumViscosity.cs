using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Viscosity of petroleum liquids against temperature, and of their blends.</summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class PetroleumViscosity
{
    internal static readonly DataSource RelativeSource = new("White-1999", "table A.3, footnote");

    internal static readonly DataSource KinematicSource = new(
        "ASTM-D341",
        "equation 1, without the terms that matter below 2 mm²/s"
    );

    internal static readonly DataSource BlendingIndexSource = new("Maples-2000", "viscosity blending index");

    internal static readonly DataSource FromBlendingIndexSource = new("Maples-2000", "viscosity blending index");

    internal static readonly Symbol RelativeResult = new("rmu", "", "viscosity over that at 20 degrees Celsius");

    internal static readonly Symbol FromBlendingIndexResult = new("nu", "m2/s", "kinematic viscosity");

    /// <summary>The viscosity below which the blending index does not exist, in m²/s: ln(0.2 + 0.8) is zero.</summary>
    public const double LowestKinematicViscosityOfIndex = 0.2e-6;

    private const double Ln10 = 2.302585092994046;

    internal static readonly Symbol IndexStep = new("VBI", "", "viscosity blending index");

    internal static readonly Symbol KinematicStep = new("nu", "m2/s", "kinematic viscosity");

    internal static readonly Symbol GasolineStep = new("nu", "m2/s", "kinematic viscosity of gasoline, an estimate");

    internal static readonly DataSource GasolineSource = new("HI-EDB", "figure Kinematic Viscosity");

    /// <summary>Kinematic viscosity of a gasoline by its relative density, read from a chart of three gasolines.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="relativeDensity">
    /// Density at 15 °C over that of water, 999 kg/m³; constant below 0.68 and above 0.748.
    /// </param>
    /// <param name="temperature">In K, from 255 to 363.</param>
    /// <returns>The kinematic viscosity, in m²/s.</returns>
    /// <remarks>
    /// A smooth curve through 0.46, 0.64 and 0.92 mm²/s at 60 degrees Fahrenheit for 0.68, 0.716 and 0.748, and one shape in
    /// temperature for all. It is within 7 % of the chart's curves, which were read by eye to 8 %. Source: [HI-EDB] figure
    /// "Kinematic Viscosity"; the first of the three from memory.
    /// </remarks>
    public static T Gasoline<T>(T relativeDensity, T temperature)
        where T : struct, IScalar<T>
    {
        T above = T.Min(T.Max(relativeDensity, T.Of(0.68)), T.Of(0.748)) - 0.716;
        T warmth = (1 / temperature) - (1 / 288.706);
        T exponent = (above * (10.32 + (31.9 * above))) + (warmth * (1080 + (3.4e5 * warmth)));
        return T.Step(0.64e-6 * T.Exp(exponent), GasolineStep, GasolineSource);
    }

    /// <summary>
    /// Viscosity relative to that at 20 °C, mu/mu20 = exp(c (293 K/T - 1)); within 6 % from 0 °C to 100 °C.
    /// Source: [White-1999] table A.3, footnote.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="c">The liquid's viscosity parameter, a pure number.</param>
    /// <param name="temperature">In K, from 273.15 to 373.15.</param>
    /// <returns>The ratio of the two dynamic viscosities.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Relative<T>(double c, T temperature)
        where T : struct, IScalar<T> => T.Step(T.Exp(c * (293.15 / temperature - 1)), RelativeResult, RelativeSource);

    /// <summary>
    /// Kinematic viscosity of an oil from two measured ones: log log (nu + 0.7 mm²/s) is linear in log T.
    /// Source: [ASTM-D341] equation 1, without the terms that matter below 2 mm²/s.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="firstTemperature">In K.</param>
    /// <param name="firstViscosity">Kinematic viscosity there, in m²/s; 2e-6 or more.</param>
    /// <param name="secondTemperature">In K; not the first.</param>
    /// <param name="secondViscosity">Kinematic viscosity there, in m²/s; 2e-6 or more.</param>
    /// <param name="temperature">In K.</param>
    /// <returns>The kinematic viscosity, in m²/s.</returns>
    public static T Kinematic<T>(
        double firstTemperature,
        double firstViscosity,
        double secondTemperature,
        double secondViscosity,
        T temperature
    )
        where T : struct, IScalar<T>
    {
        double first = Math.Log(Math.Log((firstViscosity * 1e6) + 0.7) / Ln10);
        double second = Math.Log(Math.Log((secondViscosity * 1e6) + 0.7) / Ln10);
        double slope = (second - first) / Math.Log(secondTemperature / firstTemperature);
        T doubleLog = first + slope * T.Log(temperature / firstTemperature);
        return T.Step((T.Exp(Ln10 * T.Exp(doubleLog)) - 0.7) * 1e-6, KinematicStep, KinematicSource);
    }

    /// <summary>
    /// Blending index of a liquid, VBI = 14.534 ln ln (nu + 0.8) + 10.975 with nu in mm²/s: indices blend by mass.
    /// Source: [Maples-2000] viscosity blending index.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="kinematicViscosity">In m²/s; above <see cref="LowestKinematicViscosityOfIndex"/>.</param>
    /// <returns>The index, a pure number.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BlendingIndex<T>(T kinematicViscosity)
        where T : struct, IScalar<T> =>
        T.Step(14.534 * T.Log(T.Log(kinematicViscosity * 1e6 + 0.8)) + 10.975, IndexStep, BlendingIndexSource);

    /// <summary>The viscosity that has a blending index. Source: [Maples-2000] viscosity blending index.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="blendingIndex">A pure number.</param>
    /// <returns>The kinematic viscosity, in m²/s.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FromBlendingIndex<T>(T blendingIndex)
        where T : struct, IScalar<T> =>
        T.Step(
            (T.Exp(T.Exp((blendingIndex - 10.975) / 14.534)) - 0.8) * 1e-6,
            FromBlendingIndexResult,
            FromBlendingIndexSource
        );
}
