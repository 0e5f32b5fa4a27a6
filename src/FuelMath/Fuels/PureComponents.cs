using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Coefficients as printed. Source: [Perry-2008] tables 2-32, 2-313 and 2-153; [Poling-2001] appendix A; [McGarry-1983].
/// Anchors: [DeReuck-1993], [Schroeder-2014], [Span-2003], [Lemmon-2006], [Blackham-Lemmon-IC8], equations of state.
/// </summary>
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
            Anchors =
            [
                (EthanolTableEndCelsius, ThermalExpansion.EthanolDensity(new Real(EthanolTableEndCelsius)).Value),
                (60, 754.054),
                (80, 734.838),
                (100, 713.828),
            ],
            AnchorKey = "Schroeder-2014",
            ViscosityCoefficients = (7.875, 781.98, -3.0418, 0, 0),
            ViscosityEnd = 440,
            Wagner = (-8.68587, 1.17831, -4.8762, 1.588),
            IsOldWagner = false,
            CriticalTemperature = 513.92,
            CriticalPressure = 6132000,
            WagnerFrom = 159.05,
            HeatCapacityCoefficients = (102640, -139.63, -0.030341, 0.0020386),
            HeatCapacityEnd = 390,
        };

    internal static PureComponent Methanol { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(1, 4, 1, 0, 0),
            MolarMass = 32.042e-3,
            DensityCoefficients = (2.3267, 0.27073, 512.5, 0.24713),
            Anchors =
            [
                (-20, 828.598),
                (0, 809.73),
                (20, 791.012),
                (40, 772.169),
                (60, 752.813),
                (80, 732.467),
                (100, 710.534),
            ],
            AnchorKey = "DeReuck-1993",
            ViscosityCoefficients = (-25.317, 1789.2, 2.069, 0, 0),
            ViscosityEnd = 337.85,
            Wagner = (-8.63571, 1.17982, -2.479, -1.024),
            IsOldWagner = false,
            CriticalTemperature = 512.64,
            CriticalPressure = 8092000,
            WagnerFrom = 175.47,
            HeatCapacityCoefficients = (105800, -362.23, 0.9379, 0),
            HeatCapacityEnd = 400,
        };

    internal static PureComponent IsoOctane { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(8, 18, 0, 0, 0),
            MolarMass = 114.232e-3,
            DensityCoefficients = (0.59059, 0.27424, 543.8, 0.2847),
            Anchors =
            [
                (-20, 724.44),
                (0, 708.324),
                (20, 692.016),
                (40, 675.407),
                (60, 658.372),
                (80, 640.756),
                (100, 622.362),
            ],
            AnchorKey = "Blackham-Lemmon-IC8",
            ViscosityCoefficients = (-12.928, 1137.5, 0.25725, -3.6929e-28, 10),
            ViscosityEnd = 541.15,
            Wagner = (-7.3889, 1.25294, -3.16606, -2.22001),
            IsOldWagner = true,
            CriticalTemperature = 543.96,
            CriticalPressure = 2561550,
            WagnerFrom = 265,
            HeatCapacityCoefficients = (95275, 696.7, -1.3765, 0.0021734),
            HeatCapacityEnd = 520,
        };

    internal static PureComponent NHeptane { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(7, 16, 0, 0, 0),
            MolarMass = 100.205e-3,
            DensityCoefficients = (0.61259, 0.26211, 540.2, 0.28141),
            Anchors =
            [
                (-20, 717.092),
                (0, 700.53),
                (20, 683.815),
                (40, 666.822),
                (60, 649.414),
                (80, 631.429),
                (100, 612.664),
            ],
            AnchorKey = "Span-2003",
            ViscosityCoefficients = (-9.4622, 877.07, -0.23445, 1.4022e22, -10),
            ViscosityEnd = 432.16,
            Wagner = (-7.67468, 1.37068, -3.5362, -3.20243),
            IsOldWagner = true,
            CriticalTemperature = 540.1,
            CriticalPressure = 2732370,
            WagnerFrom = 240,
            HeatCapacityCoefficients = (61.26, 314410, 1824.6, -2547.9),
            HeatCapacityCriticalTemperature = 540.2,
            HeatCapacityEnd = 520,
        };

    internal static PureComponent Toluene { get; } =
        new()
        {
            Composition = ElementalComposition.FromFormula(7, 8, 0, 0, 0),
            MolarMass = 92.141e-3,
            DensityCoefficients = (0.8792, 0.27136, 591.75, 0.29241),
            Anchors =
            [
                (-20, 903.893),
                (0, 885.42),
                (20, 866.892),
                (40, 848.199),
                (60, 829.23),
                (80, 809.864),
                (100, 789.962),
            ],
            AnchorKey = "Lemmon-2006",
            ViscosityCoefficients = (-226.08, 6805.7, 37.542, -0.060853, 1),
            ViscosityEnd = 383.78,
            Wagner = (-7.316, 1.59425, -1.93165, -3.7222),
            IsOldWagner = false,
            CriticalTemperature = 591.8,
            CriticalPressure = 4106000,
            WagnerFrom = 178.18,
            HeatCapacityCoefficients = (140140, -152.3, 0.695, 0),
            HeatCapacityEnd = 500,
        };

    /// <summary>
    /// Density of ethanol: to 40 °C Source: [OIML-R22] formula at 100 %; above, the curve of [Perry-2008] table 2-32,
    /// scaled to match where the two meet and Source: [Schroeder-2014] equation of state.
    /// </summary>
    internal static LiquidDensity EthanolDensity() =>
        new(
            new TemperatureLaw(
                "Density",
                SiUnits.KelvinsFromCelsius(-20),
                SiUnits.KelvinsFromCelsius(PureComponent.HighestCelsius),
                new PureLaws.JoinedDensity(Ethanol, SiUnits.KelvinsFromCelsius(EthanolTableEndCelsius)),
                [
                    new DataSource("OIML-R22", "formula at 100 %"),
                    new DataSource("Perry-2008", "table 2-32"),
                    new DataSource("Schroeder-2014", "equation of state, evaluated"),
                ],
                []
            )
        );
}
