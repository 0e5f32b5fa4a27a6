using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>Repeats of one reading: their mean, their scatter, and the standard error of the mean.</summary>
/// <remarks>
/// In the unit of the data. Mean and deviation are computed in two passes, so that no accuracy is lost where readings
/// agree in their first digits. Source: [JCGM-100] sections 4.2.1 to 4.2.3.
/// </remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public sealed class Sample
{
    /// <summary>Takes repeats.</summary>
    /// <param name="values">
    /// Two or more readings, none beyond 1e150 in size, so that their squares are finite. Read once.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="values"/> is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two, or one is not finite or beyond 1e150.</exception>
    public Sample(IEnumerable<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        double[] all = [.. values];
        if (all.Length < 2)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"A scatter needs {2:least} or more readings; {all.Length:value} given.",
                nameof(values)
            );
        }

        Guard.AllFinite(all, "Readings", nameof(values));
        Count = all.Length;
        Mean = Averages.Mean(all);
        // Scaled, so that the squares of tiny or huge readings neither underflow nor overflow.
        double scale = all.Max(v => Math.Abs(v - Mean));
        StandardDeviation =
            scale == 0 ? 0 : scale * Math.Sqrt(all.Sum(v => (v - Mean) / scale * ((v - Mean) / scale)) / (Count - 1));
    }

    /// <summary>How many readings.</summary>
    public int Count { get; }

    /// <summary>Their mean.</summary>
    public double Mean { get; }

    /// <summary>The standard deviation of one reading, with n - 1.</summary>
    public double StandardDeviation { get; }

    /// <summary>The standard error of the mean: standard deviation over the root of the count.</summary>
    public double StandardError => StandardDeviation / Math.Sqrt(Count);

    /// <summary>The confidence interval of the mean, for normal scatter.</summary>
    /// <param name="confidence">How often the range holds it; 50 % to 99.99 %.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public Interval MeanInterval(Ratio confidence) =>
        Interval.Around(Mean, Student.TwoSided(Count - 1, confidence) * StandardError);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Mean}, standard error {StandardError}, {Count} readings");
}
