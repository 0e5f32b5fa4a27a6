using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using FuelMath.Scalars;
using FuelMath.Sources;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="LiquidElasticity"/> in the catalogue.</summary>
internal static class LiquidElasticityEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [IsentropicModulus(), SoundSpeed(), DensityUnderPressure()];

    private static FormulaInfo IsentropicModulus() =>
        FormulaInfo.Of(
            default(IsentropicModulusFormula),
            "LiquidElasticity.IsentropicModulus",
            "The bulk modulus of a quick change from that of a slow one",
            FormulaTopic.Liquids,
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
            FormulaTopic.Liquids,
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
            FormulaTopic.Liquids,
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
}
