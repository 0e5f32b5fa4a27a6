namespace FuelMath;

/// <summary>What a part may be told at a point and in a round, SI; pressures are gauge.</summary>
internal readonly struct PointInputs
{
    /// <summary>Pressure in the manifold, Pa.</summary>
    internal double Manifold { get; init; }

    /// <summary>Pressure in the tank that the part sits in, Pa.</summary>
    internal double Tank { get; init; }

    /// <summary>Voltage at the pumps' terminals, V.</summary>
    internal double PumpVolts { get; init; }

    /// <summary>Density of the fuel, kg/m³.</summary>
    internal double Density { get; init; }

    /// <summary>How many times its described flow a pump gives.</summary>
    internal double PumpFlowScale { get; init; }

    /// <summary>By how much a regulator holds more than its description says, Pa.</summary>
    internal double HeldShift { get; init; }

    /// <summary>Mean flow of an injector over root of pressure, m³/s per root of Pa.</summary>
    internal double DrawCoefficient { get; init; }

    /// <summary>The mean flow at which an injector is held, m³/s; infinite where only the pressure limits it.</summary>
    internal double DrawCommanded { get; init; }
}
