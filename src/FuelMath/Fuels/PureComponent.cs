using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Coefficients of a pure substance, as printed, and the laws made from them.</summary>
/// <remarks>
/// The declared range is -40 °C to 100 °C, or less where a table ends before; that of the vapor pressure goes to 120 °C.
/// Density, viscosity and heat capacity: Source: [Perry-2008] tables 2-32, 2-313 and 2-153, the densities anchored at those
/// of an equation of state, because the table runs 0.2 to 0.4 % high. Vapor pressure: Source: [Poling-2001] appendix A, Wagner constants,
/// or Source: [McGarry-1983] Wagner constants.
/// </remarks>
internal sealed class PureComponent
{
    internal const double LowestCelsius = -40;
    internal const double HighestCelsius = 100;

    /// <summary>
    /// The Wagner equations hold up to the critical point; hot fuel under pressure needs them above 100 °C.
    /// </summary>
    internal const double HighestVaporCelsius = 120;

    private static readonly DataSource Densities = new("Perry-2008", "table 2-32");
    private static readonly DataSource Viscosities = new("Perry-2008", "table 2-313");
    private static readonly DataSource Pressures = new("Poling-2001", "appendix A, Wagner constants");
    private static readonly DataSource OldPressures = new("McGarry-1983", "Wagner constants");
    private static readonly DataSource HeatCapacities = new("Perry-2008", "table 2-153");

    internal required ElementalComposition Composition { get; init; }

    /// <summary>In kg/mol.</summary>
    internal required double MolarMass { get; init; }

    /// <summary>C1 in mol/dm³ as printed, C2, C3 in K, C4.</summary>
    internal required (double C1, double C2, double C3, double C4) DensityCoefficients { get; init; }

    /// <summary>
    /// Densities of the equation of state, in °C and kg/m³, to which the coefficients are scaled; if empty, the
    /// coefficients are used as printed.
    /// </summary>
    internal (double Celsius, double Density)[] Anchors { get; init; } = [];

    /// <summary>The equation of state that the anchors come from.</summary>
    internal string AnchorKey { get; init; } = "";

    /// <summary>C1 to C5, mu in Pa s.</summary>
    internal required (double C1, double C2, double C3, double C4, double C5) ViscosityCoefficients { get; init; }

    /// <summary>Where the table of viscosities ends, in K.</summary>
    internal required double ViscosityEnd { get; init; }

    /// <summary>A, B, C, D of the Wagner equation.</summary>
    internal required (double A, double B, double C, double D) Wagner { get; init; }

    /// <summary>Whether they belong to the exponents 1, 1.5, 3 and 6 instead of 1, 1.5, 2.5 and 5.</summary>
    internal required bool IsOldWagner { get; init; }

    /// <summary>In K, as printed with the Wagner coefficients.</summary>
    internal required double CriticalTemperature { get; init; }

    /// <summary>In Pa, as printed with the Wagner coefficients.</summary>
    internal required double CriticalPressure { get; init; }

    /// <summary>Lowest temperature of the Wagner coefficients, in K.</summary>
    internal required double WagnerFrom { get; init; }

    /// <summary>C1 to C4, in J/(kmol K) and K.</summary>
    internal required (double C1, double C2, double C3, double C4) HeatCapacityCoefficients { get; init; }

    /// <summary>In K, when the coefficients are of the form that rises to the critical point; else zero.</summary>
    internal double HeatCapacityCriticalTemperature { get; init; }

    /// <summary>Where the table of heat capacities ends, in K.</summary>
    internal required double HeatCapacityEnd { get; init; }

    private static double Low => SiUnits.KelvinsFromCelsius(LowestCelsius);

    private static double High => SiUnits.KelvinsFromCelsius(HighestCelsius);

    internal LiquidDensity Density() =>
        new(
            new TemperatureLaw(
                "Density",
                Low,
                High,
                new PureLaws.AnchoredDensity(this, AnchorKey),
                [Densities, new DataSource(AnchorKey, "equation of state, evaluated")],
                []
            )
        );

    internal LiquidViscosity Viscosity() =>
        new(
            new TemperatureLaw(
                "Viscosity",
                Low,
                Math.Min(High, ViscosityEnd),
                new PureLaws.Viscosity(this),
                [Viscosities],
                []
            )
        );

    internal LiquidVaporPressure VaporPressure() =>
        new(
            new TemperatureLaw(
                "Vapor pressure",
                Math.Max(Low, WagnerFrom),
                SiUnits.KelvinsFromCelsius(HighestVaporCelsius),
                new PureLaws.VaporPressure(this),
                [IsOldWagner ? OldPressures : Pressures],
                []
            )
        );

    internal LiquidHeatCapacity HeatCapacity() =>
        new(
            new TemperatureLaw(
                "Heat capacity",
                Low,
                Math.Min(High, HeatCapacityEnd),
                new PureLaws.HeatCapacity(this),
                [HeatCapacities],
                []
            )
        );
}
