using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The injectors needed for a power, from power and consumption alone, without the engine's air.</summary>
/// <remarks>
/// <para>
/// Fuel is crank power times brake specific fuel consumption, shared evenly. For injectors of a list, their dead times
/// and the idle, see <see cref="InjectorSizing"/>. Source: [Heywood-1988] chapter 2.
/// </para>
/// <para>Caution: a consumption estimated too low gives injectors that run lean at full load.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/EverydayExamples.cs" region="InjectorsForPower" />
/// </example>
/// <seealso href="../start/questions.html">Everyday questions</seealso>
public sealed class InjectorNeed
{
    private readonly double mean;
    private readonly double duty;

    /// <summary>Creates a power and the injectors that share its fuel.</summary>
    /// <param name="crankPower">Power at the crankshaft; greater than zero.</param>
    /// <param name="consumption">Brake specific fuel consumption of this fuel at that power, enrichment included; greater than zero.</param>
    /// <param name="injectors">Number of injectors that share the fuel; 1 to 128.</param>
    /// <param name="dutyLimit">The largest duty cycle, dead time included; 10 % to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public InjectorNeed(Power crankPower, BrakeSpecificFuelConsumption consumption, int injectors, Ratio dutyLimit)
    {
        Guard.Positive(crankPower, crankPower.InSi());
        Guard.Positive(consumption, consumption.InSi());
        Injectors = Guard.InRange(injectors, 1, 128);
        duty = Guard.InRange(dutyLimit, dutyLimit.InSi(), 0.1, 1, SiUnits.Ratio);
        FuelFlow = FuelDemand.FromCrankPower(crankPower, consumption);
        mean = FuelFlow.InSi() / Injectors;
    }

    /// <summary>Number of injectors that share the fuel.</summary>
    public int Injectors { get; }

    /// <summary>Fuel of the whole engine, in kg/s.</summary>
    public MassFlow FuelFlow { get; }

    /// <summary>The static flow of one injector at the pressure and density of that power.</summary>
    /// <param name="deadTime">Dead time there; not negative, and shorter than the duty limit allows.</param>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <returns>The mass flow, in kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public MassFlow StaticFlow(Duration deadTime, Duration period)
    {
        double dead = Guard.NotNegative(deadTime, deadTime.InSi());
        double time = Guard.Positive(period, period.InSi());
        return dead < duty * time
            ? SiUnits.MassFlow(
                PulseTiming.NeededStaticFlow(new Real(mean), new Real(duty), new Real(dead), new Real(time)).Value
            )
            : throw Guard.OutOfRange(
                deadTime,
                $"shorter than {SiUnits.Duration(duty * time):below}, which the duty limit leaves of the period"
            );
    }

    /// <summary>The duty cycle of injectors that are at hand.</summary>
    /// <param name="rating">Their rating.</param>
    /// <param name="differentialPressure">Pressure across them at that power; greater than zero.</param>
    /// <param name="density">Density of the fuel there; greater than zero.</param>
    /// <param name="deadTime">Dead time there; not negative.</param>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <returns>The pulse width, dead time included, over the period. Above 100 % they are too small.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rating"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="OutsideTableException">The rating's measured exponent does not cover that pressure.</exception>
    public Ratio DutyCycle(
        FlowRating rating,
        Pressure differentialPressure,
        Density density,
        Duration deadTime,
        Duration period
    )
    {
        ArgumentNullException.ThrowIfNull(rating);
        Real held = new(rating.MassFlowAt(differentialPressure, density).InSi());
        Real dead = new(Guard.NotNegative(deadTime, deadTime.InSi()));
        Real time = new(Guard.Positive(period, period.InSi()));
        return SiUnits.Ratio(Pulse.DutyCycle(PulseTiming.PulseWidth(mean * time, held, dead), time).Value);
    }

    /// <summary>The rating to look for: a static flow as a volume flow at the conditions of ratings.</summary>
    /// <param name="staticFlow">The static flow needed; greater than zero.</param>
    /// <param name="differentialPressure">Pressure across the injectors at that power; greater than zero.</param>
    /// <param name="density">Density of the fuel there; greater than zero.</param>
    /// <param name="ratedDifferentialPressure">Differential pressure of the ratings; greater than zero.</param>
    /// <param name="ratedFluid">Their fluid.</param>
    /// <param name="ratedTemperature">Its temperature.</param>
    /// <returns>The volume flow of one injector, in m³/s.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="ratedFluid"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static VolumeFlow Rating(
        MassFlow staticFlow,
        Pressure differentialPressure,
        Density density,
        Pressure ratedDifferentialPressure,
        Fuel ratedFluid,
        Temperature ratedTemperature
    )
    {
        ArgumentNullException.ThrowIfNull(ratedFluid);
        double rated = ratedFluid.DensityAt(ratedTemperature).InSi();
        return SiUnits.VolumeFlow(
            Orifice
                .CarriedMassFlow(
                    new Real(Guard.Positive(staticFlow, staticFlow.InSi())),
                    new Real(Guard.Positive(differentialPressure, differentialPressure.InSi())),
                    new Real(Guard.Positive(density, density.InSi())),
                    new Real(Guard.Positive(ratedDifferentialPressure, ratedDifferentialPressure.InSi())),
                    new Real(rated)
                )
                .Value / rated
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Injectors} injectors for {FuelFlow}");
}
