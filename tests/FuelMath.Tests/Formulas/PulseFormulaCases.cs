using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The formulas of mixture errors, timing and sizing, for the matrix of <see cref="FormulaCases"/>.</summary>
internal static class PulseFormulaCases
{
    internal static IReadOnlyList<FormulaCase> All { get; } =
    [
        new MixtureErrorLambdaFactor(),
        new MixtureErrorMeanLambda(),
        new PulseTimingPulseWidth(),
        new PulseTimingRateAtDutyCycle(),
        new PulseTimingNeededStaticFlow(),
        new PulseTimingWorstStepError(),
    ];

    private sealed class MixtureErrorLambdaFactor()
        : FormulaCase("MixtureError.LambdaFactor", 0, (0.5, 2), (0.3, 2), (0.3, 2), (1e-3, 0.02), (-1e-3, 5e-4))
    {
        internal override T At<T>(T[] a) => MixtureError.LambdaFactor(a[0], a[1], a[2], a[3], a[4]);
    }

    private sealed class MixtureErrorMeanLambda()
        : FormulaCase("MixtureError.MeanLambda", 0, (1e-4, 1e-3), (1e-4, 1e-3), (1e-5, 1e-4), (1e-5, 1e-4), (6, 16))
    {
        internal override T At<T>(T[] a) => MixtureError.MeanLambda<T>(a.AsSpan(0, 2), a.AsSpan(2, 2), a[4]);
    }

    private sealed class PulseTimingPulseWidth()
        : FormulaCase("PulseTiming.PulseWidth", 0, (1e-6, 1e-4), (1e-3, 0.1), (2e-4, 3e-3))
    {
        internal override T At<T>(T[] a) => PulseTiming.PulseWidth(a[0], a[1], a[2]);
    }

    private sealed class PulseTimingRateAtDutyCycle()
        : FormulaCase("PulseTiming.RateAtDutyCycle", 0, (0.05, 1), (5e-4, 0.02))
    {
        internal override T At<T>(T[] a) => PulseTiming.RateAtDutyCycle(a[0], a[1]);
    }

    private sealed class PulseTimingNeededStaticFlow()
        : FormulaCase("PulseTiming.NeededStaticFlow", 0, (1e-4, 0.05), (0.6, 1), (2e-4, 2e-3), (5e-3, 0.05))
    {
        internal override T At<T>(T[] a) => PulseTiming.NeededStaticFlow(a[0], a[1], a[2], a[3]);
    }

    private sealed class PulseTimingWorstStepError()
        : FormulaCase("PulseTiming.WorstStepError", 0, (1e-7, 1e-4), (1e-4, 0.02))
    {
        internal override T At<T>(T[] a) => PulseTiming.WorstStepError(a[0], a[1]);
    }
}
