using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The measured points that a property goes through, as they were given.</summary>
internal sealed class GivenPoints<T>
    where T : struct
{
    internal GivenPoints(IEnumerable<Temperature> temperatures, IEnumerable<T> values, DataSource source)
    {
        Temperatures = [.. temperatures];
        Values = [.. values];
        Source = source;
    }

    internal ImmutableArray<Temperature> Temperatures { get; }

    internal ImmutableArray<T> Values { get; }

    internal DataSource Source { get; }
}
