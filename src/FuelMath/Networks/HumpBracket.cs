namespace FuelMath;

/// <summary>Two samples between which a pump's curve crosses what the network asks for.</summary>
internal readonly struct HumpBracket(HumpSample left, HumpSample right)
{
    internal readonly HumpSample Left = left;
    internal readonly HumpSample Right = right;

    /// <summary>
    /// Whether the flow comes back after a small change: with more flow the network asks for more than the pump gives.
    /// </summary>
    internal bool IsStable => Left.Surplus > 0;
}
