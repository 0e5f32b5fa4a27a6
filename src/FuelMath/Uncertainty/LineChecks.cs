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

    /// <summary>The greatest number of a line: its squares are still numbers.</summary>
    internal const double Most = 1e100;

    /// <summary>A line by whose numbers one can divide, and whose squares are numbers.</summary>
    internal static void Sound(LineFit fit, string paramName)
    {
        bool isSound =
            IsNear(fit.CenterX)
            && IsNear(fit.CenterY)
            && IsNear(fit.Slope)
            && IsNear(fit.Sxx)
            && fit.Sxx >= 1 / Most / Most
            && IsNear(fit.TotalWeight)
            && IsNear(fit.CenterVariance)
            && IsNear(fit.Deviation)
            && double.IsFinite(fit.RSquared);
        if (!isSound)
        {
            throw new RefusedArgumentException(
                RefusalCode.OutOfRange,
                "Readings and weights must be of such sizes that the line, its scatter and their squares are numbers.",
                paramName
            );
        }
    }

    internal static bool IsNear(double number) => Math.Abs(number) <= Most;

    /// <summary>What a line says at an abscissa; far from its readings it would not be a number.</summary>
    internal static double Near(double result, double x) =>
        Math.Abs(result) <= Most * Most
            ? result
            : throw Guard.OutOfRange(x, "so near to the readings that the line is a number there");

    internal static void SameCount(int expected, int count, string paramName)
    {
        if (count != expected)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be as many as x, {expected:exactly}; {count:value} given.",
                paramName
            );
        }
    }

    internal static void NotAllTheSame(ReadOnlySpan<double> x, bool origin, string paramName)
    {
        double at = origin ? 0 : x[0];
        if (!x.ContainsAnyExcept(at))
        {
            throw new RefusedArgumentException(
                RefusalCode.AllAlike,
                $"Abscissas must not all be the same, because many lines pass there; all were {at:value}.",
                paramName
            );
        }
    }
}
