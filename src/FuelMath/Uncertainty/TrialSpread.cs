using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>One output in the trials of a Monte Carlo run: its estimate and its scatter.</summary>
/// <typeparam name="TValue">The type of the output.</typeparam>
/// <typeparam name="TDeviation">The type of a difference of two outputs.</typeparam>
/// <remarks>Source: [JCGM-101] clause 7.</remarks>
/// <seealso href="../guide/uncertainty.html">Uncertainty</seealso>
public sealed class TrialSpread<TValue, TDeviation>
{
    private readonly TrialNumbers numbers;
    private readonly Func<double, TValue> toValue;

    internal TrialSpread(double[] values, Func<double, TValue> toValue, Func<double, TDeviation> toDeviation)
    {
        (numbers, this.toValue) = (new TrialNumbers(values), toValue);
        (Mean, StandardDeviation) = (toValue(numbers.Mean), toDeviation(numbers.StandardDeviation));
    }

    /// <summary>The mean of the trials: the estimate of the output.</summary>
    public TValue Mean { get; }

    /// <summary>The standard deviation of the trials: the standard uncertainty of the output.</summary>
    public TDeviation StandardDeviation { get; }

    /// <summary>The quantile of the trials; linear between neighboring trials.</summary>
    /// <param name="share">The fraction of trials below it; at least half a trial from either end.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The trials are too few for a quantile so near an end.</exception>
    public TValue Quantile(Ratio share) => toValue(numbers.At(share));

    /// <summary>The lower end of the interval with equally many trials below and above it.</summary>
    /// <param name="coverage">The fraction of the trials inside, for example 95 %.</param>
    /// <returns>Its lower end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The trials are too few for an interval so wide.</exception>
    public TValue LowEnd(Ratio coverage) => toValue(numbers.At(SiUnits.Ratio((1 - coverage.InSi()) / 2)));

    /// <summary>The upper end of that interval.</summary>
    /// <param name="coverage">The fraction of the trials inside.</param>
    /// <returns>Its upper end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The trials are too few for an interval so wide.</exception>
    public TValue HighEnd(Ratio coverage) => toValue(numbers.At(SiUnits.Ratio((1 + coverage.InSi()) / 2)));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Mean}, standard deviation {StandardDeviation}");
}
