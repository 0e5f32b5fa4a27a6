using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Fuels;

/// <summary>
/// Coefficients as printed. Source: [Perry-2008] tables 2-32 and 2-313; [Poling-2001] appendix A.
/// </summary>
/// <remarks>
/// Source: [Perry-2008] tables 2-32 and 2-313 (density, viscosity); [Poling-2001] appendix A (Antoine constants).
/// </remarks>
internal static class PureComponents
{
    /// <summary>Where the ethanol table ends, in °C. Source: [OIML-R22] scope.</summary>
    internal const double EthanolTableEndCelsius = 40;

    internal static PureComponent Ethanol { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(2, 6, 1, 0, 0),
            MolarMass = 46.069e-3,
            DensityCoefficients = (1.6288, 0.27469, 514, 0.23178),
            ViscosityCoefficients = (7.875, 781.98, -3.0418, 0, 0),
            ViscosityEnd = 440,
            Antoine = (10.33675, 1648.22, -42.232),
            AntoineRange = (276.5, 369.54),
        };

    internal static PureComponent Methanol { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(1, 4, 1, 0, 0),
            MolarMass = 32.042e-3,
            DensityCoefficients = (2.3267, 0.27073, 512.5, 0.24713),
            ViscosityCoefficients = (-25.317, 1789.2, 2.069, 0, 0),
            ViscosityEnd = 337.85,
            Antoine = (10.20277, 1580.08, -33.65),
            AntoineRange = (262.59, 356),
        };

    internal static PureComponent IsoOctane { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(8, 18, 0, 0, 0),
            MolarMass = 114.232e-3,
            DensityCoefficients = (0.59059, 0.27424, 543.8, 0.2847),
            ViscosityCoefficients = (-12.928, 1137.5, 0.25725, -3.6929e-28, 10),
            ViscosityEnd = 541.15,
            Antoine = (8.93646, 1257.85, -52.383),
            AntoineRange = (275.5, 398.38),
        };

    internal static PureComponent NHeptane { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(7, 16, 0, 0, 0),
            MolarMass = 100.205e-3,
            DensityCoefficients = (0.61259, 0.26211, 540.2, 0.28141),
            ViscosityCoefficients = (-9.4622, 877.07, -0.23445, 1.4022e22, -10),
            ViscosityEnd = 432.16,
            Antoine = (9.02023, 1263.909, -56.718),
            AntoineRange = (277.71, 396.53),
        };

    internal static PureComponent Toluene { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(7, 8, 0, 0, 0),
            MolarMass = 92.141e-3,
            DensityCoefficients = (0.8792, 0.27136, 591.75, 0.29241),
            ViscosityCoefficients = (-226.08, 6805.7, 37.542, -0.060853, 1),
            ViscosityEnd = 383.78,
            Antoine = (9.05043, 1327.62, -55.525),
            AntoineRange = (286.44, 409.61),
        };

    /// <summary>
    /// Density of ethanol: to 40 °C Source: [OIML-R22] formula at 100 %; above, Source: [Perry-2008] table 2-32, scaled by
    /// 0.9996 so that the two meet.
    /// </summary>
    internal static LiquidDensity EthanolDensity()
    {
        double join = SiUnits.KelvinsFromCelsius(EthanolTableEndCelsius);
        double Table(double kelvins) =>
            ThermalExpansion.EthanolDensity(new Real(SiUnits.CelsiusFromKelvins(kelvins))).Value;
        double scale = Table(join) / Ethanol.DensityAt(join);
        return new(
            new TemperatureLaw(
                "Density",
                SiUnits.KelvinsFromCelsius(-20),
                SiUnits.KelvinsFromCelsius(PureComponent.HighestCelsius),
                t => t <= join ? Table(t) : scale * Ethanol.DensityAt(t),
                [new DataSource("OIML-R22", "formula at 100 %"), new DataSource("Perry-2008", "table 2-32")],
                []
            )
        );
    }
}
