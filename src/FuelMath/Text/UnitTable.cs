using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// The table of units for text. Factors are exact by definition of the unit or rounded from an exact definition.
/// Source: [NIST-SP-811] appendix B.8.
/// </summary>
/// <remarks>Symbols are plain ASCII when written; the usual signs (°C, µm, Ω, ², ³) are also accepted.</remarks>
internal static class UnitTable
{
    /// <summary>Pascals in a pound-force per square inch: 0.45359237 kg * 9.80665 m/s2 over (0.0254 m)^2.</summary>
    private const double PoundPerSquareInch = 0.45359237 * 9.80665 / (0.0254 * 0.0254);

    /// <summary>Watts in a mechanical horsepower: 550 foot pounds-force per second.</summary>
    private const double Horsepower = 550 * 0.3048 * 0.45359237 * 9.80665;

    private static readonly ImmutableArray<Unit> PressureUnits =
    [
        Of("Pa", 1, 1),
        Of("hPa", 100, 1),
        Of("kPa", 1000, 1),
        Of("MPa", 1e6, 1),
        Of("mbar", 100, 1),
        Of("bar", 1e5, 1),
        Of("psi", PoundPerSquareInch, 1),
    ];

    internal static UnitKind PressureDifference { get; } = new("pressure difference", false, PressureUnits);

    internal static UnitKind GaugePressure { get; } =
        new("gauge pressure", false, [.. PressureUnits.Each(u => u.With(" gauge"))]);

    internal static UnitKind AbsolutePressure { get; } =
        new("absolute pressure", true, [.. PressureUnits.Each(u => u.With(" absolute"))]);

    internal static UnitKind VolumeFlow { get; } =
        new(
            "volume flow",
            false,
            Of("m3/s", 1, 1, "m³/s"),
            Of("L/s", 1, 1e3),
            Of("L/min", 1, 6e4),
            Of("L/h", 1, 3.6e6),
            Of("cm3/s", 1, 1e6, "cm³/s"),
            Of("cm3/min", 1, 6e7, "cm³/min"),
            Of("US gal/min", 3.785411784, 6e4),
            Of("US gal/h", 3.785411784, 3.6e6)
        );

    internal static UnitKind MassFlow { get; } =
        new(
            "mass flow",
            false,
            Of("kg/s", 1, 1),
            Of("g/s", 1, 1e3),
            Of("g/min", 1, 6e4),
            Of("kg/h", 1, 3600),
            Of("lb/h", 0.45359237, 3600)
        );

    internal static UnitKind Volume { get; } =
        new(
            "volume",
            false,
            Of("m3", 1, 1, "m³"),
            Of("L", 1, 1e3),
            Of("mL", 1, 1e6),
            Of("cm3", 1, 1e6, "cm³"),
            Of("mm3", 1, 1e9, "mm³"),
            Of("US gal", 3.785411784, 1e3),
            Of("imperial gal", 4.54609, 1e3)
        );

    internal static UnitKind Mass { get; } =
        new("mass", false, Of("kg", 1, 1), Of("g", 1, 1e3), Of("mg", 1, 1e6), Of("lb", 0.45359237, 1));

    internal static UnitKind Length { get; } =
        new(
            "length",
            false,
            Of("m", 1, 1),
            Of("cm", 1, 100),
            Of("mm", 1, 1e3),
            Of("um", 1, 1e6, "µm", "μm"),
            Of("in", 254, 1e4),
            Of("ft", 3048, 1e4)
        );

    internal static UnitKind Area { get; } =
        new(
            "area",
            false,
            Of("m2", 1, 1, "m²"),
            Of("cm2", 1, 1e4, "cm²"),
            Of("mm2", 1, 1e6, "mm²"),
            Of("in2", 64516, 1e8, "in²")
        );

    internal static UnitKind Density { get; } =
        new(
            "density",
            false,
            Of("kg/m3", 1, 1, "kg/m³"),
            Of("g/cm3", 1000, 1, "g/cm³"),
            Of("kg/L", 1000, 1),
            Of("g/L", 1, 1)
        );

    internal static UnitKind DynamicViscosity { get; } =
        new("dynamic viscosity", false, Of("Pa s", 1, 1, "Pa·s"), Of("mPa s", 1, 1e3, "mPa·s"), Of("cP", 1, 1e3));

    internal static UnitKind KinematicViscosity { get; } =
        new("kinematic viscosity", false, Of("m2/s", 1, 1, "m²/s"), Of("mm2/s", 1, 1e6, "mm²/s"), Of("cSt", 1, 1e6));

