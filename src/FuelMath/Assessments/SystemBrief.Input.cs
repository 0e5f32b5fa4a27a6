namespace FuelMath;

public sealed partial class SystemBrief
{
    /// <summary>The further inputs of a <see cref="SystemBrief"/>, estimated unless they are given.</summary>
    public enum Input
    {
        /// <summary>Volumetric efficiency at manifold density; a ratio.</summary>
        VolumetricEfficiency,

        /// <summary>Flow of the fitted injectors over the controller's belief; a ratio.</summary>
        InjectorFlow,

        /// <summary>
        /// Dead time of the fitted injectors at 14 V; a duration. The controller's belief is the estimate.
        /// </summary>
        DeadTime,

        /// <summary>Current of the pump; a current.</summary>
        PumpCurrent,

        /// <summary>Contacts and relay in each circuit; a resistance.</summary>
        CircuitResistance,

        /// <summary>Voltage at the source with the engine running; a voltage.</summary>
        SupplyVoltage,

        /// <summary>Pressure loss of the filter at 200 L/h; a pressure difference.</summary>
        FilterLoss,

        /// <summary>Bore of the hose from filter to rail; a length.</summary>
        FeedBore,

        /// <summary>Length of the hoses to the rail and back; a length.</summary>
        HoseLength,

        /// <summary>Bore of the hose back to the tank; a length.</summary>
        ReturnBore,

        /// <summary>Rise of the regulator's pressure for each 100 L/h that it passes; a pressure difference.</summary>
        RegulatorSlope,

        /// <summary>Temperature of the fuel at the injectors; a temperature.</summary>
        FuelTemperature,

        /// <summary>Temperature of the charge in the manifold; a temperature.</summary>
        ChargeTemperature,
    }
}
