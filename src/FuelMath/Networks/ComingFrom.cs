namespace FuelMath;

/// <summary>From which side a pump whose curve has a hump comes to a steady flow, where it could stay at several.</summary>
public enum ComingFrom
{
    /// <summary>Its flow grew from nothing: it stays at the least flow at which it meets the network.</summary>
    NoFlow,

    /// <summary>Its flow shrank from free delivery: it stays at the greatest.</summary>
    FreeFlow,
}
