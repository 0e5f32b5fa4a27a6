namespace FuelMath;

/// <summary>
/// The network with a falling straight line in place of the pump's curve: rise = shutoff - steepness x flow.
/// </summary>
/// <param name="shutoff">The line's rise at no flow, Pa.</param>
/// <param name="flow">The resulting flow, m³/s.</param>
/// <param name="asked">The rise required by the rest of the network at that flow, Pa: that of the line.</param>
/// <param name="given">The rise of the pump's own curve there, Pa.</param>
internal readonly struct HumpSample(double shutoff, double flow, double asked, double given)
{
    internal readonly double Shutoff = shutoff;
    internal readonly double Flow = flow;
    internal readonly double Asked = asked;

    /// <summary>The given minus the required rise, Pa: where positive, the flow would increase.</summary>
    internal readonly double Surplus = given - asked;
}
