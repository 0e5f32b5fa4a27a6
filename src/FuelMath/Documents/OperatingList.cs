using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The operating points of a document, each with a name of its own.</summary>
internal sealed class OperatingList
{
    internal OperatingList(IEnumerable<OperatingPoint> points)
    {
        Points = [.. Lists.NoNulls(points)];
        Guard.DifferentNames(Points.Select(p => p.Name), nameof(points));
    }

    internal ImmutableArray<OperatingPoint> Points { get; }
}
