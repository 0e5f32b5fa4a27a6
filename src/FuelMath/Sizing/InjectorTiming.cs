using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The timing of an injector on an engine: width for a mass and mass for a width, duty cycle, and the speed at which it
/// reaches a limit.
/// </summary>
/// <remarks>
/// Injectors discharge into the manifold. A predicted mass is no clearance to load an engine: verify with a sensor at light
/// load first.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/TimingExamples.cs" region="Timing" />
/// </example>
/// <seealso href="../guide/sizing.html">Sizing, timing and idle of injectors</seealso>
public sealed class InjectorTiming
{
    /// <summary>Steps between two knots of the volumetric efficiency in the search for a crossing.</summary>
    private const int Steps = 32;

    /// <summary>Creates the timing of an injector on an engine.</summary>
    /// <param name="injector">The injector; all are equal.</param>
    /// <param name="layout">The number of injectors, and how often they open.</param>
    /// <param name="supply">Their supply.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public InjectorTiming(Injector injector, InjectorLayout layout, InjectorSupply supply)
    {
        ArgumentNullException.ThrowIfNull(injector);
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(supply);
        (Injector, Layout, Supply) = (injector, layout, supply);
    }

    /// <summary>The injector.</summary>
    public Injector Injector { get; }

    /// <summary>The number of injectors, and how often they open.</summary>
    public InjectorLayout Layout { get; }

    /// <summary>Their supply.</summary>
    public InjectorSupply Supply { get; }

    /// <summary>The pulse of a width.</summary>
    /// <param name="pulseWidth">Commanded width, dead time included; not negative.</param>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <returns>The pulse of one injector.</returns>
    /// <exception cref="OutsideTableException">The conditions are outside the dead-time table, and it refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Injector.PulseResult Deliver(Duration pulseWidth, RotationalSpeed speed, AbsolutePressure manifold) =>
        Injector.Deliver(
            pulseWidth,
            Layout.PeriodAt(speed),
            Supply.DifferentialPressureAt(manifold),
            Supply.Density,
            Supply.AtInjector
        );

    /// <summary>The pulse for a mass.</summary>
    /// <param name="perChamberCycle">Mass for one chamber in one cycle, shared by its injectors and their pulses.</param>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <returns>The pulse of one injector.</returns>
    /// <exception cref="OutsideTableException">The conditions are outside the dead-time table, and it refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The mass is too large for the period, or less than the least repeatable one.
    /// </exception>
    public Injector.PulseResult WidthFor(Mass perChamberCycle, RotationalSpeed speed, AbsolutePressure manifold) =>
        Injector.WidthFor(
            perChamberCycle / Layout.PulsesPerChamber,
            Layout.PeriodAt(speed),
            Supply.DifferentialPressureAt(manifold),
            Supply.Density,
            Supply.AtInjector
        );

    /// <summary>The duty cycle for a mixture; above 100 % the injector is too small.</summary>
    /// <param name="lambda">The mixture.</param>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <param name="charge">Temperature of the charge.</param>
    /// <returns>Pulse width over period, dead time included.</returns>
    /// <exception cref="OutsideTableException">The conditions are outside the dead-time or volumetric-efficiency table.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Ratio DutyCycleAt(Lambda lambda, RotationalSpeed speed, AbsolutePressure manifold, Temperature charge) =>
        SiUnits.Ratio(Duty(Fuel(lambda, speed, manifold, charge), speed, manifold));

    /// <summary>The speed at which a constant mass reaches a duty cycle.</summary>
    /// <param name="limit">The duty cycle; above 0 % and up to 100 %.</param>
    /// <param name="perChamberCycle">Mass per chamber and cycle; at least the least repeatable one.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <returns>The speed, in rad/s.</returns>
    /// <exception cref="OutsideTableException">The conditions are outside the dead-time table, and it refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public RotationalSpeed SpeedAtDutyCycle(Ratio limit, Mass perChamberCycle, AbsolutePressure manifold)
    {
        double mass = Guard.Positive(perChamberCycle, perChamberCycle.InSi());
        double least = LeastPulse(manifold) * Layout.PulsesPerChamber;
        if (mass < least * (1 - Guard.EdgeTolerance))
        {
            throw Guard.OutOfRange(
                perChamberCycle,
                $"at least {SiUnits.Mass(least):least}, the least that the injectors repeat"
            );
        }

        double rate = PulseTiming.RateAtDutyCycle(new Real(Limit(limit)), new Real(PulseWidth(mass, manifold))).Value;
        // Pulses per second of an injector at a speed of 1 rad/s.
        double perRadian = 1 / Layout.PeriodAt(SiUnits.RotationalSpeed(1)).InSi();
        return SiUnits.RotationalSpeed(rate / perRadian);
    }

