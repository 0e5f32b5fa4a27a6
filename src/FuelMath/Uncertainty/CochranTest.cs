using MathNet.Numerics.Distributions;

namespace FuelMath.Statistics;

/// <summary>
/// Cochran's test: whether one of several variances is larger than chance explains, by its share of their sum of squares.
/// </summary>
/// <remarks>
/// With normal scatter the share of one sum of squares in all has a beta distribution, and so the ratio of that variance to
/// the pooled one of the others is Fisher's ratio; the probability is divided among the variances that could be the
/// largest. With equal numbers of readings that is Cochran's C with its tabulated critical values,
/// C = 1/(1 + (p - 1)/F). Source: [ISO-5725-2] section 7.3.3, [Cochran-1941].
/// </remarks>
internal readonly struct CochranTest
{
    /// <summary>Below this probability a variance is a straggler: to be looked at. Source: [ISO-5725-2] section 7.3.2.</summary>
    internal const double Straggler = 0.05;

    /// <summary>Below this one it is an outlier. Source: [ISO-5725-2] section 7.3.2.</summary>
    internal const double Outlier = 0.01;

    private readonly int freedom;
    private readonly int others;
    private readonly int count;

    /// <summary>Tests the most conspicuous of two or more variances.</summary>
    /// <param name="squares">The sum of squares of each about its own mean; not all zero.</param>
    /// <param name="freedoms">The degrees of freedom of each; one or more.</param>
    internal CochranTest(ReadOnlySpan<double> squares, ReadOnlySpan<int> freedoms)
    {
        (double all, int allFreedom) = (0, 0);
        for (int i = 0; i < squares.Length; i++)
        {
            all += squares[i];
            allFreedom += freedoms[i];
        }

        (count, PValue) = (squares.Length, double.PositiveInfinity);
        for (int i = 0; i < squares.Length; i++)
        {
            int rest = allFreedom - freedoms[i];
            double ratio = squares[i] / freedoms[i] / ((all - squares[i]) / rest);
            double p = double.IsFinite(ratio) ? FTest.UpperTail(ratio, freedoms[i], rest) : 0;
            if (p < PValue)
            {
                (Place, PValue, Share, freedom, others) = (i, p, squares[i] / all, freedoms[i], rest);
            }
        }

        PValue = Math.Min(1, count * PValue);
    }

    /// <summary>Which of the variances it is.</summary>
    internal int Place { get; }

    /// <summary>Its share of the sum of squares of all: Cochran's C.</summary>
    internal double Share { get; }

    /// <summary>The probability that chance gives one of them such a share or a larger one; at most.</summary>
    internal double PValue { get; }

    /// <summary>The share that chance exceeds with a probability.</summary>
    internal double Critical(double probability) => Critical(freedom, others, count, probability);

    /// <summary>The share that the largest of some variances exceeds by chance with a probability; at most.</summary>
    /// <param name="freedom">Degrees of freedom of that variance.</param>
    /// <param name="others">Those of all others together.</param>
    /// <param name="count">How many variances there are.</param>
    /// <param name="probability">The probability.</param>
    internal static double Critical(int freedom, int others, int count, double probability) =>
        Beta.InvCDF(freedom / 2d, others / 2d, 1 - (probability / count));
}
