using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>What one output came to in the trials of a Monte Carlo run: its estimate, and how it scatters.</summary>
/// <typeparam name="TValue">What the output is.</typeparam>
/// <typeparam name="TDeviation">What a difference of two of them is.</typeparam>
/// <remarks>Source: [JCGM-101] clause 7.</remarks>
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

    /// <summary>The value below which a share of the trials lies; straight between neighboring trials.</summary>
    /// <param name="share">The share; from half a trial to half a trial less than all.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">So few trials say nothing of a share so near an end.</exception>
    public TValue Quantile(Ratio share) => toValue(numbers.At(share));

    /// <summary>The lower end of the interval that leaves out as many trials below it as above it.</summary>
    /// <param name="coverage">The share of the trials inside, for example 95 %.</param>
    /// <returns>Its lower end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">So few trials say nothing of an interval so wide.</exception>
    public TValue LowEnd(Ratio coverage) => toValue(numbers.At(SiUnits.Ratio((1 - coverage.InSi()) / 2)));

    /// <summary>The upper end of that interval.</summary>
    /// <param name="coverage">The share of the trials inside.</param>
    /// <returns>Its upper end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">So few trials say nothing of an interval so wide.</exception>
    public TValue HighEnd(Ratio coverage) => toValue(numbers.At(SiUnits.Ratio((1 + coverage.InSi()) / 2)));
}
