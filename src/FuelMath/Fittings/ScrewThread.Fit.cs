namespace FuelMath;

public sealed partial class ScrewThread
{
    /// <summary>How two threads fit.</summary>
    public enum Fit
    {
        /// <summary>The same thread.</summary>
        Same,

        /// <summary>Same pitch and nearly the same diameter, but another profile or taper: they go together.</summary>
        SameSizeOtherForm,

        /// <summary>The outside thread is near enough to start by hand, and strips under a wrench.</summary>
        StartsThenBinds,

        /// <summary>They do not start.</summary>
        Different,
    }
}
