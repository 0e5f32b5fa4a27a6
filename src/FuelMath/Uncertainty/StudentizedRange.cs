using MathNet.Numerics;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>
/// The range of several equal means, largest less smallest, over the standard error of one of them, by scatter alone.
/// </summary>
/// <remarks>
/// <para>
/// The difference of a pair follows Student's distribution; the largest and the smallest of n differ by more: with
/// eight equal means the range exceeds the 95 % limit of a pair in about every third set. The standard error has its
/// own degrees of freedom, independent of the means.
/// </para>
/// <para>
/// With φ and Φ of the normal distribution the probability above q is the mean over the scatter s of 1 - n ∫ φ(z) [Φ(z)
/// - Φ(z - q s)]^(n - 1) dz. Both integrals are taken by the trapezoidal rule, which converges faster than any power of
/// the step for integrands that vanish smoothly at both ends. Source: [Harter-1960].
/// </para>
/// </remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public static class StudentizedRange
{
    private const int MostMeans = 1000;

    // Beyond these many standard deviations the normal density is below 1e-17, and likewise that of the scatter.
    private const double NormalReach = 8.7;
    private const double LogReach = -39;

    /// <summary>The range, in standard errors of one mean, within which equal means stay with a confidence.</summary>
    /// <param name="count">Number of means; 2 to 1000.</param>
    /// <param name="degreesOfFreedom">Those of the standard error; one or more.</param>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static double Quantile(int count, int degreesOfFreedom, Ratio confidence)
    {
        Guard.InRange(count, 2, MostMeans);
        Guard.InRange(degreesOfFreedom, 1, int.MaxValue);
        double tail = 1 - Student.Checked(confidence);
        // The quantile of a pair is the lower bound, and that of a pair with the tail divided among all pairs the upper
        // one.
        double pair = Student.Factor(degreesOfFreedom, tail / 2);
        double all = Student.Factor(degreesOfFreedom, tail / (count * (count - 1.0)));
        return count == 2
            ? Constants.Sqrt2 * pair
            : Brent.FindRoot(
                q => Math.Log(Upper(q, count, degreesOfFreedom) / tail),
                Constants.Sqrt2 * pair * (1 - 1e-9),
                Constants.Sqrt2 * all * (1 + 1e-9),
                1e-12 * all,
                200
            );
    }

    /// <summary>The probability that equal means have such a range or a larger one.</summary>
    /// <param name="range">Largest less smallest, over the standard error of one mean; zero or more.</param>
    /// <param name="count">Number of means; 2 to 1000.</param>
    /// <param name="degreesOfFreedom">Those of the standard error; one or more.</param>
    /// <returns>The share, from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Ratio PValue(double range, int count, int degreesOfFreedom)
    {
        Guard.InRange(Guard.Finite(range), 0, double.MaxValue, nameof(range));
        Guard.InRange(count, 2, MostMeans);
        Guard.InRange(degreesOfFreedom, 1, int.MaxValue);
        return SiUnits.Ratio(Upper(range, count, degreesOfFreedom));
    }

    /// <summary>The mean of the normal tail over the scatter, whose logarithm v has the density exp(ν v - ν exp(2 v) / 2).</summary>
    private static double Upper(double range, int count, int degreesOfFreedom)
    {
        double freedom = degreesOfFreedom;
        double Density(double v) => freedom * (v - (SpecialFunctions.Expm1(2 * v) / 2));
        double low = Reach(Density, -1 / Math.Sqrt(freedom));
        double high = Reach(Density, 1 / Math.Sqrt(freedom));
        int steps = (int)Math.Ceiling((high - low) / Math.Min(0.12, 0.3 / Math.Sqrt(freedom)));
        double total = NewtonCotesTrapeziumRule.IntegrateComposite(v => Math.Exp(Density(v)), low, high, steps);
        double above = NewtonCotesTrapeziumRule.IntegrateComposite(
            v => Math.Exp(Density(v)) * NormalUpper(range * Math.Exp(v), count),
            low,
            high,
            steps
        );
        return Math.Clamp(above / total, 0, 1);
    }

    /// <summary>Where the logarithm of a density, zero at zero and falling to both sides, becomes negligible.</summary>
    private static double Reach(Func<double, double> density, double step)
    {
        double at = step;
        while (density(at) > LogReach)
        {
            at += step;
        }

        return at;
    }

    /// <summary>The probability that the range of standard normal numbers exceeds a width.</summary>
    private static double NormalUpper(double width, int count)
    {
        if (width > 2 * NormalReach)
        {
            return 0;
        }

        double within = NewtonCotesTrapeziumRule.IntegrateComposite(
            z =>
                Constants.InvSqrt2Pi
                * Math.Exp(-z * z / 2)
                * Math.Pow(
                    (SpecialFunctions.Erfc((z - width) / Constants.Sqrt2) - SpecialFunctions.Erfc(z / Constants.Sqrt2))
                        / 2,
                    count - 1
                ),
            -NormalReach,
            NormalReach,
            96
        );
        return 1 - (count * within);
    }
}
