namespace FuelMath;

/// <summary>The inputs of a part at a point and in a round, SI; pressures are gauge.</summary>
internal readonly struct PointInputs
{
    /// <summary>Pressure in the manifold, Pa.</summary>
    internal double Manifold { get; init; }

    /// <summary>Pressure in the tank of the part, Pa.</summary>
    internal double Tank { get; init; }

    /// <summary>Voltage at the pumps' terminals, V.</summary>
    internal double PumpVolts { get; init; }

    /// <summary>Density of the fuel, kg/m³.</summary>
    internal double Density { get; init; }

    /// <summary>Factor on the described flow of a pump.</summary>
    internal double PumpFlowScale { get; init; }

    /// <summary>Addition to the described held pressure of a regulator, Pa.</summary>
    internal double HeldShift { get; init; }

    /// <summary>Mean flow of an injector over root of pressure, m³/s per root of Pa.</summary>
    internal double DrawCoefficient { get; init; }

    /// <summary>The commanded mean flow of an injector, m³/s; infinite where only the pressure limits it.</summary>
    internal double DrawCommanded { get; init; }
}
