using UnitsNet;

namespace FuelMath.Statistics;

public sealed partial class UncertaintyBudget
{
    /// <summary>
    /// The check of a first-order budget by random trials: their results, and whether the first order is enough.
    /// </summary>
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
            FirstOrderOutcome verdict
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

        /// <summary>The coverage of the intervals.</summary>
        public Ratio Coverage { get; }

        /// <summary>Number of trials.</summary>
        public int TrialCount { get; }

        /// <summary>
        /// Number of trials outside the ranges of a listed formula or without a finite result; they are left out of all
        /// results.
        /// </summary>
        public int RefusedCount { get; }

        /// <summary>
        /// The mean of the results; null where a normal input of one or two degrees of freedom makes the standard
        /// deviation
        /// infinite.
        /// </summary>
        public double? Mean { get; }

        /// <summary>The standard deviation of the results; null where <see cref="Mean"/> is.</summary>
        /// <remarks>
        /// Larger than the combined standard uncertainty where degrees of freedom are few: Student's distribution is
        /// wider
        /// than the standard error that scales it.
        /// </remarks>
        public double? StandardUncertainty { get; }

        /// <summary>The interval with equally many results below and above it.</summary>
        public Interval CoverageInterval { get; }

        /// <summary>The budget's own interval.</summary>
        public Interval FirstOrderInterval { get; }

        /// <summary>
        /// The numerical tolerance: half a unit of the last significant digit of the standard uncertainty.
        /// </summary>
        public double Tolerance { get; }

        /// <summary>Whether all results were stable to a fifth of the tolerance when the trials ended.</summary>
        public bool IsSettled { get; }

        /// <summary>Whether the budget's interval may be stated.</summary>
        public FirstOrderOutcome Verdict { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Verdict} after {TrialCount} trials");
    }
}
