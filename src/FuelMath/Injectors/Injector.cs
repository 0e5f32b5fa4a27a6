using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A port fuel injector: the mass delivered by a pulse, and the pulse that delivers a mass.</summary>
/// <remarks>
/// <para>
/// The mass of a pulse is static flow times (effective width + short-pulse correction), where the effective width is
/// the pulse width minus the dead time. When the time off is shorter than its closing time, the injector stays open and
/// delivers its static flow. Not for direct injection.
/// </para>
/// <para>
/// Caution: a stuck-open injector can fill a cylinder or the sump with fuel; drivers spark at a bench; a predicted mass
/// is never clearance to load an engine: verify with a sensor at light load first.
/// </para>
/// <para>Source: [SAE-J1832] dynamic flow in the linear range.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/InjectorExamples.cs" region="Injector" />
/// </example>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed partial class Injector
{
    private readonly double smallest;
    private readonly double closing;

    /// <summary>Describes an injector.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="rating">Its static flow with pressure and fluid.</param>
    /// <param name="deadTime">Its dead time over voltage and differential pressure.</param>
    /// <param name="correction">Its departure from the straight line at short pulses.</param>
    /// <param name="smallestRepeatableWidth">
    /// The shortest <em>effective</em> width with repeatable delivery; not negative. Where data give a pulse width,
    /// subtract the dead time at the voltage of the data.
    /// </param>
    /// <param name="closingTime">Time from the end of a pulse until the injector is closed; not negative.</param>
    /// <param name="coil">Resistance of its coil; greater than zero.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException">Rating, dead time or correction is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Injector(
        string name,
        FlowRating rating,
        DeadTimeTable deadTime,
        ShortPulseCorrection correction,
        Duration smallestRepeatableWidth,
        Duration closingTime,
        ElectricResistance coil
    )
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(deadTime);
        ArgumentNullException.ThrowIfNull(correction);
        smallest = Guard.NotNegative(smallestRepeatableWidth, smallestRepeatableWidth.InSi(), part: Name);
        closing = Guard.NotNegative(closingTime, closingTime.InSi(), part: Name);
        Guard.Positive(coil, coil.InSi(), part: Name);
        (Rating, DeadTime, Correction) = (rating.Of(name), deadTime.Of(name), correction.Of(name));
        (SmallestRepeatableWidth, ClosingTime, Coil) = (smallestRepeatableWidth, closingTime, coil);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its static flow with pressure and fluid.</summary>
    public FlowRating Rating { get; }

    /// <summary>Its dead time over voltage and differential pressure.</summary>
    public DeadTimeTable DeadTime { get; }

    /// <summary>Its departure from the straight line at short pulses.</summary>
    public ShortPulseCorrection Correction { get; }

    /// <summary>The shortest effective width with repeatable delivery.</summary>
    public Duration SmallestRepeatableWidth { get; }

    /// <summary>Time from the end of a pulse until the injector is closed.</summary>
    public Duration ClosingTime { get; }

    /// <summary>Resistance of its coil.</summary>
    public ElectricResistance Coil { get; }

    /// <summary>The effective width from which delivery is repeatable and mass rises with width, s.</summary>
    internal double LeastEffectiveWidthSi => Math.Max(smallest, Correction.RisesFromSi);

    /// <summary>The static mass flow, held open.</summary>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <returns>The mass flow, in kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public MassFlow StaticMassFlow(Pressure differentialPressure, Density density) =>
        Rating.MassFlowAt(differentialPressure, density);

    /// <summary>Computes one pulse and its mass.</summary>
    /// <param name="pulseWidth">Commanded width, dead time included; not negative.</param>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <returns>The pulse.</returns>
    /// <exception cref="OutsideTableException">
    /// Voltage or pressure is outside the dead-time table, and it refuses.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public PulseResult Deliver(
        Duration pulseWidth,
        Duration period,
        Pressure differentialPressure,
        Density density,
        ElectricPotential atInjector
    ) =>
        PulseAt(
            Guard.NotNegative(pulseWidth, pulseWidth.InSi(), part: Name),
            Guard.Positive(period, period.InSi(), part: Name),
            Rating.MassFlowSiAt(differentialPressure, density),
            DeadTime.SiAt(atInjector, differentialPressure)
        );

    /// <summary>The pulse that delivers a mass, on the rising branch above the last non-monotonic part.</summary>
    /// <param name="wanted">
    /// The mass per period: zero, or from <see cref="LeastMass"/> to <see cref="MostMeasuredMass"/>.
    /// </param>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <returns>The pulse.</returns>
    /// <exception cref="OutsideTableException">
    /// Voltage or pressure is outside the dead-time table, and it refuses.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The mass is more than a pulse can meter in the period, or less than the least repeatable mass; or another value
    /// is outside its range.
    /// </exception>
    public PulseResult WidthFor(
        Mass wanted,
        Duration period,
        Pressure differentialPressure,
        Density density,
        ElectricPotential atInjector
    )
    {
        double mass = Guard.NotNegative(wanted, wanted.InSi(), part: Name);
        double seconds = Guard.Positive(period, period.InSi(), part: Name);
        double flow = Rating.MassFlowSiAt(differentialPressure, density);
        double dead = DeadTime.SiAt(atInjector, differentialPressure);
        if (mass == 0)
        {
            return PulseAt(0, seconds, flow, dead);
        }

        double most = Measured(seconds, flow, dead);
        if (mass > most * (1 + Guard.EdgeTolerance))
        {
            throw Guard.OutOfRange(
                wanted,
                $"at most {SiUnits.Mass(most):most}, which a pulse can measure out in a period of {period:period} (held open it would be {SiUnits.Mass(flow * seconds):heldOpen})",
                part: Name
            );
        }

        double least = Least(flow);
        if (mass < least * (1 - Guard.EdgeTolerance))
        {
            throw Guard.OutOfRange(
                wanted,
                $"zero or at least {SiUnits.Mass(least):least}, the least that injector '{Name:part}' repeats",
                part: Name
            );
        }

        double effective = Correction.WidthFor(Math.Clamp(mass, Math.Min(least, most), most) / flow);
        return PulseAt(dead + effective, seconds, flow, dead);
    }

    /// <summary>The least mass with repeatable delivery.</summary>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <returns>The mass, in kg.</returns>
    /// <remarks>At the smallest repeatable width, or where the rising branch begins if that is later.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Mass LeastMass(Pressure differentialPressure, Density density) =>
        SiUnits.Mass(Least(Rating.MassFlowSiAt(differentialPressure, density)));

    /// <summary>The greatest mass that a pulse can meter: the injector closes just before the next one.</summary>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <returns>The mass, in kg; zero when the period leaves no time.</returns>
    /// <exception cref="OutsideTableException">
    /// Voltage or pressure is outside the dead-time table, and it refuses.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Mass MostMeasuredMass(
        Duration period,
        Pressure differentialPressure,
        Density density,
        ElectricPotential atInjector
    ) =>
        SiUnits.Mass(
            Measured(
                Guard.Positive(period, period.InSi(), part: Name),
                Rating.MassFlowSiAt(differentialPressure, density),
                DeadTime.SiAt(atInjector, differentialPressure)
            )
        );

    /// <summary>The greatest mass in a period: held open.</summary>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <returns>The mass, in kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Mass MostMass(Duration period, Pressure differentialPressure, Density density) =>
        SiUnits.Mass(
            Rating.MassFlowSiAt(differentialPressure, density) * Guard.Positive(period, period.InSi(), part: Name)
        );

    /// <summary>The same injector with another rating, as measured on a bench.</summary>
    /// <param name="name">The name of the new one; not blank.</param>
    /// <param name="rating">Its rating.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public Injector WithRating(string name, FlowRating rating) =>
        new(name, rating, DeadTime, Correction, SmallestRepeatableWidth, ClosingTime, Coil);

    /// <summary>The same injector with its static flow multiplied, as for one measured against its set.</summary>
    /// <param name="name">The name of the new one; not blank.</param>
    /// <param name="scale">The factor on the flow; greater than zero.</param>
    /// <param name="source">Where the factor comes from.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Injector WithFlowScale(string name, Ratio scale, DataSource source) =>
        WithRating(name, Rating.WithFlowScale(scale, source));

    /// <summary>The same injector with another dead time, as measured on a bench.</summary>
    /// <param name="name">The name of the new one; not blank.</param>
    /// <param name="deadTime">Its dead time.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public Injector WithDeadTime(string name, DeadTimeTable deadTime) =>
        new(name, Rating, deadTime, Correction, SmallestRepeatableWidth, ClosingTime, Coil);

    /// <inheritdoc />
    public override string ToString() => Name;

    private static string Show(double kilograms, Mass inUnitOf) => Guard.Show(SiUnits.Mass(kilograms), inUnitOf.Unit);

    /// <summary>A pulse at a known static flow (kg/s) and dead time (s); width and period in s.</summary>
    internal PulseResult PulseAt(double width, double period, double flow, double dead)
    {
        double effective = Pulse.EffectiveWidth(new Real(width), new Real(dead)).Value;
        double slack = Guard.EdgeTolerance * period;
        bool heldOpen = width >= period || (effective > 0 && period - width < closing - slack);
        double mass = heldOpen ? flow * period : MassOf(flow, effective);
        bool repeatable = width == 0 || heldOpen || effective >= Math.Max(smallest, Correction.RisesFromSi) - slack;
        return new(width, period, dead, effective, flow, mass, heldOpen, repeatable);
    }

    /// <summary>
    /// The mass of a pulse of this width, kg, in any scalar: the mass of <see cref="PulseAt"/>, with flow (kg/s) and
    /// dead time (s) as variables.
    /// </summary>
    internal T Mass<T>(double width, double period, T flow, T dead)
        where T : struct, IScalar<T>
    {
        if (width >= period)
        {
            return flow * period;
        }

        T effective = Pulse.EffectiveWidth(T.Of(width), dead);
        T mass = Pulse.Mass(flow, effective, Correction.Read(effective));
        return period - width < closing - (Guard.EdgeTolerance * period)
            ? T.Select(T.Less(T.Of(0), effective), flow * period, mass)
            : mass;
    }

    private double MassOf(double flow, double effective) =>
        Pulse.Mass(new Real(flow), new Real(effective), new Real(Correction.SiAt(effective))).Value;

    private double Least(double flow) => MassOf(flow, LeastEffectiveWidthSi);

    private double Measured(double period, double flow, double dead)
    {
        double effective = period - closing - dead;
        return effective > 0 ? MassOf(flow, effective) : 0;
    }
}
