namespace FuelMath;

/// <summary>A pump stopped by its switch: its check valve is closed, and its motor draws no current.</summary>
internal sealed class StoppedPump(FlowPart pump) : FlowPart
{
    /// <inheritdoc />
    internal override LawSettings Law => new StoppedSettings();

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool IsPump => true;

    /// <inheritdoc />
    internal override bool ShutsIn => pump.ShutsIn;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => pump.LeakPlaces;
}
