namespace FuelMath;

/// <summary>The inputs that a part needs at a point, besides the fluid.</summary>
[Flags]
internal enum PartNeeds
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The voltage at the pumps' terminals.</summary>
    PumpVoltage = 1,

    /// <summary>The pressure in the manifold.</summary>
    ManifoldPressure = 2,

    /// <summary>The pressure in the tank of the part.</summary>
    TankPressure = 4,

    /// <summary>The commanded flow of injectors.</summary>
    CommandedFlow = 8,
}
