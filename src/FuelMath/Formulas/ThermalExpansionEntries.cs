using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="ThermalExpansion"/> in the catalog.</summary>
internal static class ThermalExpansionEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [
        LinearVolume(),
        GasolineCoefficient(),
        ProductCoefficient(),
        LubricantCoefficient(),
        VolumeCorrection(),
        GasolineVolumeCorrection(),
        EthanolDensity(),
        SaturatedLiquidDensity(),
    ];

    private static FormulaInfo LinearVolume() =>
        FormulaInfo.Of(
            default(LinearVolumeFormula),
            "ThermalExpansion.LinearVolume",
            "Volume over volume at a reference temperature",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.TemperatureCoefficient.Given(
                    "coefficient",
                    "alpha",
                    "coefficient of volume expansion",
                    0.0001,
                    0.002
                ),
                K.TemperatureDifference.Given(
                    "temperatureDifference",
                    "dT",
                    "temperature above the reference",
                    -50,
                    80
                ),
            ],
            [],
            [],
            K.Number.Gives(ThermalExpansion.LinearVolumeResult),
            [ThermalExpansion.LinearVolumeSource],
            new([0.00095, 20], 1.019, 1e-14, new DataSource("Definition", "twenty times 0.00095, by hand"))
        );

    private readonly struct LinearVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.LinearVolume(a[0], a[1]);
    }

    private static FormulaInfo GasolineCoefficient() =>
        FormulaInfo.Of(
            default(GasolineCoefficientFormula),
            "ThermalExpansion.GasolineCoefficient",
            "The expansion coefficient of a gasoline",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Density.Within(653, 770).Given("density15", "rho15", "density at 15 degrees Celsius", 653, 770)],
            [],
            [],
            K.TemperatureCoefficient.Gives(ThermalExpansion.CoefficientResult),
            [ThermalExpansion.GasolineCoefficientSource],
            new([700], 0.0013338, 4e-5, new DataSource("ASTM-D1250", "table 54B, seven decimals"))
        );

    private readonly struct GasolineCoefficientFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.GasolineCoefficient(a[0]);
    }

    private static FormulaInfo ProductCoefficient() =>
        FormulaInfo.Of(
            default(ProductCoefficientFormula),
            "ThermalExpansion.ProductCoefficient",
            "The expansion coefficient of any petroleum product",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Density.Within(653, 1075).Given("density15", "rho15", "density at 15 degrees Celsius", 653, 1075)],
            [],
            [],
            K.TemperatureCoefficient.Gives(ThermalExpansion.CoefficientResult),
            [ThermalExpansion.ProductCoefficientSource],
            new([830], 0.000863, 6e-5, new DataSource("ASTM-D1250", "table 54B, seven decimals"))
        );

    private readonly struct ProductCoefficientFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.ProductCoefficient(a[0]);
    }

    private static FormulaInfo LubricantCoefficient() =>
        FormulaInfo.Of(
            default(LubricantCoefficientFormula),
            "ThermalExpansion.LubricantCoefficient",
            "The expansion coefficient of a lubricating oil",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Density.Within(800, 1164).Given("density15", "rho15", "density at 15 degrees Celsius", 800, 1164)],
            [],
            [],
            K.TemperatureCoefficient.Gives(ThermalExpansion.CoefficientResult),
            [ThermalExpansion.LubricantCoefficientSource],
            new(
                [880],
                0.0007134136363636364,
                0.0001,
                new DataSource("ASTM-D1250", "constant of the 2004 edition by degrees Fahrenheit")
            )
        );

    private readonly struct LubricantCoefficientFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.LubricantCoefficient(a[0]);
    }

    private static FormulaInfo VolumeCorrection() =>
        FormulaInfo.Of(
            default(VolumeCorrectionFormula),
            "ThermalExpansion.VolumeCorrection",
            "Density at a temperature over density at 15 degrees Celsius",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K
                    .TemperatureCoefficient.Within(0, 0.01)
                    .Given(
                        "coefficient15",
                        "alpha15",
                        "coefficient of volume expansion at 15 degrees Celsius",
                        0.0008,
                        0.0014
                    ),
                K.Celsius.Within(-18, 90).Given("temperatureCelsius", Symbols.Temperature, -18, 90),
            ],
            [],
            [],
            K.Number.Gives(Symbols.VolumeCorrection),
            [ThermalExpansion.VolumeCorrectionSource],
            new([0.0013338, 50], 0.952726, 3e-6, new DataSource("ASTM-D1250", "table 54B, six decimals"))
        );

    private readonly struct VolumeCorrectionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.VolumeCorrection(a[0], a[1]);
    }

    private static FormulaInfo GasolineVolumeCorrection() =>
        FormulaInfo.Of(
            default(GasolineVolumeCorrectionFormula),
            "ThermalExpansion.GasolineVolumeCorrection",
            "Density of a gasoline at a temperature over that at 15 degrees Celsius",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.Density.Within(653, 770).Given("density15", "rho15", "density at 15 degrees Celsius", 653, 770),
                K.Celsius.Within(-18, 90).Given("temperatureCelsius", Symbols.Temperature, -18, 90),
            ],
            [],
            [],
            K.Number.Gives(Symbols.VolumeCorrection),
            [ThermalExpansion.GasolineVolumeCorrectionSource],
            new(
                [745, 40],
                0.969413,
                6e-7,
                new DataSource("ASTM-D1250", "table 54B, evaluated apart from this library, six decimals")
            )
        );

    private readonly struct GasolineVolumeCorrectionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.GasolineVolumeCorrection(a[0], a[1]);
    }

    private static FormulaInfo EthanolDensity() =>
        FormulaInfo.Of(
            default(EthanolDensityFormula),
            "ThermalExpansion.EthanolDensity",
            "The density of pure ethanol",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Celsius.Within(-20, 40).Given("temperatureCelsius", Symbols.Temperature, -20, 40)],
            [],
            [],
            K.Density.Gives(ThermalExpansion.EthanolStep),
            [ThermalExpansion.EthanolDensitySource],
            new([25], 784.954, 8e-7, new DataSource("OIML-R22", "table of pure ethanol, three decimals"))
        );

    private readonly struct EthanolDensityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.EthanolDensity(a[0]);
    }

    private static FormulaInfo SaturatedLiquidDensity() =>
        FormulaInfo.Of(
            default(SaturatedLiquidDensityFormula),
            "ThermalExpansion.SaturatedLiquidDensity",
            "The density of saturated iso-octane",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Temperature.Within(250, 500).Given("temperature", Symbols.AbsoluteTemperature, 250, 400)],
            [],
            [
                new FormulaInfo.Constant("molarMass", "kg/mol", SaturatedLiquidDensityFormula.MolarMass),
                new FormulaInfo.Constant("c1", "mol/m3", SaturatedLiquidDensityFormula.C1),
                new FormulaInfo.Constant("c2", "", SaturatedLiquidDensityFormula.C2),
                new FormulaInfo.Constant("c3", "K", SaturatedLiquidDensityFormula.C3),
                new FormulaInfo.Constant("c4", "", SaturatedLiquidDensityFormula.C4),
            ],
            K.Density.Gives(ThermalExpansion.SaturatedStep),
            [ThermalExpansion.SaturatedLiquidDensitySource],
            new(
                [293.15],
                694.4,
                0.0001,
                new DataSource(
                    "Perry-2008",
                    "iso-octane at 20 degrees Celsius, evaluated by another open library, four digits"
                )
            )
        );

    private readonly struct SaturatedLiquidDensityFormula : IFormula
    {
        internal const double MolarMass = 0.114232;
        internal const double C1 = 590.59;
        internal const double C2 = 0.27424;
        internal const double C3 = 543.8;
        internal const double C4 = 0.2847;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ThermalExpansion.SaturatedLiquidDensity(MolarMass, C1, C2, C3, C4, a[0]);
    }
}
