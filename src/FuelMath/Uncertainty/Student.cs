using MathNet.Numerics.Distributions;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>Quantiles of Student's distribution: the number of standard errors to either side of an interval.</summary>
/// <remarks>Source: [JCGM-100] section G.3 and table G.2.</remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public static class Student
{
    private const double LeastConfidence = 0.5;
    private const double MostConfidence = 0.9999;

    // Brackets of the factor for every confidence and any degrees of freedom, also where the tail is divided among a
    // million pairs.
    private const double LeastFactor = 0.5;
    private const double MostFactor = 1e12;

    /// <summary>
    /// The factor t of a two-sided interval: mean ± t × standard error contains the true value with this confidence.
    /// </summary>
    /// <param name="degreesOfFreedom">Readings minus fitted parameters; one or more.</param>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static double TwoSided(int degreesOfFreedom, Ratio confidence)
    {
        Guard.InRange(degreesOfFreedom, 1, int.MaxValue);
        return Factor(degreesOfFreedom, (1 - Checked(confidence)) / 2);
    }

    /// <summary>
    /// The probability that scatter alone gives a departure of this many standard errors or more, to either side.
    /// </summary>
    /// <param name="standardErrors">The departure over its standard error; finite.</param>
    /// <param name="degreesOfFreedom">Readings minus fitted parameters; one or more.</param>
    /// <returns>The probability, from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Ratio TwoSidedPValue(double standardErrors, int degreesOfFreedom)
    {
        double t = Guard.Finite(standardErrors);
        // The square of Student's t is Fisher's ratio with one degree of freedom above.
        return SiUnits.Ratio(FTest.UpperTail(t * t, 1, degreesOfFreedom));
    }

    /// <summary>A confidence as a fraction: 50 % to 99.99 %.</summary>
    internal static double Checked(Ratio confidence) =>
        Guard.InRange(confidence, confidence.InSi(), LeastConfidence, MostConfidence, SiUnits.Ratio);

    /// <summary>
    /// The factor with this probability below its negative. By bisection down to two neighboring numbers: the inverse
    /// of the numerics library fails for long tails.
    /// </summary>
    internal static double Factor(int degreesOfFreedom, double tail)
    {
        (double low, double high) = (LeastFactor, MostFactor);
        while (true)
        {
            double middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                return high;
            }

            if (StudentT.CDF(0, 1, degreesOfFreedom, -middle) > tail)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }
    }
}
