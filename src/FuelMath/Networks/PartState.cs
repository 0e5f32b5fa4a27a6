namespace FuelMath;

/// <summary>A part in a solved state, for its findings. SI units; pressures are gauge.</summary>
internal readonly struct PartState
{
    /// <summary>The source of a limit that follows from the purpose of a part.</summary>
    internal static readonly DataSource ByDefinition = new("Definition", "what the part is for");

    /// <summary>The line that holds it.</summary>
    internal required string Line { get; init; }

    /// <summary>Its condition.</summary>
    internal required Network.LineCondition Condition { get; init; }

    /// <summary>Volume flow, m³/s; negative where it runs backwards.</summary>
    internal required double Flow { get; init; }

    /// <summary>Pressure at its first node, Pa.</summary>
    internal required double Inlet { get; init; }

    /// <summary>Pressure at its second node, Pa.</summary>
    internal required double Outlet { get; init; }

    /// <summary>Whether no injector draws in this state.</summary>
    internal required bool NothingDrawn { get; init; }

    /// <summary>Density of the fuel, kg/m³.</summary>
    internal required double Density { get; init; }

    /// <summary>Dynamic viscosity of the fuel, Pa s.</summary>
    internal required double Viscosity { get; init; }

    /// <summary>Voltage at the pumps, V.</summary>
    internal required double PumpVolts { get; init; }

    /// <summary>Whether a pump draws through it.</summary>
    internal required bool IsSuction { get; init; }

    /// <summary>The greatest recommended mean velocity, m/s.</summary>
    internal required double GreatestVelocity { get; init; }

    /// <summary>Where that comes from.</summary>
    internal required DataSource VelocitySource { get; init; }
}
