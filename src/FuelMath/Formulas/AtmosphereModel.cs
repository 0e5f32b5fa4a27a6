using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The standard atmosphere and moist air. SI units.</summary>
/// <seealso href="../guide/air.html">Air</seealso>
public static class AtmosphereModel
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource GeopotentialAltitudeSource = new("ISO-2533", "geopotential altitude");

    internal static readonly DataSource TemperatureSource = new("ISO-2533", "table 4");

    internal static readonly DataSource PressureSource = new("ISO-2533", "barometric formula");

    internal static readonly DataSource WaterVaporPressureSource = new("CIPM-2007", "appendix A1.1");

    internal static readonly DataSource MoistAirDensitySource = new("CIPM-2007", "equation 1");

    internal static readonly DataSource DryAirDensitySource = new(
        "Definition",
        "partial pressure of dry air as an ideal gas"
    );

    internal static readonly Symbol Geopotential = new("H", "m", "geopotential altitude");

    internal static readonly Symbol StandardT = new("Ts", "K", "temperature of the standard atmosphere");

    internal static readonly Symbol StandardP = new("ps", "Pa", "pressure of the standard atmosphere");

    internal static readonly Symbol WaterPressure = new("psw", "Pa", "saturated vapor pressure of water");

    internal static readonly Symbol MoistDensity = new("rhom", "kg/m3", "density of moist air");

    internal static readonly Symbol DryDensity = new("rhod", "kg/m3", "dry air in a volume of moist air");

    /// <summary>Radius of the earth of the model, m. Source: [ISO-2533] primary constants.</summary>
    public const double EarthRadius = 6_356_766;

    /// <summary>Temperature at sea level, K. Source: [ISO-2533] primary constants.</summary>
    public const double SeaLevelTemperature = 288.15;

    /// <summary>Pressure at sea level, Pa. Source: [ISO-2533] primary constants.</summary>
    public const double SeaLevelPressure = 101_325;

    /// <summary>
    /// Temperature lapse rate with geopotential altitude up to 11 km, K/m. Source: [ISO-2533] table 4.
    /// </summary>
    public const double LapseRate = 0.0065;

    /// <summary>Molar mass of water over that of dry air. Source: [CIPM-2007] equation 1.</summary>
    public const double WaterToAir = 18.01528 / 28.96546;

    /// <summary>Geopotential altitude of a height above sea level: r h/(r + h).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="height">Height above sea level, m; -2000 to 11 019.</param>
    /// <returns>Geopotential altitude, m.</returns>
    /// <remarks>Source: [ISO-2533] geopotential altitude.</remarks>
    [MethodImpl(Inline)]
    public static T GeopotentialAltitude<T>(T height)
        where T : struct, IScalar<T> =>
        T.Step(EarthRadius * height / (EarthRadius + height), Geopotential, GeopotentialAltitudeSource);

    /// <summary>Temperature of the standard atmosphere.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="geopotentialAltitude">Geopotential altitude, m; -2000 to 11 000.</param>
    /// <returns>Temperature, K.</returns>
    /// <remarks>Source: [ISO-2533] table 4.</remarks>
    [MethodImpl(Inline)]
    public static T Temperature<T>(T geopotentialAltitude)
        where T : struct, IScalar<T> =>
        T.Step(SeaLevelTemperature - (LapseRate * geopotentialAltitude), StandardT, TemperatureSource);

    /// <summary>Pressure of the standard atmosphere: p0 (T/T0)^(g/(R L)).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="geopotentialAltitude">Geopotential altitude, m; -2000 to 11 000.</param>
    /// <returns>Absolute pressure, Pa.</returns>
    /// <remarks>Source: [ISO-2533] barometric formula.</remarks>
    [MethodImpl(Inline)]
    public static T Pressure<T>(T geopotentialAltitude)
        where T : struct, IScalar<T> =>
        T.Step(
            SeaLevelPressure
                * T.Pow(
                    Temperature(geopotentialAltitude) / SeaLevelTemperature,
                    Hydrostatics.StandardGravity / (EngineAir.AirGasConstant * LapseRate)
                ),
            StandardP,
            PressureSource
        );

    /// <summary>Vapor pressure of water at saturation: exp(A T^2 + B T + C + D/T).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="temperature">Temperature, K; 273 to 373.</param>
    /// <returns>Vapor pressure, Pa.</returns>
    /// <remarks>Fitted for 0 to 27 °C; within 0.1 % of steam tables to 100. Source: [CIPM-2007] appendix A1.1.</remarks>
    [MethodImpl(Inline)]
    public static T WaterVaporPressure<T>(T temperature)
        where T : struct, IScalar<T> =>
        T.Step(
            T.Exp(
                (1.2378847e-5 * temperature * temperature)
                    - (1.9121316e-2 * temperature)
                    + 33.93711047
                    - (6.3431645e3 / temperature)
            ),
            WaterPressure,
            WaterVaporPressureSource
        );

    /// <summary>Density of moist air, as an ideal gas.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="absolutePressure">Absolute pressure, Pa.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="waterPressure">Partial pressure of water vapor, Pa.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>Compressibility and enhancement together are 0.05 % and left out. Source: [CIPM-2007] equation 1.</remarks>
    [MethodImpl(Inline)]
    public static T MoistAirDensity<T>(T absolutePressure, T temperature, T waterPressure)
        where T : struct, IScalar<T> =>
        T.Step(
            (absolutePressure - ((1 - WaterToAir) * waterPressure)) / (EngineAir.AirGasConstant * temperature),
            MoistDensity,
            MoistAirDensitySource
        );

    /// <summary>Density of the dry air in moist air: the part that burns the fuel.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="absolutePressure">Absolute pressure, Pa.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="waterPressure">Partial pressure of water vapor, Pa.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>Source: [Definition] partial pressure of dry air as an ideal gas.</remarks>
    [MethodImpl(Inline)]
    public static T DryAirDensity<T>(T absolutePressure, T temperature, T waterPressure)
        where T : struct, IScalar<T> =>
        T.Step(
            (absolutePressure - waterPressure) / (EngineAir.AirGasConstant * temperature),
            DryDensity,
            DryAirDensitySource
        );
}
