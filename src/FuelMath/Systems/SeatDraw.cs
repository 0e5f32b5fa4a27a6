namespace FuelMath;

/// <summary>The time-mean draw of the injector of a seat; each round sets the commanded flow.</summary>
internal sealed class SeatDraw(InjectorStage.Seat seat) : FlowPart
{
    /// <inheritdoc />
    internal override LawSettings Law =>
        new CappedSettings(
            PartMath.Coefficient(seat.Injector.Rating.StaticVolumeFlow, seat.Injector.Rating.DifferentialPressure),
            0
        );

    /// <inheritdoc />
    internal override PartNeeds Needs => PartNeeds.CommandedFlow;

    /// <inheritdoc />
    internal override PartReading Reading() => new DrawReading();

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool ShutsIn => true;

    private sealed class DrawReading : PartReading
    {
        /// <inheritdoc />
        internal override void Write(in PointInputs at, Span<double> settings) =>
            (settings[0], settings[1]) = (at.DrawCoefficient, at.DrawCommanded);
    }
}
