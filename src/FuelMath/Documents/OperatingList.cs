using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The operating points of a document, with different names.</summary>
internal sealed class OperatingList
{
    internal OperatingList(IEnumerable<OperatingPoint> points)
    {
        Points = [.. Lists.NoNulls(points)];
        Guard.DifferentNames(Points.Select(p => p.Name), nameof(points));
    }

    internal ImmutableArray<OperatingPoint> Points { get; }
}
