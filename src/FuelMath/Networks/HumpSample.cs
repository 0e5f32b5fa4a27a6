namespace FuelMath;

/// <summary>
/// The network with a falling straight line in the place of the pump's curve: rise = shutoff - steepness x flow.
/// </summary>
/// <param name="shutoff">The line's rise at no flow, Pa.</param>
/// <param name="flow">The flow that comes about, m³/s.</param>
/// <param name="asked">The rise that the rest asks for at that flow, Pa: that of the line.</param>
/// <param name="given">The rise that the pump's own curve gives there, Pa.</param>
internal readonly struct HumpSample(double shutoff, double flow, double asked, double given)
{
    internal readonly double Shutoff = shutoff;
    internal readonly double Flow = flow;
    internal readonly double Asked = asked;

    /// <summary>What the pump gives beyond what is asked, Pa: the flow would grow where it is positive.</summary>
    internal readonly double Surplus = given - asked;
}
