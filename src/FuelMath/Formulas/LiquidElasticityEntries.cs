using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="LiquidElasticity"/> in the catalog.</summary>
internal static class LiquidElasticityEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [
        PetroleumCompressibility(),
        GasolineModulus(),
        GasolineModulusError(),
        IsentropicModulus(),
        SoundSpeed(),
        DensityUnderPressure(),
    ];

    private static FormulaInfo IsentropicModulus() =>
        FormulaInfo.Of(
            default(IsentropicModulusFormula),
            "LiquidElasticity.IsentropicModulus",
            "The bulk modulus of a quick change from that of a slow one",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.BulkModulus.Given("isothermalModulus", "KT", "isothermal bulk modulus", 7e8, 2e9),
                K
                    .TemperatureCoefficient.Within(0, 0.01)
                    .Given("expansion", "alpha", "coefficient of volume expansion", 0.0001, 0.0013),
                K.Density.Given("density", Symbols.Density, 650, 900),
                K.SpecificHeat.Given("heatCapacity", "cp", "isobaric heat capacity", 1500, 3000),
                K.Temperature.Given("temperature", Symbols.AbsoluteTemperature, 250, 350),
            ],
            [],
            [],
            K.BulkModulus.Gives(LiquidElasticity.Isentropic),
            [LiquidElasticity.IsentropicModulusSource],
            new(
                [893655049.1510277, 0.001083, 789.24, 2440, 293.15],
                106e7,
                0.02,
                new DataSource("Engineering-ToolBox", "ethanol for a quick change, another table, three digits: 2 %")
            )
        );

    private readonly struct IsentropicModulusFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => LiquidElasticity.IsentropicModulus(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo SoundSpeed() =>
        FormulaInfo.Of(
            default(SoundSpeedFormula),
            "LiquidElasticity.SoundSpeed",
            "The speed of sound in a liquid",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.BulkModulus.Given("isentropicModulus", "Ks", "isentropic bulk modulus", 7e8, 2e9),
                K.Density.Given("density", Symbols.Density, 650, 900),
            ],
            [],
            [],
            K.Speed.Gives(LiquidElasticity.Sound),
            [LiquidElasticity.SoundSpeedSource],
            new(
                [13e8, 745],
                1320.971779771627,
                1e-12,
                new DataSource("Definition", "root of 1.3 GPa over 745 kg/m3, 1320.97 m/s, by hand")
            )
        );

    private readonly struct SoundSpeedFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => LiquidElasticity.SoundSpeed(a[0], a[1]);
    }

    private static FormulaInfo DensityUnderPressure() =>
        FormulaInfo.Of(
            default(DensityUnderPressureFormula),
            "LiquidElasticity.DensityUnderPressure",
            "The density of a liquid under pressure",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.Density.Given("density", Symbols.Density, 650, 900),
                K.BulkModulus.Given("bulkModulus", "K", "bulk modulus", 7e8, 2e9),
                K.DifferentialPressure.Within(-1e8, 1e9).Given("pressureRise", "dp", "rise of pressure", 0, 1e7),
            ],
            [],
            [],
            K.Density.Gives(LiquidElasticity.Pressed),
            [LiquidElasticity.DensityUnderPressureSource],
            new(
                [745, 13e8, 13e6],
                752.4873744777051,
                1e-13,
                new DataSource("Definition", "745 times the exponential of a hundredth, by hand")
            )
        );

    private readonly struct DensityUnderPressureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => LiquidElasticity.DensityUnderPressure(a[0], a[1], a[2]);
    }

    private static FormulaInfo PetroleumCompressibility() =>
        FormulaInfo.Of(
            default(PetroleumCompressibilityFormula),
            "LiquidElasticity.PetroleumCompressibility",
            "The compressibility of a petroleum liquid",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.Density.Within(638, 1074).Given("densityAt15", "rho15", "density at 15 degrees Celsius", 653, 900),
                K.Celsius.Within(-30, 90).Given("celsius", "t", "temperature in degrees Celsius", -20, 80),
            ],
            [],
            [],
            K.Compressibility.Gives(LiquidElasticity.Compressibility),
            [LiquidElasticity.PetroleumCompressibilitySource],
            new(
                [745, 20],
                1e-9 / 0.9008,
                1e-4,
                new DataSource(
                    "API-MPMS-11.2.1M",
                    "equation for F evaluated apart, as a bulk modulus in GPa, four digits"
                )
            )
        );

    private readonly struct PetroleumCompressibilityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => LiquidElasticity.PetroleumCompressibility(a[0], a[1]);
    }

    private static FormulaInfo GasolineModulus() =>
        FormulaInfo.Of(
            default(GasolineModulusFormula),
            "LiquidElasticity.GasolineModulus",
            "The isothermal bulk modulus of a gasoline, an estimate",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.Density.Within(653, 770).Given("densityAt15", "rho15", "density at 15 degrees Celsius", 653, 770),
                K.Celsius.Within(0, 80).Given("celsius", "t", "temperature in degrees Celsius", 0, 80),
            ],
            [],
            [],
            K.BulkModulus.Gives(LiquidElasticity.Gasoline),
            [
                LiquidElasticity.GasolineModulusSource,
                new DataSource("Span-2003", "equations of state of n-alkanes, in the mixture"),
                new DataSource("Lemmon-2006", "equations of state of isopentane and toluene, in the mixture"),
                new DataSource("Blackham-Lemmon-IC8", "equation of state of iso-octane, in the mixture"),
            ],
            new(
                [749.3, 20],
                8.2e8,
                0.01,
                new DataSource(
                    "API-MPMS-11.2.1M",
                    "mean of the equation and of an ideal mixture, calculated apart, two digits"
                )
            )
        );

    private readonly struct GasolineModulusFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => LiquidElasticity.GasolineModulus(a[0], a[1]);
    }

    private static FormulaInfo GasolineModulusError() =>
        FormulaInfo.Of(
            default(GasolineModulusErrorFormula),
            "LiquidElasticity.GasolineModulusError",
            "How far two estimates of the bulk modulus of gasoline lie from their mean",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Celsius.Within(0, 80).Given("celsius", "t", "temperature in degrees Celsius", 0, 80)],
            [],
            [],
            K.Fraction.Gives(LiquidElasticity.ModulusError),
            [LiquidElasticity.GasolineModulusErrorSource],
            new(
                [20],
                0.102,
                0.05,
                new DataSource("API-MPMS-11.2.1M", "half of 0.917 less 0.730 GPa over 0.917 GPa, 749 kg/m3")
            )
        );

    private readonly struct GasolineModulusErrorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => LiquidElasticity.GasolineModulusError(a[0]);
    }
}
