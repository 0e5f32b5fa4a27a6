using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The fuel that an engine needs, from its power or its air.</summary>
/// <seealso href="../guide/engines.html">Engines</seealso>
public static class FuelDemand
{
    /// <summary>Fuel for a power at the crankshaft.</summary>
    /// <param name="crankPower">Power at the crankshaft, not at the wheels; not negative.</param>
    /// <param name="consumption">
    /// Brake specific fuel consumption at the crankshaft, of the same fuel; greater than zero. It includes the
    /// enrichment: don't divide by lambda again. A value for gasoline does not hold for ethanol.
    /// </param>
    /// <returns>The mass flow, in kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static MassFlow FromCrankPower(Power crankPower, BrakeSpecificFuelConsumption consumption) =>
        SiUnits.MassFlow(
            EngineAir
                .FuelFlowFromPower(
                    new Real(Guard.NotNegative(crankPower, crankPower.InSi())),
                    new Real(Guard.Positive(consumption, consumption.InSi()))
                )
                .Value
        );

    /// <summary>Fuel for a mass of air.</summary>
    /// <param name="air">Mass of air; not negative.</param>
    /// <param name="stoichiometric">The fuel's stoichiometric ratio.</param>
    /// <param name="lambda">The intended mixture.</param>
    /// <returns>The mass, in kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Mass FromAir(Mass air, AirFuelRatio stoichiometric, Lambda lambda) =>
        SiUnits.Mass(Fuel(Guard.NotNegative(air, air.InSi()), stoichiometric, lambda));

    /// <summary>Fuel for a flow of air.</summary>
    /// <param name="air">Mass flow of air; not negative.</param>
    /// <param name="stoichiometric">The fuel's stoichiometric ratio.</param>
    /// <param name="lambda">The intended mixture.</param>
    /// <returns>The mass flow, in kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static MassFlow FromAir(MassFlow air, AirFuelRatio stoichiometric, Lambda lambda) =>
        SiUnits.MassFlow(Fuel(Guard.NotNegative(air, air.InSi()), stoichiometric, lambda));

    private static double Fuel(double air, AirFuelRatio stoichiometric, Lambda lambda) =>
        EngineAir
            .FuelMass(
                new Real(air),
                new Real(Guard.Positive(stoichiometric.Si, nameof(stoichiometric))),
                new Real(Guard.Positive(lambda.Si, nameof(lambda)))
            )
            .Value;
}
