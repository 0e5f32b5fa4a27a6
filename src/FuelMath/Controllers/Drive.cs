using UnitsNet;

namespace FuelMath;

/// <summary>
/// A drive at an operating point: its time, and the conditions of tank and rail by which they warm, which a steady state
/// doesn't include.
/// </summary>
/// <seealso href="../guide/heat.html">Heat: the tank warms, the rail soaks</seealso>
public sealed class Drive
{
    /// <summary>Creates a drive.</summary>
    /// <param name="time">How long; greater than zero.</param>
    /// <param name="fuelMass">Fuel in the tank at the start; greater than zero.</param>
    /// <param name="cooling">The air around the tank, and how it cools it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cooling"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Drive(Duration time, Mass fuelMass, TankCooling cooling)
    {
        ArgumentNullException.ThrowIfNull(cooling);
        Guard.Positive(time, time.InSi());
        Guard.Positive(fuelMass, fuelMass.InSi());
        (Time, FuelMass, Cooling) = (time, fuelMass, cooling);
    }

    /// <summary>How long.</summary>
    public Duration Time { get; }

    /// <summary>Fuel in the tank at the start.</summary>
    public Mass FuelMass { get; }

    /// <summary>The air around the tank, and how it cools it.</summary>
    public TankCooling Cooling { get; }

    /// <summary>Temperature of the fuel in the rail after switch-off; null where no hot soak is wanted.</summary>
    public Temperature? SoakTemperature { get; private init; }

    /// <summary>The same drive, followed by a hot soak.</summary>
    /// <param name="temperature">Temperature of the fuel in the rail after switch-off; greater than zero.</param>
    /// <returns>A new drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not greater than zero.</exception>
    public Drive WithSoak(Temperature temperature)
    {
        Guard.Positive(temperature, temperature.InSi());
        return new(Time, FuelMass, Cooling) { SoakTemperature = temperature };
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Time} with {FuelMass} in the tank");
}
