using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>What a pulsed injector delivers. SI units.</summary>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public static class Pulse
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource EffectiveWidthSource = new(
        "SAE-J1832",
        "the straight line through the linear range, whose time offset this is"
    );

    internal static readonly DataSource MassSource = new("SAE-J1832", "dynamic flow");

    internal static readonly DataSource DutyCycleSource = new("Definition", "width over period");

    internal static readonly DataSource MeanMassFlowSource = new(
        "Definition",
        "mass of a pulse times pulses per second"
    );

    internal static readonly DataSource QuadraticLossFactorSource = new("Definition", "mean of a square");

    internal static readonly Symbol QuadraticLossFactorResult = new(
        "kq",
        "",
        "mean of the flow squared over the square of the mean"
    );

    internal static readonly DataSource FlowWeightedLossFactorSource = new("Definition", "mean weighted by flow");

    internal static readonly Symbol FlowWeightedLossFactorResult = new(
        "kc",
        "",
        "mean of the flow cubed over the cube of the mean"
    );

    /// <summary>The effective width of a pulse: w = max(0, width - dead time).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="width">Pulse width as commanded, s.</param>
    /// <param name="deadTime">Dead time at the injector's own voltage and differential pressure, s.</param>
    /// <returns>Effective width, s; never negative.</returns>
    /// <remarks>Source: [SAE-J1832] the straight line through the linear range, whose time offset this is.</remarks>
    [MethodImpl(Inline)]
    public static T EffectiveWidth<T>(T width, T deadTime)
        where T : struct, IScalar<T> =>
        T.Step(T.Max(width - deadTime, T.Of(0)), Symbols.EffectiveWidth, EffectiveWidthSource);

    /// <summary>The mass of one pulse: m = max(0, static flow x (effective width + correction)).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="staticMassFlow">Mass flow when held open, kg/s.</param>
    /// <param name="effectiveWidth">Effective width, s.</param>
    /// <param name="correction">Time added below the linear range, s; zero inside it; either sign.</param>
    /// <returns>Mass, kg; never negative.</returns>
    /// <remarks>Source: [SAE-J1832] dynamic flow; [Definition] the correction as a time at static flow.</remarks>
    [MethodImpl(Inline)]
    public static T Mass<T>(T staticMassFlow, T effectiveWidth, T correction)
        where T : struct, IScalar<T> =>
        T.Step(T.Max(staticMassFlow * (effectiveWidth + correction), T.Of(0)), Symbols.PulseMass, MassSource);

    /// <summary>The share of time that the injector is driven, dead time included: D = width / period.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="width">Pulse width as commanded, s.</param>
    /// <param name="period">Time from one pulse to the next, s; greater than zero.</param>
    /// <returns>Duty cycle, 0 to 1.</returns>
    /// <remarks>Source: [Definition].</remarks>
    [MethodImpl(Inline)]
    public static T DutyCycle<T>(T width, T period)
        where T : struct, IScalar<T> => T.Step(width / period, Symbols.DutyCycle, DutyCycleSource);

    /// <summary>The mean flow of a train of pulses: mass per pulse x pulses per second.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="massPerPulse">Mass of one pulse, kg.</param>
    /// <param name="pulsesPerSecond">Pulses per second, 1/s.</param>
    /// <returns>Mean mass flow, kg/s.</returns>
    /// <remarks>Source: [Definition].</remarks>
    [MethodImpl(Inline)]
    public static T MeanMassFlow<T>(T massPerPulse, T pulsesPerSecond)
        where T : struct, IScalar<T> =>
        T.Step(massPerPulse * pulsesPerSecond, Symbols.MeanMassFlow, MeanMassFlowSource);

    /// <summary>
    /// The mean over time of a loss that goes with the square of the flow, over the loss of the mean flow, where equal
    /// injectors draw in turn: 1 + f (1 - f) / (n d)^2, where f is the fraction of n d.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="groups">Injectors, or groups of them that open together, evenly staggered; one or more.</param>
    /// <param name="openShare">The share of time in which each flows, greater than 0 and at most 1: effective width over period.</param>
    /// <returns>The mean of the flow squared over the square of the mean, 1 or more.</returns>
    /// <remarks>
    /// Assumes that the line's flow follows the injectors without delay: damping lowers the factor, resonance may raise
    /// it. At any moment floor(n d) groups flow, or one more. Source: [Definition] mean of a square.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T QuadraticLossFactor<T>(int groups, T openShare)
        where T : struct, IScalar<T>
    {
        T open = groups * openShare;
        T part = open - WholeOf(groups, open);
        return T.Step(1 + (part * (1 - part) / (open * open)), QuadraticLossFactorResult, QuadraticLossFactorSource);
    }

    /// <summary>
    /// The mean of the same loss weighted by the flow, over the loss of the mean flow: (w^3 + f (3 w^2 + 3 w + 1)) / (n
    /// d)^3, where w is the integer part and f the fraction of n d.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="groups">Injectors, or groups of them that open together, evenly staggered; one or more.</param>
    /// <param name="openShare">The share of time in which each flows, greater than 0 and at most 1: effective width over period.</param>
    /// <returns>The mean of the flow cubed over the cube of the mean, 1 or more.</returns>
    /// <remarks>
    /// The line's loss affects an injector only while it flows, which is when the loss is high. Assumptions as for
    /// <see cref="QuadraticLossFactor"/>. Source: [Definition] mean weighted by flow.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T FlowWeightedLossFactor<T>(int groups, T openShare)
        where T : struct, IScalar<T>
    {
        T open = groups * openShare;
        T whole = WholeOf(groups, open);
        T part = open - whole;
        return T.Step(
            ((whole * whole * whole) + (part * ((3 * whole * (whole + 1)) + 1))) / (open * open * open),
            FlowWeightedLossFactorResult,
            FlowWeightedLossFactorSource
        );
    }

    [MethodImpl(Inline)]
    private static T WholeOf<T>(int groups, T open)
        where T : struct, IScalar<T>
    {
        T whole = T.Of(0);
        for (int count = 1; count <= groups; count++)
        {
            whole = T.Select(T.Less(open, T.Of(count)), whole, T.Of(count));
        }

        return whole;
    }
}
