using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Pulse"/> in the catalog.</summary>
internal static class PulseEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [EffectiveWidth(), Mass(), DutyCycle(), MeanMassFlow(), QuadraticLossFactor(), FlowWeightedLossFactor()];

    private static FormulaInfo EffectiveWidth() =>
        FormulaInfo.Of(
            default(EffectiveWidthFormula),
            "Pulse.EffectiveWidth",
            "The part of a pulse that delivers",
            FormulaInfo.FormulaTopic.Injectors,
            [K.Time.Given("width", Symbols.Width, 0, 0.02), K.Time.Given("deadTime", Symbols.DeadTime, 0.0002, 0.003)],
            [],
            [],
            K.Time.Gives(Symbols.EffectiveWidth),
            [Pulse.EffectiveWidthSource],
            new(
                [0.0025, 0.0009],
                0.0016,
                1e-14,
                new DataSource("SAE-J1832", "straight line with its time offset, by hand")
            )
        );

    private readonly struct EffectiveWidthFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Pulse.EffectiveWidth(a[0], a[1]);
    }

    private static FormulaInfo Mass() =>
        FormulaInfo.Of(
            default(MassFormula),
            "Pulse.Mass",
            "The mass of one injector pulse",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.MassFlow.Given("staticMassFlow", "ms", "mass flow when held open", 0.001, 0.1),
                K.Time.Given("effectiveWidth", Symbols.EffectiveWidth, 0, 0.02),
                K
                    .Time.Within(-1e6, 1e6)
                    .Given("correction", "c", "what is added below the linear range", -0.001, 0.001),
            ],
            [],
            [],
            K.Mass.Gives(Symbols.PulseMass),
            [Pulse.MassSource, new DataSource("Definition", "the correction as a time at static flow")],
            new(
                [0.006, 0.0016, 0],
                9.6e-6,
                1e-14,
                new DataSource("SAE-J1832", "straight line: 6 g/s for 1.6 ms, by hand")
            )
        );

    private readonly struct MassFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Pulse.Mass(a[0], a[1], a[2]);
    }

    private static FormulaInfo DutyCycle() =>
        FormulaInfo.Of(
            default(DutyCycleFormula),
            "Pulse.DutyCycle",
            "The share of time that an injector is driven",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.Time.Given("width", Symbols.Width, 0, 0.02),
                K.Time.Within(1e-9, 1e6).Given("period", Symbols.Period, 0.005, 0.2),
            ],
            [],
            [],
            K.Fraction.Gives(Symbols.DutyCycle),
            [Pulse.DutyCycleSource],
            new([0.01, 0.02], 0.5, 1e-15, new DataSource("Definition", "half the period, by hand"))
        );

    private readonly struct DutyCycleFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Pulse.DutyCycle(a[0], a[1]);
    }

    private static FormulaInfo MeanMassFlow() =>
        FormulaInfo.Of(
            default(MeanMassFlowFormula),
            "Pulse.MeanMassFlow",
            "The mean flow of a train of pulses",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.Mass.Given("massPerPulse", Symbols.PulseMass, 1e-6, 0.0001),
                K.Frequency.Given("pulsesPerSecond", "n", "pulses per second", 1, 200),
            ],
            [],
            [],
            K.MassFlow.Gives(Symbols.MeanMassFlow),
            [Pulse.MeanMassFlowSource],
            new([1e-5, 50], 0.0005, 1e-14, new DataSource("Definition", "fifty times ten milligrams, by hand"))
        );

    private readonly struct MeanMassFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Pulse.MeanMassFlow(a[0], a[1]);
    }

    private static FormulaInfo QuadraticLossFactor() =>
        FormulaInfo.Of(
            default(QuadraticLossFactorFormula),
            "Pulse.QuadraticLossFactor",
            "How much more a quadratic loss costs when four injectors draw in turn",
            FormulaInfo.FormulaTopic.Injectors,
            [K.Fraction.Within(1e-6, 1).Given("openShare", "d", "share of time in which each flows", 0.01, 1)],
            [],
            [new FormulaInfo.Constant("groups", "", QuadraticLossFactorFormula.Injectors)],
            K.Number.Gives(Pulse.QuadraticLossFactorResult),
            [Pulse.QuadraticLossFactorSource],
            new(
                [0.61],
                1.0413867239989252,
                1e-12,
                new DataSource("Definition", "counting at a thousand moments how many of four are open")
            )
        );

    private readonly struct QuadraticLossFactorFormula : IFormula
    {
        internal const int Injectors = 4;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Pulse.QuadraticLossFactor(Injectors, a[0]);
    }

    private static FormulaInfo FlowWeightedLossFactor() =>
        FormulaInfo.Of(
            default(FlowWeightedLossFactorFormula),
            "Pulse.FlowWeightedLossFactor",
            "How much more of a quadratic loss fuel meets when four injectors draw in turn",
            FormulaInfo.FormulaTopic.Injectors,
            [K.Fraction.Within(1e-6, 1).Given("openShare", "d", "share of time in which each flows", 0.01, 1)],
            [],
            [new FormulaInfo.Constant("groups", "", QuadraticLossFactorFormula.Injectors)],
            K.Number.Gives(Pulse.FlowWeightedLossFactorResult),
            [Pulse.FlowWeightedLossFactorSource],
            new(
                [0.125],
                4,
                1e-12,
                new DataSource("Definition", "one of four open for half of the time: cubed, 0.5 over an eighth")
            )
        );

    private readonly struct FlowWeightedLossFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Pulse.FlowWeightedLossFactor(QuadraticLossFactorFormula.Injectors, a[0]);
    }
}
