namespace FuelMath;

/// <summary>Two samples between which a pump's curve crosses the required rise of the network.</summary>
internal readonly struct HumpBracket(HumpSample left, HumpSample right)
{
    internal readonly HumpSample Left = left;
    internal readonly HumpSample Right = right;

    /// <summary>
    /// Whether the flow is statically stable: with more flow the network requires more than the pump gives.
    /// </summary>
    internal bool IsStable => Left.Surplus > 0;
}
