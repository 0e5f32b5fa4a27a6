namespace FuelMath.ShopTests;

/// <summary>The side of a place when a valve or clamp closes the line right after the pump.</summary>
internal enum ClampSide
{
    /// <summary>Beyond the clamp, with the rail and its gauge.</summary>
    Gauge,

    /// <summary>Between pump and clamp: the clamp isolates it together with the check valve.</summary>
    Pump,

    /// <summary>On either side or both: the part at the clamp.</summary>
    Both,
}
