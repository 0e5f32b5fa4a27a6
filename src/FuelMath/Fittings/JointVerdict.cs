namespace FuelMath;

/// <summary>What becomes of two ends that are put together.</summary>
public enum JointVerdict
{
    /// <summary>They are made for each other and seal, when sound and tightened as their maker says.</summary>
    Seals,

    /// <summary>They screw together, look right and leak: the dangerous case.</summary>
    ThreadsButDoesNotSeal,

    /// <summary>They do not go together.</summary>
    DoesNotGoTogether,
}