    /// <summary>The first speed at which the duty cycle for a mixture reaches a limit, at one manifold pressure.</summary>
    /// <param name="limit">The duty cycle; above 0 % and up to 100 %.</param>
    /// <param name="lambda">The mixture.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <param name="charge">Temperature of the charge.</param>
    /// <param name="from">The lowest speed, at which the limit is not reached.</param>
    /// <param name="to">The highest speed; above <paramref name="from"/>.</param>
    /// <returns>The speed, in rad/s.</returns>
    /// <remarks>Searched in 32 steps between the knots of the volumetric efficiency, then by bisection.</remarks>
    /// <exception cref="NoSolutionException">The limit is not reached; the message gives the largest duty cycle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The limit is already reached at <paramref name="from"/>, or a value is outside its range.
    /// </exception>
    public RotationalSpeed FirstSpeedAtDutyCycle(
        Ratio limit,
        Lambda lambda,
        AbsolutePressure manifold,
        Temperature charge,
        RotationalSpeed from,
        RotationalSpeed to
    )
    {
        double aim = Limit(limit);
        double start = Guard.Positive(from, from.InSi());
        double end = to.InSi();
        if (!(end > start && double.IsFinite(end)))
        {
            throw Guard.OutOfRange(to, $"above {from:above}");
        }

        double DutyAt(double speed)
        {
            RotationalSpeed at = SiUnits.RotationalSpeed(speed);
            return Duty(Fuel(lambda, at, manifold, charge), at, manifold);
        }

        if (DutyAt(start) >= aim)
        {
            throw Guard.OutOfRange(from, $"a speed at which the duty cycle is below {Amount.Percent(aim):dutyCycle}");
        }

        (double most, double mostAt, double before) = (0, start, start);
        foreach (double speed in Grid(start, end))
        {
            double duty = DutyAt(speed);
            if (duty >= aim)
            {
                return SiUnits.RotationalSpeed(Rising.Root(DutyAt, aim, before, speed));
            }

            (most, mostAt) = duty > most ? (duty, speed) : (most, mostAt);
            before = speed;
        }

        throw Guard.NoSolution(
            RefusalCode.NotReached,
            $"the speed at which the duty cycle reaches {Amount.Percent(aim):value}",
            $"up to {to:speed} it comes to {Amount.Percent(most):most}, at {SiUnits.RotationalSpeed(mostAt).ToUnit(to.Unit):speedOfMost}."
        );
    }

