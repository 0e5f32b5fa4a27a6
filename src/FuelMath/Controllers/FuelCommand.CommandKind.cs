namespace FuelMath;

public sealed partial class FuelCommand
{
    /// <summary>The kinds of <see cref="FuelCommand"/>.</summary>
    public enum CommandKind
    {
        /// <summary>No fuel at all.</summary>
        Cut,

        /// <summary>A sensor holds the mean mixture.</summary>
        HoldLambda,

        /// <summary>Pulse widths by the controller's belief, uncorrected.</summary>
        OpenLoop,

        /// <summary>Given pulse widths.</summary>
        PulseWidths,

        /// <summary>Every injector held open.</summary>
        AllOpen,
    }
}
