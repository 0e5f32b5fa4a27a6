using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Fuels;

/// <summary>Coefficients of a pure substance, as printed, and the laws made of them.</summary>
/// <remarks>
/// The declared range is −40 °C to 100 °C, or less where a table ends before. Density and viscosity:
/// Source: [Perry-2008] tables 2-32 and 2-313. Vapor pressure: Source: [Poling-2001] appendix A, Antoine constants.
/// </remarks>
internal sealed class PureComponent
{
    internal const double LowestCelsius = -40;
    internal const double HighestCelsius = 100;

    private static readonly DataSource Densities = new("Perry-2008", "table 2-32");
    private static readonly DataSource Viscosities = new("Perry-2008", "table 2-313");
    private static readonly DataSource Pressures = new("Poling-2001", "appendix A, Antoine constants");

    internal required ElementalComposition Composition { get; init; }

    /// <summary>In kg/mol.</summary>
    internal required double MolarMass { get; init; }

    /// <summary>C1 in mol/dm³ as printed, C2, C3 in K, C4.</summary>
    internal required (double C1, double C2, double C3, double C4) DensityCoefficients { get; init; }

    /// <summary>C1 to C5, mu in Pa s.</summary>
    internal required (double C1, double C2, double C3, double C4, double C5) ViscosityCoefficients { get; init; }

    /// <summary>Where the table of viscosities ends, in K.</summary>
    internal required double ViscosityEnd { get; init; }

    /// <summary>A, B, C of log10 p = A - B/(T + C), p in Pa and T in K.</summary>
    internal required (double A, double B, double C) Antoine { get; init; }

    /// <summary>Where the Antoine constants hold, in K.</summary>
    internal required (double From, double To) AntoineRange { get; init; }

    private static double Low => SiUnits.KelvinsFromCelsius(LowestCelsius);

    private static double High => SiUnits.KelvinsFromCelsius(HighestCelsius);

    internal LiquidDensity Density() => new(new TemperatureLaw("Density", Low, High, DensityAt, [Densities], []));

    internal double DensityAt(double kelvins) =>
        ThermalExpansion
            .SaturatedLiquidDensity(
                MolarMass,
                1000 * DensityCoefficients.C1,
                DensityCoefficients.C2,
                DensityCoefficients.C3,
                DensityCoefficients.C4,
                new Real(kelvins)
            )
            .Value;

    internal LiquidViscosity Viscosity() =>
        new(
            new TemperatureLaw(
                "Viscosity",
                Low,
                Math.Min(High, ViscosityEnd),
                t =>
                    SaturatedLiquid
                        .Viscosity(
                            ViscosityCoefficients.C1,
                            ViscosityCoefficients.C2,
                            ViscosityCoefficients.C3,
                            ViscosityCoefficients.C4,
                            ViscosityCoefficients.C5,
                            new Real(t)
                        )
                        .Value,
                [Viscosities],
                []
            )
        );

    internal LiquidVaporPressure VaporPressure() =>
        new(
            new TemperatureLaw(
                "Vapor pressure",
                Math.Max(Low, AntoineRange.From),
                Math.Min(High, AntoineRange.To),
                t =>
                    Formulas
                        .VaporPressure.Antoine(
                            new Real(Antoine.A),
                            new Real(Antoine.B),
                            new Real(Antoine.C),
                            new Real(t)
                        )
                        .Value,
                [Pressures],
                []
            )
        );
}
