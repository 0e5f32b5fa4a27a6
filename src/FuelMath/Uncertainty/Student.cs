using MathNet.Numerics.Distributions;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>Quantiles of Student's distribution: how many standard errors an interval reaches to either side.</summary>
/// <remarks>Source: [JCGM-100] section G.3 and table G.2.</remarks>
public static class Student
{
    private const double LeastConfidence = 0.5;
    private const double MostConfidence = 0.9999;

    // The factors at the two ends of confidence, with many degrees of freedom and with one, lie within these, also where
    // the tail is shared among a million pairs.
    private const double LeastFactor = 0.5;
    private const double MostFactor = 1e12;

    /// <summary>The factor t of a two-sided interval: mean ± t × standard error holds the truth that often.</summary>
    /// <param name="degreesOfFreedom">Readings less fitted parameters; one or more.</param>
    /// <param name="confidence">How often the interval holds the truth; 50 % to 99.99 %.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static double TwoSided(int degreesOfFreedom, Ratio confidence)
    {
        Guard.InRange(degreesOfFreedom, 1, int.MaxValue);
        return Factor(degreesOfFreedom, (1 - Checked(confidence)) / 2);
    }

    /// <summary>How often scatter alone gives a departure of so many standard errors or more, to either side.</summary>
    /// <param name="standardErrors">The departure over its standard error; finite.</param>
    /// <param name="degreesOfFreedom">Readings less fitted parameters; one or more.</param>
    /// <returns>The share, from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Ratio TwoSidedPValue(double standardErrors, int degreesOfFreedom)
    {
        double t = Guard.Finite(standardErrors);
        // The square of Student's t is Fisher's ratio with one degree of freedom above.
        return SiUnits.Ratio(FTest.UpperTail(t * t, 1, degreesOfFreedom));
    }

    /// <summary>A confidence as a share: 50 % to 99.99 %.</summary>
    internal static double Checked(Ratio confidence) =>
        Guard.InRange(confidence, confidence.InSi(), LeastConfidence, MostConfidence, SiUnits.Ratio);

    /// <summary>
    /// The place with this much of the distribution below its mirror image. By halving, until two neighboring numbers are
    /// left: the inverse of the numerics library gives up where the tail is long.
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
