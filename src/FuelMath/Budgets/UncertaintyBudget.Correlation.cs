namespace FuelMath.Statistics;

public sealed partial class UncertaintyBudget
{
    /// <summary>The correlation of two inputs of a budget.</summary>
    /// <remarks>Source: [JCGM-100] section 5.2.2.</remarks>
    public sealed class Correlation
    {
        /// <summary>Names two inputs and their correlation.</summary>
        /// <param name="one">The name of one input; not blank.</param>
        /// <param name="other">The name of another; not blank.</param>
        /// <param name="coefficient">From -1 (opposite errors) to 1 (equal errors).</param>
        /// <exception cref="ArgumentException">A name is blank, or both are the same.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="coefficient"/> is not from -1 to
        /// 1.</exception>
        public Correlation(string one, string other, double coefficient)
        {
            One = Guard.Name(one);
            Other = Guard.Name(other);
            if (one == other)
            {
                throw new RefusedArgumentException(
                    RefusalCode.NotDifferent,
                    $"Must name another input than the first; it was '{other:given}' again.",
                    nameof(other)
                );
            }

            Coefficient = Guard.InRange(coefficient, -1, 1);
        }

        /// <summary>
        /// The correlation from readings of two inputs that were taken together. Source: [JCGM-100] section 5.2.3
        /// (equation
        /// 17).
        /// </summary>
        /// <param name="one">The name of one input; not blank.</param>
        /// <param name="other">The name of another; not blank.</param>
        /// <param name="readings">Readings of the first; two or more, not all the same. Read once.</param>
        /// <param name="others">
        /// Readings of the other, one taken with each of the first; not all the same. Read once.
        /// </param>
        /// <returns>The correlation, which is that of the means as well.</returns>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        /// <exception cref="ArgumentException">A name is blank, or the readings do not have the stated
        /// shape.</exception>
        public static Correlation FromReadings(
            string one,
            string other,
            IEnumerable<double> readings,
            IEnumerable<double> others
        )
        {
            ArgumentNullException.ThrowIfNull(one);
            ArgumentNullException.ThrowIfNull(other);
            ArgumentNullException.ThrowIfNull(readings);
            ArgumentNullException.ThrowIfNull(others);
            (double[] a, double[] b) = ([.. readings], [.. others]);
            if (a.Length != b.Length)
            {
                throw new RefusedArgumentException(
                    RefusalCode.Count,
                    $"Must be {a.Length:exactly} readings, as of '{one:other}'; there are {b.Length:value}.",
                    nameof(others)
                );
            }

            (var first, var second) = (new Sample(a), new Sample(b));
            if (first.StandardDeviation == 0 || second.StandardDeviation == 0)
            {
                throw new RefusedArgumentException(
                    RefusalCode.AllAlike,
                    "Must be readings that are not all the same.",
                    first.StandardDeviation == 0 ? nameof(readings) : nameof(others)
                );
            }

            double sum = a.Zip(
                    b,
                    (x, y) =>
                        (x - first.Mean) / first.StandardDeviation * ((y - second.Mean) / second.StandardDeviation)
                )
                .Sum();
            return new(one, other, Math.Clamp(sum / (a.Length - 1), -1, 1));
        }

        /// <summary>One input.</summary>
        public string One { get; }

        /// <summary>The other.</summary>
        public string Other { get; }

        /// <summary>The correlation coefficient.</summary>
        public double Coefficient { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{One} with {Other}: {Coefficient}");
    }
}
