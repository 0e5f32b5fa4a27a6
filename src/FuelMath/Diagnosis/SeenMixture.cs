namespace FuelMath;

/// <summary>One lambda that was read, with what the prediction of it needs; SI numbers.</summary>
/// <param name="State">The conditions.</param>
/// <param name="Place">Which bank or chamber, in words.</param>
/// <param name="Chambers">The chambers that the sensor sees, counted from 0.</param>
/// <param name="Widths">The width of each stage, s.</param>
/// <param name="Air">The air of these chambers in a cycle that the controller reckoned with, kg.</param>
/// <param name="Log">The logarithm of lambda over the one aimed at.</param>
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
