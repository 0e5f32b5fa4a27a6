using MathNet.Numerics;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>
/// An F-test: whether a part of the scatter is larger than the error explains, by the ratio of two variances.
/// </summary>
/// <remarks>Source: [Draper-Smith-1998] chapter 2. Created by a fit.</remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public sealed class FTest
{
    internal FTest(double sumOfSquares, int degreesOfFreedom, double errorSumOfSquares, int errorDegreesOfFreedom)
    {
        (SumOfSquares, DegreesOfFreedom) = (sumOfSquares, degreesOfFreedom);
        (ErrorSumOfSquares, ErrorDegreesOfFreedom) = (errorSumOfSquares, errorDegreesOfFreedom);
    }

    /// <summary>The sum of squares under test.</summary>
    public double SumOfSquares { get; }

    /// <summary>Its degrees of freedom.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>The sum of squares of the error.</summary>
    public double ErrorSumOfSquares { get; }

    /// <summary>Its degrees of freedom.</summary>
    public int ErrorDegreesOfFreedom { get; }

    /// <summary>The ratio of the two mean squares; infinite where the error is zero.</summary>
    public double F => SumOfSquares / DegreesOfFreedom / (ErrorSumOfSquares / ErrorDegreesOfFreedom);

    /// <summary>The probability that error alone gives such a ratio or a larger one.</summary>
    public Ratio PValue => SiUnits.Ratio(UpperTail(F, DegreesOfFreedom, ErrorDegreesOfFreedom));

    /// <summary>Whether the p-value is below a probability; false when the sum of squares under test is zero.</summary>
    internal bool IsRarerThan(double share) =>
        SumOfSquares > 0 && UpperTail(F, DegreesOfFreedom, ErrorDegreesOfFreedom) < share;

    /// <summary>The probability of Fisher's distribution above a ratio.</summary>
    /// <param name="ratio">The ratio of two mean squares; not negative.</param>
    /// <param name="degreesOfFreedom">Those of the upper mean square; one or more.</param>
    /// <param name="errorDegreesOfFreedom">Those of the lower; one or more.</param>
    /// <returns>The probability, from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The ratio is negative or NaN, or a number of degrees of freedom is less than one.
    /// </exception>
    public static double UpperTail(double ratio, int degreesOfFreedom, int errorDegreesOfFreedom)
    {
        Guard.InRange(ratio, 0, double.PositiveInfinity);
        double upper = Guard.InRange(degreesOfFreedom, 1, int.MaxValue);
        double lower = Guard.InRange(errorDegreesOfFreedom, 1, int.MaxValue);
        return SpecialFunctions.BetaRegularized(lower / 2, upper / 2, lower / (lower + (upper * ratio)));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"F {F}, p {PValue:1}");
}