    /// <summary>The metering of the idle demand by the injector.</summary>
    /// <param name="lambda">The mixture at idle.</param>
    /// <param name="speed">Idle speed; greater than zero.</param>
    /// <param name="manifold">Absolute manifold pressure at idle.</param>
    /// <param name="charge">Temperature of the charge.</param>
    /// <param name="timer">The timer that sets the width.</param>
    /// <returns>Needed and least mass, widths, resolution.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="timer"/> is null.</exception>
    /// <exception cref="OutsideTableException">The conditions are outside the dead-time or volumetric-efficiency table.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public IdleControl IdleAt(
        Lambda lambda,
        RotationalSpeed speed,
        AbsolutePressure manifold,
        Temperature charge,
        ControllerTimer timer
    )
    {
        ArgumentNullException.ThrowIfNull(timer);
        double wanted = Fuel(lambda, speed, manifold, charge);
        double least = LeastPulse(manifold);
        double dead = DeadTime(manifold);
        return new(
            wanted / Layout.PulsesPerChamber,
            least,
            PulseWidth(wanted, manifold) - dead,
            dead,
            Injector.LeastEffectiveWidthSi,
            Lambda.FromRatio(lambda.Si * wanted / (least * Layout.PulsesPerChamber)),
            timer
        );
    }

    /// <summary>The working of a duty cycle: air, fuel, static flow, width, duty cycle.</summary>
    /// <param name="lambda">The mixture.</param>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <param name="charge">Temperature of the charge.</param>
    /// <returns>The working, in the linear range of the injector.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="OutsideTableException">A value lies outside the data.</exception>
    public Working WorkingAt(Lambda lambda, RotationalSpeed speed, AbsolutePressure manifold, Temperature charge)
    {
        double air = Layout.Engine.AirMassPerChamberCycle(speed, manifold, charge).InSi();
        Traced fuel = EngineAir.FuelMass(
            Traced.Input(BeliefSymbols.Air, air),
            Traced.Input(BeliefSymbols.Stoichiometric, Supply.Fuel.StoichiometricRatio.Si),
            Traced.Input(BeliefSymbols.Intended, lambda.Si)
        );
        Traced pulse = Traced.Step(fuel / Layout.PulsesPerChamber, Symbols.PulseMass, BeliefSymbols.Shares);
        Traced width = PulseTiming.PulseWidth(
            pulse,
            BeliefSymbols.StaticFlow(Injector.Rating, Supply.DifferentialPressureAt(manifold), Supply.Density),
            Traced.Input(Symbols.DeadTime, DeadTime(manifold))
        );
        return Pulse.DutyCycle(width, Traced.Input(Symbols.Period, Layout.PeriodAt(speed).InSi())).ToWorking();
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Injector}: {Layout}");

    private static double Limit(Ratio limit)
    {
        return Guard.PositiveUpTo(limit, limit.InSi(), 1, SiUnits.Ratio);
    }

    /// <summary>Fuel for one chamber in one cycle, kg.</summary>
    private double Fuel(Lambda lambda, RotationalSpeed speed, AbsolutePressure manifold, Temperature charge) =>
        FuelDemand
            .FromAir(
                Layout.Engine.AirMassPerChamberCycle(speed, manifold, charge),
                Supply.Fuel.StoichiometricRatio,
                lambda
            )
            .InSi();

    private double StaticFlow(AbsolutePressure manifold) =>
        Injector.Rating.MassFlowSiAt(Supply.DifferentialPressureAt(manifold), Supply.Density);

    private double DeadTime(AbsolutePressure manifold) =>
        Injector.DeadTime.SiAt(Supply.AtInjector, Supply.DifferentialPressureAt(manifold));

    private double LeastPulse(AbsolutePressure manifold) =>
        Injector.LeastMass(Supply.DifferentialPressureAt(manifold), Supply.Density).InSi();

    /// <summary>The width for a mass per chamber and cycle, even if longer than the period; never below the smallest.</summary>
    private double PulseWidth(double perChamberCycle, AbsolutePressure manifold)
    {
        double pulse = perChamberCycle / Layout.PulsesPerChamber;
        double effective = Injector.Correction.WidthFor(pulse / StaticFlow(manifold));
        return DeadTime(manifold) + Math.Max(effective, Injector.LeastEffectiveWidthSi);
    }

    private double Duty(double perChamberCycle, RotationalSpeed speed, AbsolutePressure manifold) =>
        Pulse.DutyCycle(new Real(PulseWidth(perChamberCycle, manifold)), new Real(Layout.PeriodAt(speed).InSi())).Value;

    private IEnumerable<double> Grid(double start, double end)
    {
        double[] knots =
        [
            start,
            .. Layout.Engine.VolumetricEfficiency.Speeds.Select(s => s.InSi()).Where(s => s > start && s < end),
            end,
        ];
        for (int i = 1; i < knots.Length; i++)
        {
            for (int step = 1; step <= Steps; step++)
            {
                yield return step == Steps ? knots[i] : knots[i - 1] + ((knots[i] - knots[i - 1]) * step / Steps);
            }
        }
    }
}
