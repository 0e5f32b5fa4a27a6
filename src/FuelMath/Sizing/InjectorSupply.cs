using UnitsNet;

namespace FuelMath;

/// <summary>The supply of injectors: rail pressure, fuel and voltage.</summary>
/// <seealso href="../guide/sizing.html">Sizing, timing and idle of injectors</seealso>
public sealed class InjectorSupply
{
    /// <summary>Creates a supply.</summary>
    /// <param name="rail">The rail.</param>
    /// <param name="ambient">Absolute ambient pressure; greater than zero.</param>
    /// <param name="fuel">The fuel.</param>
    /// <param name="fuelTemperature">Its temperature at the injectors, for which its density is known.</param>
    /// <param name="atInjector">Voltage at the injectors; greater than zero.</param>
    /// <exception cref="ArgumentNullException">Rail or fuel is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public InjectorSupply(
        RailPressure rail,
        AbsolutePressure ambient,
        Fuel fuel,
        Temperature fuelTemperature,
        ElectricPotential atInjector
    )
    {
        ArgumentNullException.ThrowIfNull(rail);
        ArgumentNullException.ThrowIfNull(fuel);
        Guard.Positive(ambient.AboveVacuum, ambient.Si, nameof(ambient));
        Guard.Positive(atInjector, atInjector.InSi());
        (Rail, Ambient, Fuel, FuelTemperature, AtInjector) = (rail, ambient, fuel, fuelTemperature, atInjector);
        Density = fuel.DensityAt(fuelTemperature);
    }

    /// <summary>The rail.</summary>
    public RailPressure Rail { get; }

    /// <summary>Absolute ambient pressure.</summary>
    public AbsolutePressure Ambient { get; }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>Its temperature at the injectors.</summary>
    public Temperature FuelTemperature { get; }

    /// <summary>Its density there, in kg/m³.</summary>
    public Density Density { get; }

    /// <summary>Voltage at the injectors.</summary>
    public ElectricPotential AtInjector { get; }

    /// <summary>Pressure across injectors that discharge into a manifold.</summary>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <returns>The difference, in Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A fixed rail does not exceed the manifold pressure.</exception>
    public Pressure DifferentialPressureAt(AbsolutePressure manifold) => Rail.DifferentialPressureAt(manifold, Ambient);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Rail}, {Fuel}, {AtInjector}");
}
