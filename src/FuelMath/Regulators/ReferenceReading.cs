namespace FuelMath;

/// <summary>The pressure on the spring side of a regulator of either type at one operating point.</summary>
/// <param name="reference">The reference of its port.</param>
/// <param name="ratio">The factor on the reference pressure.</param>
/// <param name="weight">
/// The change of the held pressure per change of the reference: diaphragm over diaphragm less seat.
/// </param>
internal sealed class ReferenceReading(RegulatorReference reference, double ratio, double weight) : PartReading
{
    /// <inheritdoc />
    internal override bool IsSteady => true;

    /// <summary>The inputs that a port needs.</summary>
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
