namespace FuelMath.Statistics;

/// <summary>Kernel: what follows from the shape of a scatter.</summary>
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
}
