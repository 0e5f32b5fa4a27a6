using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="SaturatedLiquid"/> in the catalog.</summary>
internal static class SaturatedLiquidEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [PetroleumHeatCapacity(), Viscosity(), HeatCapacity(), HeatCapacityNearCritical()];

    private static FormulaInfo Viscosity() =>
        FormulaInfo.Of(
            default(ViscosityFormula),
            "SaturatedLiquid.Viscosity",
            "The dynamic viscosity of iso-octane",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Temperature.Within(165.78, 541.15).Given("temperature", Symbols.AbsoluteTemperature, 250, 400)],
            [],
            [
                new FormulaInfo.Constant("c1", "", ViscosityFormula.C1),
                new FormulaInfo.Constant("c2", "K", ViscosityFormula.C2),
                new FormulaInfo.Constant("c3", "", ViscosityFormula.C3),
                new FormulaInfo.Constant("c4", "", ViscosityFormula.C4),
                new FormulaInfo.Constant("c5", "", ViscosityFormula.C5),
            ],
            K.DynamicViscosity.Gives(SaturatedLiquid.ViscosityStep),
            [SaturatedLiquid.ViscositySource],
            new(
                [293.15],
                0.000506438,
                1e-5,
                new DataSource(
                    "Perry-2008",
                    "iso-octane at 20 degrees Celsius, evaluated by another open library, six digits"
                )
            )
        );

    private readonly struct ViscosityFormula : IFormula
    {
        internal const double C1 = -12.928;
        internal const double C2 = 1137.5;
        internal const double C3 = 0.25725;
        internal const double C4 = -3.6929e-28;
        internal const double C5 = 10;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SaturatedLiquid.Viscosity(C1, C2, C3, C4, C5, a[0]);
    }

    private static FormulaInfo HeatCapacity() =>
        FormulaInfo.Of(
            default(HeatCapacityFormula),
            "SaturatedLiquid.HeatCapacity",
            "The heat capacity of methanol",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Temperature.Within(175.47, 400).Given("temperature", Symbols.AbsoluteTemperature, 230, 375)],
            [],
            [
                new FormulaInfo.Constant("molarMass", "kg/mol", HeatCapacityFormula.MolarMass),
                new FormulaInfo.Constant("c1", "J/(kmol K)", HeatCapacityFormula.C1),
                new FormulaInfo.Constant("c2", "J/(kmol K2)", HeatCapacityFormula.C2),
                new FormulaInfo.Constant("c3", "J/(kmol K3)", HeatCapacityFormula.C3),
                new FormulaInfo.Constant("c4", "J/(kmol K4)", HeatCapacityFormula.C4),
            ],
            K.SpecificHeat.Gives(SaturatedLiquid.HeatCapacityStep),
            [SaturatedLiquid.HeatCapacitySource],
            new(
                [298.15],
                2531.052992946757,
                0.02,
                new DataSource("CRC-Handbook", "methanol at 25 degrees Celsius: good sources differ by 2 %")
            )
        );

    private readonly struct HeatCapacityFormula : IFormula
    {
        internal const double MolarMass = 0.032042;
        internal const double C1 = 105800;
        internal const double C2 = -362.23;
        internal const double C3 = 0.9379;
        internal const double C4 = 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SaturatedLiquid.HeatCapacity(MolarMass, C1, C2, C3, C4, a[0]);
    }

    private static FormulaInfo HeatCapacityNearCritical() =>
        FormulaInfo.Of(
            default(HeatCapacityNearCriticalFormula),
            "SaturatedLiquid.HeatCapacityNearCritical",
            "The heat capacity of n-heptane",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Temperature.Within(182.57, 520).Given("temperature", Symbols.AbsoluteTemperature, 230, 375)],
            [],
            [
                new FormulaInfo.Constant("molarMass", "kg/mol", HeatCapacityNearCriticalFormula.MolarMass),
                new FormulaInfo.Constant(
                    "criticalTemperature",
                    "K",
                    HeatCapacityNearCriticalFormula.CriticalTemperature
                ),
                new FormulaInfo.Constant("c1", "", HeatCapacityNearCriticalFormula.C1),
                new FormulaInfo.Constant("c2", "J/(kmol K)", HeatCapacityNearCriticalFormula.C2),
                new FormulaInfo.Constant("c3", "", HeatCapacityNearCriticalFormula.C3),
                new FormulaInfo.Constant("c4", "", HeatCapacityNearCriticalFormula.C4),
            ],
            K.SpecificHeat.Gives(SaturatedLiquid.HeatCapacityStep),
            [SaturatedLiquid.HeatCapacityNearCriticalSource],
            new(
                [298.15],
                2242.403073698917,
                0.02,
                new DataSource(
                    "CRC-Handbook",
                    "n-heptane at 25 degrees Celsius, from memory: good sources differ by 2 %"
                )
            )
        );

    private readonly struct HeatCapacityNearCriticalFormula : IFormula
    {
        internal const double MolarMass = 0.100205;
        internal const double CriticalTemperature = 540.2;
        internal const double C1 = 61.26;
        internal const double C2 = 314410;
        internal const double C3 = 1824.6;
        internal const double C4 = -2547.9;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            SaturatedLiquid.HeatCapacityNearCritical(MolarMass, CriticalTemperature, C1, C2, C3, C4, a[0]);
    }

    private static FormulaInfo PetroleumHeatCapacity() =>
        FormulaInfo.Of(
            default(PetroleumHeatCapacityFormula),
            "SaturatedLiquid.PetroleumHeatCapacity",
            "The heat capacity of a petroleum liquid, an estimate",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.Number.Within(0.64, 0.97).Given("relativeDensity", "d", "density over that of water", 0.68, 0.9),
                K.Celsius.Within(-20, 200).Given("celsius", "t", "temperature in degrees Celsius", -20, 100),
            ],
            [],
            [],
            K.SpecificHeat.Gives(SaturatedLiquid.PetroleumStep),
            [SaturatedLiquid.PetroleumHeatCapacitySource],
            new([0.7207092, 20], 2064.4, 1e-4, new DataSource("NBS-MP97", "720 kg/m3, evaluated apart, five digits"))
        );

    private readonly struct PetroleumHeatCapacityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SaturatedLiquid.PetroleumHeatCapacity(a[0], a[1]);
    }
}
