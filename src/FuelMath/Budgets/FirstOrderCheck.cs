using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>What random trials say of a budget: their own figures, and whether slopes at the estimates were enough.</summary>
/// <remarks>
/// Source: [JCGM-101] section 8.1. In the unit of the budget's result.
/// </remarks>
public sealed class FirstOrderCheck
{
    internal FirstOrderCheck(
        Ratio coverage,
        int trialCount,
        int refusedCount,
        double? mean,
        double? standardUncertainty,
        Interval coverageInterval,
        Interval firstOrderInterval,
        double tolerance,
        bool isSettled,
        FirstOrderVerdict verdict
    )
    {
        Coverage = coverage;
        TrialCount = trialCount;
        RefusedCount = refusedCount;
        Mean = mean;
        StandardUncertainty = standardUncertainty;
        CoverageInterval = coverageInterval;
        FirstOrderInterval = firstOrderInterval;
        Tolerance = tolerance;
        IsSettled = isSettled;
        Verdict = verdict;
    }

    /// <summary>How much of the results the intervals hold.</summary>
    public Ratio Coverage { get; }

    /// <summary>How many trials were run.</summary>
    public int TrialCount { get; }

    /// <summary>
    /// How many of them lay outside the ranges of a listed formula or had no finite result; they are left out of all figures.
    /// </summary>
    public int RefusedCount { get; }

    /// <summary>
    /// The mean of the results; null where a normal input of one or two degrees of freedom gives its scatter no finite
    /// standard deviation.
    /// </summary>
    public double? Mean { get; }

    /// <summary>The standard deviation of the results; null where <see cref="Mean"/> is.</summary>
    /// <remarks>
    /// Larger than the combined standard uncertainty where degrees of freedom are few: Student's distribution is wider than
    /// the standard error that it is made from.
    /// </remarks>
    public double? StandardUncertainty { get; }

    /// <summary>The interval that leaves out as many results below it as above it.</summary>
    public Interval CoverageInterval { get; }

    /// <summary>The budget's own interval.</summary>
    public Interval FirstOrderInterval { get; }

    /// <summary>The numerical tolerance: half a unit of the last digit of the standard uncertainty that matters.</summary>
    public double Tolerance { get; }

    /// <summary>Whether all figures were steady to a fifth of the tolerance when the trials ended.</summary>
    public bool IsSettled { get; }

    /// <summary>Whether the budget's interval may be stated.</summary>
    public FirstOrderVerdict Verdict { get; }
}
