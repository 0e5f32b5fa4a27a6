using MathNet.Numerics;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>
/// Exact one-sided confidence limits for the mean of a Poisson distribution from one count of events.
/// </summary>
/// <remarks>
/// With n counted and confidence c the lower limit is half the c-lower quantile of chi-square with 2 n degrees of freedom,
/// the upper one half its c-upper quantile with 2 n + 2. Two limits of 97.5 % make an interval of 95 %. Independent events at
/// a steady rate are assumed. Source: [Garwood-1936].
/// </remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public static class PoissonLimits
{
    /// <summary>The largest count.</summary>
    private const int MostCounted = 1_000_000;

    /// <summary>
    /// The lower limit: with a smaller mean this count or more has a probability below one minus the confidence.
    /// </summary>
    /// <param name="count">The count; 0 to 1 000 000.</param>
    /// <param name="confidence">Confidence that the limit lies below the true mean; 50 % to 99.99 %.</param>
    /// <returns>The mean number of events; zero when none was counted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static double Lower(int count, Ratio confidence)
    {
        double left = Left(confidence);
        return Checked(count) == 0 ? 0 : Root(mean => AtLeast(count, mean) > left, 0, count);
    }

    /// <summary>
    /// The upper limit: with a larger mean this count or fewer has a probability below one minus the confidence.
    /// </summary>
    /// <param name="count">The count; 0 to 1 000 000.</param>
    /// <param name="confidence">Confidence that the limit lies above the true mean; 50 % to 99.99 %.</param>
    /// <returns>The mean number of events.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static double Upper(int count, Ratio confidence)
    {
        double left = Left(confidence);
        // Ten standard deviations and ten events beyond the count leave less than 0.01 %.
        double far = Checked(count) + 10 + (10 * Math.Sqrt(count));
        return Root(mean => AtMost(count, mean) < left, count, far);
    }

    /// <summary>The probability of a count or fewer for a mean.</summary>
    internal static double AtMost(long count, double mean) =>
        mean == 0 ? 1 : SpecialFunctions.GammaUpperRegularized(count + 1.0, mean);

    /// <summary>The probability of a count or more for a mean.</summary>
    internal static double AtLeast(long count, double mean) =>
        count == 0 ? 1
        : mean == 0 ? 0
        : SpecialFunctions.GammaLowerRegularized(count, mean);

    /// <summary>One minus a confidence.</summary>
    internal static double Left(Ratio confidence) => 1 - Student.Checked(confidence);

    private static int Checked(int count) => Guard.InRange(count, 0, MostCounted);

    /// <summary>Where a condition begins to hold, by bisection down to two neighboring numbers.</summary>
    private static double Root(Predicate<double> holds, double low, double high)
    {
        while (true)
        {
            double middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                return high;
            }

            if (holds(middle))
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }
    }
}
