namespace FuelMath;

/// <summary>What acts on the spring side of a regulator of either type at one point.</summary>
/// <param name="reference">What its port is open to.</param>
/// <param name="ratio">How many times the pressure there counts.</param>
/// <param name="weight">By how much what is held moves with the reference: diaphragm over diaphragm less seat.</param>
internal sealed class ReferenceReading(RegulatorReference reference, double ratio, double weight) : PartReading
{
    /// <inheritdoc />
    internal override bool IsSteady => true;

    /// <summary>What a port has to be told.</summary>
    internal static PartNeeds NeedsOf(RegulatorReference reference) =>
        reference switch
        {
            RegulatorReference.Manifold => PartNeeds.ManifoldPressure,
            RegulatorReference.Tank => PartNeeds.TankPressure,
            _ => PartNeeds.None,
        };

    /// <summary>The pressure on a regulator's reference port, Pa gauge.</summary>
    internal static double PortPressure(RegulatorReference reference, in PointInputs at) =>
        reference switch
        {
            RegulatorReference.Manifold => at.Manifold,
            RegulatorReference.Tank => at.Tank,
            _ => 0,
        };

    /// <inheritdoc />
    internal override void Write(in PointInputs at, Span<double> settings) =>
        settings[0] = (ratio * PortPressure(reference, at)) + (at.HeldShift / weight);
}
