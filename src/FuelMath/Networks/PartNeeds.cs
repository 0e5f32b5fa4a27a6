namespace FuelMath;

/// <summary>What has to be said of a point before a part can be read there, beside the fluid.</summary>
[Flags]
internal enum PartNeeds
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The voltage at the pumps' terminals.</summary>
    PumpVoltage = 1,

    /// <summary>The pressure in the manifold.</summary>
    ManifoldPressure = 2,

    /// <summary>The pressure in the tank that the part sits in.</summary>
    TankPressure = 4,

    /// <summary>The flow that injectors are commanded to.</summary>
    CommandedFlow = 8,
}
