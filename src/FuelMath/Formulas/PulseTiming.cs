using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Widths, duty cycles and sizes of pulsed injectors. SI units.</summary>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public static class PulseTiming
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource PulseWidthSource = new(
        "SAE-J1832",
        "the straight line through the linear range, solved for the width"
    );

    internal static readonly DataSource RateAtDutyCycleSource = new("Definition", "width over period");

    internal static readonly DataSource NeededStaticFlowSource = new(
        "Definition",
        "mean flow over the share of time that delivers"
    );

    internal static readonly DataSource WorstStepErrorSource = new(
        "Definition",
        "half a step over the effective width"
    );

    internal static readonly Symbol Width = new("tp", "s", "pulse width");

    internal static readonly Symbol Rate = new("n", "1/s", "pulses per second at which the duty cycle is reached");

    internal static readonly Symbol Needed = new("ms", "kg/s", "static flow needed");

    internal static readonly Symbol Step = new("e", "", "worst relative error of the mass");

    /// <summary>The pulse width for a mass in the linear range: mass / static flow + dead time.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="mass">Mass of one pulse, kg.</param>
    /// <param name="staticMassFlow">Mass flow when held open, kg/s; greater than zero.</param>
    /// <param name="deadTime">Dead time, s.</param>
    /// <returns>Pulse width, s.</returns>
    /// <remarks>Source: [SAE-J1832] the straight line through the linear range, solved for the width.</remarks>
    [MethodImpl(Inline)]
    public static T PulseWidth<T>(T mass, T staticMassFlow, T deadTime)
        where T : struct, IScalar<T> => T.Step((mass / staticMassFlow) + deadTime, Width, PulseWidthSource);

    /// <summary>Pulses per second at which a constant width reaches a duty cycle: n = D / width.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="dutyCycle">Duty cycle, above 0 and up to 1.</param>
    /// <param name="pulseWidth">Pulse width, dead time included, s; greater than zero.</param>
    /// <returns>Pulses per second, 1/s.</returns>
    /// <remarks>Source: [Definition] width over period.</remarks>
    [MethodImpl(Inline)]
    public static T RateAtDutyCycle<T>(T dutyCycle, T pulseWidth)
        where T : struct, IScalar<T> => T.Step(dutyCycle / pulseWidth, Rate, RateAtDutyCycleSource);

    /// <summary>The static flow that delivers a mean flow at a duty cycle: m / (D - dead time / period).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="meanMassFlow">Mean mass flow of one injector, kg/s.</param>
    /// <param name="dutyCycle">Allowed duty cycle, up to 1; dead time included.</param>
    /// <param name="deadTime">Dead time, s; less than the duty cycle leaves.</param>
    /// <param name="period">Time from one pulse to the next, s; greater than zero.</param>
    /// <returns>Static mass flow, kg/s.</returns>
    /// <remarks>Source: [Definition] mean flow over the share of time that delivers.</remarks>
    [MethodImpl(Inline)]
    public static T NeededStaticFlow<T>(T meanMassFlow, T dutyCycle, T deadTime, T period)
        where T : struct, IScalar<T> =>
        T.Step(meanMassFlow / (dutyCycle - (deadTime / period)), Needed, NeededStaticFlowSource);

    /// <summary>The largest mass error from rounding a width to the nearest timer step: step / (2 w).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="timerStep">Step of the timer, s.</param>
    /// <param name="effectiveWidth">Effective width, s; greater than zero.</param>
    /// <returns>Relative error of the mass, to either side.</returns>
    /// <remarks>In the linear range. Source: [Definition] half a step over the effective width.</remarks>
    [MethodImpl(Inline)]
    public static T WorstStepError<T>(T timerStep, T effectiveWidth)
        where T : struct, IScalar<T> => T.Step(timerStep / (2 * effectiveWidth), Step, WorstStepErrorSource);
}
