namespace FuelMath;

/// <summary>A pump that its switch lets stand still: its check valve shuts, and its motor draws nothing.</summary>
internal sealed class StoppedPump(FlowPart pump) : FlowPart
{
    /// <inheritdoc />
    internal override LawSettings Law => new StoppedSettings();

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool ShutsIn => pump.ShutsIn;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => pump.LeakPlaces;
}
