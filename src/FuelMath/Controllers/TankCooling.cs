using UnitsNet;

namespace FuelMath;

/// <summary>How the air around a tank cools it: as measured at some excess of the tank over the air, in proportion to it.</summary>
/// <seealso href="../guide/heat.html">Heat: the tank warms, the rail soaks</seealso>
public sealed class TankCooling
{
    /// <summary>Describes the cooling of a tank.</summary>
    /// <param name="air">Temperature of the air around; greater than zero.</param>
    /// <param name="lossAtExcess">Heat that the tank loses at some excess over the air; greater than zero.</param>
    /// <param name="excess">That excess; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TankCooling(Temperature air, Power lossAtExcess, TemperatureDelta excess)
    {
        Guard.Positive(air, air.InSi());
        WattsPerKelvin = Guard.Positive(lossAtExcess, lossAtExcess.InSi()) / Guard.Positive(excess, excess.InSi());
        (Air, LossAtExcess, Excess) = (air, lossAtExcess, excess);
    }

    /// <summary>Temperature of the air around.</summary>
    public Temperature Air { get; }

    /// <summary>Heat that the tank loses at <see cref="Excess"/>.</summary>
    public Power LossAtExcess { get; }

    /// <summary>Excess of the tank over the air.</summary>
    public TemperatureDelta Excess { get; }

    internal double WattsPerKelvin { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{LossAtExcess} at {Excess} over {Air}");
}
