namespace FuelMath;

/// <summary>One lambda reading with the inputs of its prediction; SI numbers.</summary>
/// <param name="State">The conditions.</param>
/// <param name="Place">The bank or chamber, in words.</param>
/// <param name="Chambers">The chambers of the sensor, counted from 0.</param>
/// <param name="Widths">The width of each stage, s.</param>
/// <param name="Air">The air of these chambers in a cycle as believed by the controller, kg.</param>
/// <param name="Log">The logarithm of lambda over the target.</param>
/// <param name="Uncertainty">The standard uncertainty of that.</param>
internal sealed record SeenMixture(
    ObservedState State,
    string Place,
    int[] Chambers,
    double[] Widths,
    double Air,
    double Log,
    double Uncertainty
)
{
    /// <summary>The observation and the bank or chamber, in words.</summary>
    internal string Name => $"'{State.Observation.Name}', {Place}";
}
