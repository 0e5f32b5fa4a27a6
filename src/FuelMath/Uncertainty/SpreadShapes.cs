namespace FuelMath.Statistics;

/// <summary>Kernel: properties of distribution shapes.</summary>
internal static class SpreadShapes
{
    /// <summary>
    /// The half width in standard deviations; infinite for a shape without limits. Source: [JCGM-101] sections 6.4.2, 6.4.5
    /// and 6.4.6.
    /// </summary>
    internal static double HalfWidth(SpreadShape shape) =>
        shape switch
        {
            SpreadShape.Rectangular => Math.Sqrt(3),
            SpreadShape.Triangular => Math.Sqrt(6),
            SpreadShape.ArcSine => Math.Sqrt(2),
            _ => double.PositiveInfinity,
        };

    /// <summary>
    /// The fourth moment of a standard deviate: 3, 9/5, 12/5 and 3/2 for the normal, the rectangular, the triangular and the
    /// arc sine distribution. Source: [Definition] integrals of the densities.
    /// </summary>
    internal static double FourthMoment(SpreadShape shape) =>
        shape switch
        {
            SpreadShape.Rectangular => 1.8,
            SpreadShape.Triangular => 2.4,
            SpreadShape.ArcSine => 1.5,
            _ => 3,
        };
}