    internal static UnitKind Temperature { get; } =
        new(
            "temperature",
            true,
            Of("K", 1, 1),
            new Unit("degC", 1, 1, 273.15, "°C"),
            new Unit("degF", 5, 9, 459.67, "°F")
        );

    internal static UnitKind TemperatureDifference { get; } = new("temperature difference", false, Of("K", 1, 1));

    internal static UnitKind Voltage { get; } = new("voltage", false, Of("V", 1, 1), Of("mV", 1, 1e3));

    internal static UnitKind Current { get; } = new("current", false, Of("A", 1, 1), Of("mA", 1, 1e3));

    internal static UnitKind Resistance { get; } =
        new(
            "resistance",
            false,
            Of("ohm", 1, 1, "Ω", "Ω"),
            Of("mohm", 1, 1e3, "mΩ", "mΩ"),
            Of("kohm", 1e3, 1, "kΩ", "kΩ")
        );

    internal static UnitKind Duration { get; } =
        new(
            "duration",
            false,
            Of("s", 1, 1),
            Of("ms", 1, 1e3),
            Of("us", 1, 1e6, "µs", "μs"),
            Of("min", 60, 1),
            Of("h", 3600, 1)
        );

    internal static UnitKind RotationalSpeed { get; } =
        new("rotational speed", false, Of("rad/s", 1, 1), Of("rpm", Math.PI, 30));

    internal static UnitKind Frequency { get; } =
        new("frequency", false, Of("Hz", 1, 1, "1/s"), Of("kHz", 1e3, 1), Of("1/min", 1, 60));

    internal static UnitKind Power { get; } =
        new("power", false, Of("W", 1, 1), Of("kW", 1e3, 1), Of("hp", Horsepower, 1), Of("metric hp", 735.49875, 1))
        {
            Least = SiUnits.LeastWatts,
            Most = SiUnits.MostWatts,
        };

    internal static UnitKind SpecificEnergy { get; } =
        new(
            "specific energy",
            false,
            Of("J/kg", 1, 1),
            Of("kJ/kg", 1e3, 1),
            Of("MJ/kg", 1e6, 1),
            Of("Btu/lb", 2326, 1)
        );

    internal static UnitKind SpecificHeatCapacity { get; } =
        new("specific heat capacity", false, Of("J/(kg K)", 1, 1), Of("kJ/(kg K)", 1e3, 1));

    internal static UnitKind BrakeSpecificFuelConsumption { get; } =
        new(
            "brake specific fuel consumption",
            false,
            Of("kg/J", 1, 1),
            Of("g/kWh", 1, 3.6e9),
            Of("kg/kWh", 1, 3.6e6),
            Of("lb/(hp h)", 0.45359237, Horsepower * 3600)
        );

    internal static UnitKind Speed { get; } =
        new("speed", false, Of("m/s", 1, 1), Of("km/h", 10, 36), Of("ft/s", 3048, 1e4));

    internal static UnitKind Acceleration { get; } =
        new("acceleration", false, Of("m/s2", 1, 1, "m/s²"), Of("ft/s2", 3048, 1e4, "ft/s²"));

    internal static UnitKind Force { get; } =
        new("force", false, Of("N", 1, 1), Of("kN", 1e3, 1), Of("lbf", 0.45359237 * 9.80665, 1));

    /// <summary>A measured pure number; the symbol of the unit one is 1.</summary>
    internal static UnitKind Ratio { get; } = new("ratio", false, Of("1", 1, 1), Of("%", 1, 100), Of("ppm", 1, 1e6));

    /// <summary>Every kind there is.</summary>
    internal static ImmutableArray<UnitKind> All { get; } =
    [
        PressureDifference,
        GaugePressure,
        AbsolutePressure,
        VolumeFlow,
        MassFlow,
        Volume,
        Mass,
        Length,
        Area,
        Density,
        DynamicViscosity,
        KinematicViscosity,
        Temperature,
        TemperatureDifference,
        Voltage,
        Current,
        Resistance,
        Duration,
        RotationalSpeed,
        Frequency,
        Power,
        SpecificEnergy,
        SpecificHeatCapacity,
        BrakeSpecificFuelConsumption,
        Speed,
        Acceleration,
        Force,
        Ratio,
    ];

    private static Unit Of(string symbol, double numerator, double denominator, params string[] aliases) =>
        new(symbol, numerator, denominator, 0, aliases);
}
