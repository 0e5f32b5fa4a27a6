using System.Globalization;

namespace FuelMath.Statistics;

/// <summary>The checks of the readings of a line.</summary>
internal static class LineChecks
{
    internal static void Check(
        ReadOnlySpan<double> x,
        ReadOnlySpan<double> y,
        ReadOnlySpan<double> weights,
        bool origin
    )
    {
        Guard.AtLeast(origin ? 2 : 3, x.Length, "A line with standard errors", nameof(x));
        SameCount(x.Length, y.Length, nameof(y));
        SameCount(x.Length, weights.Length, nameof(weights));
        Guard.AllFinite(x, "Abscissas");
        Guard.AllFinite(y, "Readings");
        foreach (double weight in weights)
        {
            Guard.Positive(weight, nameof(weights));
        }

        NotAllTheSame(x, origin, nameof(x));
    }

    internal static void SameCount(int expected, int count, string paramName)
    {
        if (count != expected)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"Must be as many as x, {expected}; {count} given."),
                paramName
            );
        }
    }

    internal static void NotAllTheSame(ReadOnlySpan<double> x, bool origin, string paramName)
    {
        double at = origin ? 0 : x[0];
        if (!x.ContainsAnyExcept(at))
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Abscissas must not all be the same, because many lines pass there; all were {at}."
                ),
                paramName
            );
        }
    }
}
