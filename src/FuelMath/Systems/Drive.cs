using UnitsNet;

namespace FuelMath;

/// <summary>
/// A drive at an operating point: its time, and the conditions of tank and rail by which they warm, which a steady state
/// doesn't include.
/// </summary>
public sealed class Drive
{
    /// <summary>Creates a drive.</summary>
    /// <param name="time">How long; greater than zero.</param>
    /// <param name="fuelMass">Fuel in the tank at the start; greater than zero.</param>
    /// <param name="air">Temperature of the air around the tank; greater than zero.</param>
    /// <param name="lossAtExcess">Heat that the tank loses at some excess over the air; greater than zero.</param>
    /// <param name="excess">That excess; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Drive(Duration time, Mass fuelMass, Temperature air, Power lossAtExcess, TemperatureDelta excess)
    {
        Guard.Positive(time, time.InSi());
        Guard.Positive(fuelMass, fuelMass.InSi());
        Guard.Positive(air, air.InSi());
        Guard.Positive(lossAtExcess, lossAtExcess.InSi());
        Guard.Positive(excess, excess.InSi());
        (Time, FuelMass, Air, LossAtExcess, Excess) = (time, fuelMass, air, lossAtExcess, excess);
    }

    /// <summary>How long.</summary>
    public Duration Time { get; }

    /// <summary>Fuel in the tank at the start.</summary>
    public Mass FuelMass { get; }

    /// <summary>Temperature of the air around the tank.</summary>
    public Temperature Air { get; }

    /// <summary>Heat that the tank loses at <see cref="Excess"/>.</summary>
    public Power LossAtExcess { get; }

    /// <summary>Excess of the tank over the air.</summary>
    public TemperatureDelta Excess { get; }

    /// <summary>Temperature of the fuel in the rail after switch-off; null where no hot soak is wanted.</summary>
    public Temperature? SoakTemperature { get; private init; }

    /// <summary>The same drive, followed by a hot soak.</summary>
    /// <param name="temperature">Temperature of the fuel in the rail after switch-off; greater than zero.</param>
    /// <returns>A new drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not greater than zero.</exception>
    public Drive WithSoak(Temperature temperature)
    {
        Guard.Positive(temperature, temperature.InSi());
        return new(Time, FuelMass, Air, LossAtExcess, Excess) { SoakTemperature = temperature };
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Time} with {FuelMass} in the tank");
}
