namespace FuelMath;

/// <summary>What an opening does when the pressure behind it is the higher one.</summary>
public enum Backflow
{
    /// <summary>It shuts: nothing flows backwards.</summary>
    Prevented,

    /// <summary>It flows backwards by the same law.</summary>
    Allowed,
}
