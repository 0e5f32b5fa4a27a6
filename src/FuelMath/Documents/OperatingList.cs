using System.Collections.Immutable;
using FuelMath.Systems;

namespace FuelMath.Documents;

/// <summary>The operating points of a document, each with a name of its own.</summary>
internal sealed class OperatingList
{
    internal OperatingList(IEnumerable<OperatingPoint> points)
    {
        Points = [.. points];
        if (Points.CountBy(p => p.Name).FirstOrDefault(n => n.Value > 1) is { Key: { } twice })
        {
            throw new ArgumentException($"Names must differ; '{twice}' is there twice.", nameof(points));
        }
    }

    internal ImmutableArray<OperatingPoint> Points { get; }
}
