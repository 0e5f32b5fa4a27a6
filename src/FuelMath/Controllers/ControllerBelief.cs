using UnitsNet;

namespace FuelMath;

/// <summary>What the engine controller was told about a stage's injectors, their pressure and the fuel.</summary>
/// <remarks>
/// The controller converts a fuel mass to a pulse width by this belief; the fitted injectors may deliver another mass.
/// The belief includes the reference of the rail: if the controller believes that a fixed rail follows the manifold,
/// every part-load point is rich and every boosted one lean.
/// </remarks>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed class ControllerBelief
{
    /// <summary>
    /// Creates a belief with a rail that follows the manifold: the pressure difference entered holds at every point.
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
        RailReference = RailPressure.Reference.Manifold;
        DifferentialPressure = differentialPressure;
        Fuel = fuel;
        FuelTemperature = fuelTemperature;
    }

    private ControllerBelief(ControllerBelief other, RailPressure.Reference reference)
    {
        (Injector, DifferentialPressure) = (other.Injector, other.DifferentialPressure);
        (Fuel, FuelTemperature, RailReference) = (other.Fuel, other.FuelTemperature, reference);
    }

    /// <summary>The characterization that was entered.</summary>
    public Injector Injector { get; }

    /// <summary>
    /// The injector differential pressure that was entered; for a fixed rail its gauge pressure, which is the
    /// difference when the manifold is at ambient pressure.
    /// </summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>The reference of the rail as believed by the controller.</summary>
    public RailPressure.Reference RailReference { get; }

    /// <summary>The fuel that was entered.</summary>
    public Fuel Fuel { get; }

    /// <summary>The temperature at which the fuel's density was entered.</summary>
    public Temperature FuelTemperature { get; }

    /// <summary>A belief with a described rail.</summary>
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
            rail.IsReferenced ? RailPressure.Reference.Manifold : RailPressure.Reference.Fixed
        );
    }

    /// <summary>The same belief with another reference of the rail.</summary>
    /// <param name="reference">The reference of the rail as believed by the controller.</param>
    /// <returns>A new belief.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such reference.</exception>
    public ControllerBelief WithRailReference(RailPressure.Reference reference) =>
        Enum.IsDefined(reference) ? new(this, reference) : throw Guard.NoChoice(reference);

    /// <summary>The pressure across the injectors as believed by the controller; null where it measures it.</summary>
    /// <param name="discharge">Absolute pressure into which the injectors discharge.</param>
    /// <param name="ambient">Absolute ambient pressure.</param>
    /// <returns>The difference, in Pa; zero or less where a fixed rail does not exceed the discharge pressure.</returns>
    public Pressure? DifferentialPressureAt(AbsolutePressure discharge, AbsolutePressure ambient) =>
        ToldSi(discharge.Si - ambient.Si) is { } told ? SiUnits.Pressure(told) : null;

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Injector} at {DifferentialPressure}, {Fuel}");

    internal double? ToldSi(double dischargeGauge) =>
        RailReference switch
        {
            RailPressure.Reference.Manifold => DifferentialPressure.InSi(),
            RailPressure.Reference.Fixed => DifferentialPressure.InSi() - dischargeGauge,
            _ => null,
        };
}
