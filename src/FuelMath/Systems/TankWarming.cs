using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>How pumps and the return loop warm the tank, and how the air cools it.</summary>
/// <remarks>
/// <para>
/// With the pump in the tank and a return line nearly all electrical power ends as heat in the fuel, hydraulic power
/// included: what the pump puts into pressure becomes heat where the regulator takes it out. The fuel that the engine burns
/// takes its share along, so that the tank gets less than that power: <see cref="TankWarming.Bounds"/>. One temperature for
/// the whole tank; its metal and what the return picks up from the engine bay are not counted, and neither is the sun. How
/// far a hose must stay from an exhaust is out of scope.
/// </para>
/// </remarks>
/// <seealso href="../guide/heat.html">Heat: the tank warms, the rail soaks</seealso>
public sealed partial class TankWarming
{
    private readonly double start;
    private readonly double ambient;
    private readonly double watts;
    private readonly double loss;
    private readonly double capacity;
    private readonly double drain;

    /// <summary>Describes a tank that is warmed.</summary>
    /// <param name="fuel">The fuel; its heat capacity must be known.</param>
    /// <param name="fuelMass">Mass in the tank at the start; greater than zero.</param>
    /// <param name="temperature">Temperature at the start, inside the range of the heat capacity, which is taken there.</param>
    /// <param name="cooling">The air around, and how it cools the tank.</param>
    /// <param name="power">Heat that comes into the tank; not negative.</param>
    /// <param name="burned">Fuel that leaves for the engine at the temperature of the tank; not negative.</param>
    /// <exception cref="ArgumentNullException">Fuel or cooling is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="UnknownPropertyException">The heat capacity is not known; the message says why.</exception>
    /// <exception cref="OutsideTableException">The heat capacity is not known at the temperature.</exception>
    public TankWarming(
        Fuel fuel,
        Mass fuelMass,
        Temperature temperature,
        TankCooling cooling,
        Power power,
        MassFlow burned
    )
    {
        ArgumentNullException.ThrowIfNull(fuel);
        ArgumentNullException.ThrowIfNull(cooling);
        double specific = fuel.HeatCapacity.Law.At(temperature);
        start = temperature.InSi();
        ambient = cooling.Air.InSi();
        watts = Guard.NotNegative(power, power.InSi());
        loss = cooling.WattsPerKelvin;
        capacity = specific * Guard.Positive(fuelMass, fuelMass.InSi());
        drain = specific * Guard.NotNegative(burned, burned.InSi());
        (Fuel, Cooling) = (fuel, cooling);
        Power = power;
        Burned = burned;
    }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>The air around, and how it cools the tank.</summary>
    public TankCooling Cooling { get; }

    /// <summary>Heat that comes in.</summary>
    public Power Power { get; }

    /// <summary>Fuel that leaves for the engine.</summary>
    public MassFlow Burned { get; }

    /// <summary>How fast it warms at the start, for each minute.</summary>
    public TemperatureDelta RisePerMinute =>
        SiUnits.TemperatureDelta((watts - (loss * (start - ambient))) / capacity * 60);

    /// <summary>Where it would settle: what is lost then equals what comes in.</summary>
    public Temperature SettledTemperature =>
        SiUnits.Temperature(TankHeating.SettledTemperature(new Real(ambient), new Real(watts), new Real(loss)).Value);

    /// <summary>Time until the engine has burned all of it; null when it burns none.</summary>
    public Duration? TimeToEmpty => drain == 0 ? null : SiUnits.Duration(capacity / drain);

    /// <summary>The temperature after a time.</summary>
    /// <param name="time">Not negative, and before the tank is empty.</param>
    /// <returns>The temperature, in K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative, or the tank is empty by then.</exception>
    public Temperature TemperatureAfter(Duration time)
    {
        double seconds = Guard.NotNegative(time, time.InSi());
        return drain * seconds < capacity
            ? SiUnits.Temperature(Kelvins(seconds))
            : throw Guard.OutOfRange(time, $"below {TimeToEmpty!.Value:below}, when the tank is empty");
    }

    /// <summary>How long it takes to a temperature.</summary>
    /// <param name="temperature">Between the start and where it settles.</param>
    /// <returns>The time, in s.</returns>
    /// <exception cref="NoSolutionException">It does not come there, or the tank is empty before; the message says where it stops.</exception>
    public Duration TimeTo(Temperature temperature)
    {
        double target = temperature.InSi();
        double settled = SettledTemperature.InSi();
        double way = settled - start;
        double part = way == 0 ? double.NaN : (target - start) / way;
        if (!(part >= 0 && part < 1))
        {
            throw Guard.NoSolution(
                RefusalCode.NotReached,
                "the time to a temperature",
                $"the tank goes from {Amount.Celsius(start):start} to {Amount.Celsius(settled):end} and does not come to {Amount.Celsius(target):value}."
            );
        }

        // Both closed forms fall towards where they settle: (1 - part) = exp(-U t/C), or (1 - d t/C)^(U/d).
        double seconds =
            drain == 0
                ? -Math.Log(1 - part) * capacity / loss
                : capacity / drain * (1 - Math.Pow(1 - part, drain / loss));
        return SiUnits.Duration(seconds);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{RisePerMinute} a minute, settles at {SettledTemperature}");

    private double Kelvins(double seconds)
    {
        (Real t0, Real ta, Real p, Real u, Real c, Real t) = (
            new(start),
            new(ambient),
            new(watts),
            new(loss),
            new(capacity),
            new(seconds)
        );
        return drain == 0
            ? TankHeating.TemperatureAfter(t0, ta, p, u, c, t).Value
            : TankHeating.DrainingTemperature(t0, ta, p, u, c, new Real(drain), t).Value;
    }

    private static string Celsius(double kelvins) =>
        Guard.Show(SiUnits.Temperature(kelvins), UnitsNet.Units.TemperatureUnit.DegreeCelsius);
}
