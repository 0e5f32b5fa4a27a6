using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PumpScaling"/> in the catalog.</summary>
internal static class PumpScalingEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [Flow(), PressureRise(), PressureRiseInFluid(), Power(), WornFlow(), TemperatureRise()];

    private static FormulaInfo Flow() =>
        FormulaInfo.Of(
            default(FlowFormula),
            "PumpScaling.Flow",
            "The flow of a pump at another speed",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.VolumeFlow.Within(-1, 1).Given("volumeFlow", "Q0", "flow at the known speed", 0, 0.001),
                K.Number.Within(0.001, 1000).Given("speedRatio", "rn", "other speed over known speed", 0.1, 2),
            ],
            [],
            [],
            K.VolumeFlow.Gives(PumpScaling.FlowResult),
            [PumpScaling.FlowSource],
            new(
                [0.02523607856, 0.4857142857142857],
                0.0122575418977704,
                3e-6,
                new DataSource("TP-410", "example 7.33, six digits")
            )
        );

    private readonly struct FlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpScaling.Flow(a[0], a[1]);
    }

    private static FormulaInfo PressureRise() =>
        FormulaInfo.Of(
            default(PressureRiseFormula),
            "PumpScaling.PressureRise",
            "The pressure rise of a pump at another speed",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.DifferentialPressure.Given("pressureRise", "dp0", "pressure rise at the known speed", 0, 1e6),
                K.Number.Within(0.001, 1000).Given("speedRatio", "rn", "other speed over known speed", 0.1, 2),
            ],
            [],
            [],
            K.DifferentialPressure.Gives(PumpScaling.PressureRiseResult),
            [PumpScaling.PressureRiseSource],
            new(
                [376622.42939999996, 0.4857142857142857],
                88852.10594933,
                3e-6,
                new DataSource("TP-410", "example 7.33, six digits")
            )
        );

    private readonly struct PressureRiseFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpScaling.PressureRise(a[0], a[1]);
    }

    private static FormulaInfo PressureRiseInFluid() =>
        FormulaInfo.Of(
            default(PressureRiseInFluidFormula),
            "PumpScaling.PressureRiseInFluid",
            "The pressure rise of a rotodynamic pump in a fluid of another density",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.DifferentialPressure.Given("pressureRise", "dp0", "pressure rise in the known fluid", 0, 1e6),
                K.Number.Within(0.001, 1000).Given("densityRatio", "rr", "other density over known density", 0.5, 2),
            ],
            [],
            [],
            K.DifferentialPressure.Gives(PumpScaling.PressureRiseInFluidResult),
            [PumpScaling.PressureRiseInFluidSource],
            new(
                [300_000, 1.04],
                312_000,
                1e-12,
                new DataSource("White-2003", "section 11.3: the head stays; 3 bar by 1.04, by hand")
            )
        );

    private readonly struct PressureRiseInFluidFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpScaling.PressureRiseInFluid(a[0], a[1]);
    }

    private static FormulaInfo Power() =>
        FormulaInfo.Of(
            default(PowerFormula),
            "PumpScaling.Power",
            "The shaft power of a pump at another speed",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.Power.Given("power", "P0", "power at the known speed", 0, 500),
                K.Number.Within(0.001, 1000).Given("speedRatio", "rn", "other speed over known speed", 0.1, 2),
            ],
            [],
            [],
            K.Power.Gives(PumpScaling.PowerResult),
            [PumpScaling.PowerSource],
            new(
                [13049.747752689726, 0.4857142857142857],
                1495.359409482642,
                3e-6,
                new DataSource("TP-410", "example 7.33, six digits")
            )
        );

    private readonly struct PowerFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpScaling.Power(a[0], a[1]);
    }

    private static FormulaInfo WornFlow() =>
        FormulaInfo.Of(
            default(WornFlowFormula),
            "PumpScaling.WornFlow",
            "The flow of a worn pump",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.VolumeFlow.Given("volumeFlow", "Q0", "flow of the new pump", 0, 0.001),
                K.Fraction.Given("flowShare", "s", "what is left of it when nothing leaks", 0, 1),
                K.Conductance.Given("leakPerPressure", "gl", "leak for each unit of pressure rise", 0, 1e-10),
                K.DifferentialPressure.Given("pressureRise", "dp", "pressure rise", 0, 1e6),
            ],
            [],
            [],
            K.VolumeFlow.Gives(PumpScaling.WornFlowResult),
            [PumpScaling.WornFlowSource],
            new(
                [0.0001, 0.9, 1e-11, 400000],
                8.6e-5,
                1e-14,
                new DataSource("Definition", "0.00009 less 0.000004, by hand")
            )
        );

    private readonly struct WornFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpScaling.WornFlow(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo TemperatureRise() =>
        FormulaInfo.Of(
            default(TemperatureRiseFormula),
            "PumpScaling.TemperatureRise",
            "By how much a flow warms while it takes up a power",
            FormulaInfo.FormulaTopic.Heat,
            [
                K.Power.Given("heat", "P", "power that becomes heat in the liquid", 0, 500),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.SpecificHeat.Given("specificHeat", "cp", "specific heat capacity", 1500, 4200),
                K.VolumeFlow.Within(1e-12, 1).Given("volumeFlow", Symbols.VolumeFlow, 1e-6, 0.001),
            ],
            [],
            [],
            K.TemperatureDifference.Gives(PumpScaling.TemperatureRiseResult),
            [PumpScaling.TemperatureRiseSource],
            new(
                [79.2, 1000, 4200, 0.0017],
                0.011,
                0.05,
                new DataSource("Engineering-ToolBox", "warming of a pumped flow, two digits")
            )
        );

    private readonly struct TemperatureRiseFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpScaling.TemperatureRise(a[0], a[1], a[2], a[3]);
    }
}
