using UnitsNet;

namespace FuelMath;

/// <summary>What the engine controller was told about a stage's injectors, their pressure and the fuel.</summary>
/// <remarks>
/// The controller turns a fuel mass into a pulse width by this belief; what the fitted injectors then deliver may
/// differ. How the rail is referenced belongs to it: a fixed rail that a controller takes for one that follows the manifold
/// makes every part-load point rich and every boosted one lean.
/// </remarks>
public sealed class ControllerBelief
{
    /// <summary>
    /// Creates a belief of a rail that follows the manifold: the difference entered holds at every point.
    /// </summary>
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
        Guard.Positive(differentialPressure, differentialPressure.InSi());
        _ = fuel.DensityAt(fuelTemperature);
        Injector = injector;
        RailReference = RailReference.Manifold;
        DifferentialPressure = differentialPressure;
        Fuel = fuel;
        FuelTemperature = fuelTemperature;
    }

    private ControllerBelief(ControllerBelief other, RailReference reference)
    {
        (Injector, DifferentialPressure) = (other.Injector, other.DifferentialPressure);
        (Fuel, FuelTemperature, RailReference) = (other.Fuel, other.FuelTemperature, reference);
    }

    /// <summary>The characterization that was entered.</summary>
    public Injector Injector { get; }

    /// <summary>
    /// The injector differential pressure that was entered; of a fixed rail its gauge pressure, the difference when the
    /// manifold is at ambient pressure.
    /// </summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>What the controller takes the pressure across the injectors to follow from.</summary>
    public RailReference RailReference { get; }

    /// <summary>The fuel that was entered.</summary>
    public Fuel Fuel { get; }

    /// <summary>The temperature at which the fuel's density was entered.</summary>
    public Temperature FuelTemperature { get; }

    /// <summary>A belief of a rail whose pressure is held as described.</summary>
    /// <param name="injector">The characterization that was entered.</param>
    /// <param name="rail">The rail that was entered.</param>
    /// <param name="fuel">The fuel that was entered.</param>
    /// <param name="fuelTemperature">The temperature at which the fuel's density was entered.</param>
    /// <returns>The belief.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The fuel has no density there.</exception>
    public static ControllerBelief FromRail(
        Injector injector,
        RailPressure rail,
        Fuel fuel,
        Temperature fuelTemperature
    )
    {
        ArgumentNullException.ThrowIfNull(rail);
        return new ControllerBelief(injector, rail.HeldDifference, fuel, fuelTemperature).WithRailReference(
            rail.IsReferenced ? RailReference.Manifold : RailReference.Fixed
        );
    }

    /// <summary>The same belief of a rail with another reference.</summary>
    /// <param name="reference">What the controller takes the pressure across the injectors to follow from.</param>
    /// <returns>A new belief.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such reference.</exception>
    public ControllerBelief WithRailReference(RailReference reference) =>
        Enum.IsDefined(reference)
            ? new(this, reference)
            : throw new ArgumentOutOfRangeException(
                nameof(reference),
                $"Must be one of: {string.Join(", ", Enum.GetNames<RailReference>())}; it was {(int)reference}."
            );

    /// <summary>The pressure across the injectors that the controller reckons with; null where it measures it.</summary>
    /// <param name="discharge">Absolute pressure that the injectors discharge to.</param>
    /// <param name="ambient">Absolute ambient pressure.</param>
    /// <returns>The difference, in Pa; zero or less where a fixed rail does not exceed the discharge pressure.</returns>
    public Pressure? DifferentialPressureAt(AbsolutePressure discharge, AbsolutePressure ambient) =>
        ToldSi(discharge.Si - ambient.Si) is { } told ? SiUnits.Pressure(told) : null;

    internal double? ToldSi(double dischargeGauge) =>
        RailReference switch
        {
            RailReference.Manifold => DifferentialPressure.InSi(),
            RailReference.Fixed => DifferentialPressure.InSi() - dischargeGauge,
            _ => null,
        };
}
