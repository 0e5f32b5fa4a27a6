using FuelMath.Fuels;
using FuelMath.Injectors;
using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>What the engine controller was told about a stage's injectors, their pressure and the fuel.</summary>
/// <remarks>
/// The controller turns a fuel mass into a pulse width by this belief; what the fitted injectors then deliver may
/// differ. Immutable and safe to share between threads. Equality is by reference.
/// </remarks>
public sealed class ControllerBelief
{
    /// <summary>Sets down a belief.</summary>
    /// <param name="injector">The characterization that was entered.</param>
    /// <param name="differentialPressure">The injector differential pressure that was entered; greater than zero.</param>
    /// <param name="fuel">The fuel that was entered.</param>
    /// <param name="fuelTemperature">The temperature at which the fuel's density was entered.</param>
    /// <exception cref="ArgumentNullException"><paramref name="injector"/> or <paramref name="fuel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not greater than zero, or the fuel has no density there.</exception>
    public ControllerBelief(Injector injector, Pressure differentialPressure, Fuel fuel, Temperature fuelTemperature)
    {
        ArgumentNullException.ThrowIfNull(injector);
        ArgumentNullException.ThrowIfNull(fuel);
        Guard.Positive(differentialPressure, differentialPressure.InSi(), nameof(differentialPressure));
        _ = fuel.DensityAt(fuelTemperature);
        Injector = injector;
        DifferentialPressure = differentialPressure;
        Fuel = fuel;
        FuelTemperature = fuelTemperature;
    }

    /// <summary>The characterization that was entered.</summary>
    public Injector Injector { get; }

    /// <summary>The injector differential pressure that was entered.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>The fuel that was entered.</summary>
    public Fuel Fuel { get; }

    /// <summary>The temperature at which the fuel's density was entered.</summary>
    public Temperature FuelTemperature { get; }
}
