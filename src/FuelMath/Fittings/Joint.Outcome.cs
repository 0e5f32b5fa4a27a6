namespace FuelMath;

public sealed partial class Joint
{
    /// <summary>The verdict on two ends put together.</summary>
    public enum Outcome
    {
        /// <summary>They mate and seal, when sound and tightened to the maker's torque.</summary>
        Seals,

        /// <summary>They screw together, look right and leak: the dangerous case.</summary>
        ThreadsButDoesNotSeal,

        /// <summary>They do not go together.</summary>
        DoesNotGoTogether,
    }
}
