using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PulseTiming"/> in the catalog.</summary>
internal static class PulseTimingEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [PulseWidth(), RateAtDutyCycle(), NeededStaticFlow(), WorstStepError()];

    private static FormulaInfo PulseWidth() =>
        FormulaInfo.Of(
            default(PulseWidthFormula),
            "PulseTiming.PulseWidth",
            "The pulse width for a mass, in the linear range",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.Mass.Given("mass", Symbols.PulseMass, 1e-6, 0.0001),
                K.MassFlow.Within(1e-9, 10000).Given("staticMassFlow", "ms", "mass flow when held open", 0.001, 0.1),
                K.Time.Given("deadTime", Symbols.DeadTime, 0.0002, 0.003),
            ],
            [],
            [],
            K.Time.Gives(PulseTiming.Width),
            [PulseTiming.PulseWidthSource],
            new(
                [9.6e-6, 0.006, 0.0009],
                0.0025,
                1e-14,
                new DataSource("SAE-J1832", "straight line: 9.6 mg at 6 g/s after 0.9 ms, by hand")
            )
        );

    private readonly struct PulseWidthFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PulseTiming.PulseWidth(a[0], a[1], a[2]);
    }

    private static FormulaInfo RateAtDutyCycle() =>
        FormulaInfo.Of(
            default(RateAtDutyCycleFormula),
            "PulseTiming.RateAtDutyCycle",
            "The pulses per second at which a width reaches a duty cycle",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.Fraction.Given("dutyCycle", Symbols.DutyCycle, 0.05, 1),
                K.Time.Within(1e-9, 1e6).Given("pulseWidth", Symbols.Width, 0.0005, 0.02),
            ],
            [],
            [],
            K.Frequency.Gives(PulseTiming.Rate),
            [PulseTiming.RateAtDutyCycleSource],
            new([0.85, 0.01], 85, 1e-14, new DataSource("Definition", "0.85 over 0.01, by hand"))
        );

    private readonly struct RateAtDutyCycleFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PulseTiming.RateAtDutyCycle(a[0], a[1]);
    }

    private static FormulaInfo NeededStaticFlow() =>
        FormulaInfo.Of(
            default(NeededStaticFlowFormula),
            "PulseTiming.NeededStaticFlow",
            "The static flow that carries a mean flow at a duty cycle",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.MassFlow.Given("meanMassFlow", Symbols.MeanMassFlow, 0.0001, 0.05),
                K.Fraction.Within(1e-6, 1).Given("dutyCycle", Symbols.DutyCycle, 0.6, 1),
                K.Time.Given("deadTime", Symbols.DeadTime, 0.0002, 0.002),
                K.Time.Within(1e-9, 1e6).Given("period", Symbols.Period, 0.005, 0.05),
            ],
            [FormulaInfo.Bound.Below("deadTime", 1, ["dutyCycle", "period"], [])],
            [],
            K.MassFlow.Gives(PulseTiming.Needed),
            [PulseTiming.NeededStaticFlowSource],
            new(
                [0.001, 0.8, 0.001, 0.02],
                0.0013333333333333333,
                1e-14,
                new DataSource("Definition", "0.001 over three quarters, by hand")
            )
        );

    private readonly struct NeededStaticFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PulseTiming.NeededStaticFlow(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo WorstStepError() =>
        FormulaInfo.Of(
            default(WorstStepErrorFormula),
            "PulseTiming.WorstStepError",
            "The worst that rounding a width to a step of a timer does to the mass",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.Time.Given("timerStep", "dts", "step of the timer", 1e-7, 0.0001),
                K.Time.Within(1e-9, 1e6).Given("effectiveWidth", Symbols.EffectiveWidth, 0.0001, 0.02),
            ],
            [],
            [],
            K.Fraction.Gives(PulseTiming.Step),
            [PulseTiming.WorstStepErrorSource],
            new([1e-6, 0.001], 0.0005, 1e-14, new DataSource("Definition", "half of a thousandth, by hand"))
        );

    private readonly struct WorstStepErrorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PulseTiming.WorstStepError(a[0], a[1]);
    }
}
