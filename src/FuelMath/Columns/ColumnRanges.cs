namespace FuelMath.Formulas;

/// <summary>The ranges of columns: wider than in any fuel system, so a number outside is a mistake of units.</summary>
/// <remarks>Source: [Common-practice] limits of our own, except where a formula states its range.</remarks>
internal static class ColumnRanges
{
    internal const double LargestPressure = 1e9;
    internal const double SmallestDensity = 1;
    internal const double LargestDensity = 1e4;
    internal const double SmallestViscosity = 1e-7;
    internal const double LargestViscosity = 1e3;
    internal const double LargestMassFlow = 1e4;
    internal const double LargestVelocity = 1e3;
    internal const double SmallestLength = 1e-6;
    internal const double LargestLength = 1e6;
    internal const double LargestTime = 1e6;
    internal const double LargestReynolds = 1e11;
    internal const double LargestRelativeRoughness = 0.05;
}
