namespace FuelMath.ShopTests;

/// <summary>Where a place lies when a valve or a clamp shuts the line right after the pump.</summary>
internal enum ClampSide
{
    /// <summary>Beyond it, with the rail and its gauge.</summary>
    Gauge,

    /// <summary>Between pump and clamp: the clamp shuts it off with the check valve.</summary>
    Pump,

    /// <summary>On both sides, or on either: the part that the clamp sits on or next to.</summary>
    Both,
}
