namespace FuelMath;

/// <summary>What a <see cref="SystemBrief"/> needs beyond the least that a person must know: taken as an estimate until it is given.</summary>
public enum BriefInput
{
    /// <summary>Volumetric efficiency at manifold density; a ratio.</summary>
    VolumetricEfficiency,

    /// <summary>What the fitted injectors flow over what the controller was told; a ratio.</summary>
    InjectorFlow,

    /// <summary>Dead time of the fitted injectors at 14 V; a duration. The controller is taken to have been told the estimate.</summary>
    DeadTime,

    /// <summary>What the pump draws; a current.</summary>
    PumpCurrent,

    /// <summary>Contacts and relay in each circuit; a resistance.</summary>
    CircuitResistance,

    /// <summary>Voltage at the source with the engine running; a voltage.</summary>
    SupplyVoltage,

    /// <summary>What the filter loses at 200 L/h; a pressure difference.</summary>
    FilterLoss,

    /// <summary>Bore of the hose from filter to rail; a length.</summary>
    FeedBore,

    /// <summary>Length of the hoses to the rail and back; a length.</summary>
    HoseLength,

    /// <summary>Bore of the hose back to the tank; a length.</summary>
    ReturnBore,

    /// <summary>By how much the regulator's pressure rises for each 100 L/h that it passes; a pressure difference.</summary>
    RegulatorSlope,

    /// <summary>Temperature of the fuel at the injectors; a temperature.</summary>
    FuelTemperature,

    /// <summary>Temperature of the charge in the manifold; a temperature.</summary>
    ChargeTemperature,
}
