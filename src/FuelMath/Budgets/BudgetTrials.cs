using System.Globalization;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>
/// The trials of a budget, in blocks, until their results are stable. Source: [JCGM-101] section 7.9.4.
/// </summary>
internal sealed class BudgetTrials
{
    private const int LeastBlock = 10_000;
    private const int BlocksAtOnce = 8;

    /// <summary>Least number of trials in a block beyond both ends together.</summary>
    private const double BeyondTheEnds = 100;

    /// <summary>
    /// The fraction of the trials beyond the ends that may be without a result; its effect on the ends is negligible.
    /// </summary>
    private const double Missing = 0.01;

    private readonly UncertaintyBudget budget;
    private readonly double coverage;
    private readonly ulong seed;
    private readonly int block;
    private readonly bool hasMoments;
    private readonly List<double[]> results = [];
    private readonly List<double[]> summaries = [];

    private BudgetTrials(UncertaintyBudget budget, double coverage, ulong seed)
    {
        (this.budget, this.coverage, this.seed) = (budget, coverage, seed);
        int wanted = Math.Max(LeastBlock, (int)Math.Ceiling(BeyondTheEnds / (1 - coverage)));
        // A whole number of vectors of any width.
        block = (wanted + 15) / 16 * 16;
        hasMoments = !budget.Groups.Any(g =>
            g.IsNormal && g.Reciprocal >= 0.5 && g.Members.Any(i => budget.Lines[i].Contribution > 0)
        );
    }

    internal static UncertaintyBudget.FirstOrderCheck Run(
        UncertaintyBudget budget,
        Ratio coverage,
        int significantDigits,
        int mostTrials,
        ulong seed,
        CancellationToken cancellation
    )
    {
        Interval firstOrder = budget.CoverageInterval(coverage);
        Guard.InRange(significantDigits, 1, 2);
        var trials = new BudgetTrials(budget, Student.Checked(coverage), seed);
        Guard.InRange(mostTrials, 2 * trials.block, 100_000_000);
        Refuse(budget);
        double tolerance;
        bool settled;
        do
        {
            trials.Add(Math.Min(BlocksAtOnce, (mostTrials / trials.block) - trials.results.Count), cancellation);
            tolerance = trials.Tolerance(significantDigits);
            settled = trials.IsSteady(tolerance / 5);
        } while (!settled && (trials.results.Count + 1) * (long)trials.block <= mostTrials);

        return trials.Judge(coverage, firstOrder, tolerance, settled);
    }

    private static void Refuse(UncertaintyBudget budget)
    {
        if (budget.Lines.All(l => l.Input.StandardUncertainty == 0))
        {
            throw new RefusedOperationException(RefusalCode.InputExact, "An input must be uncertain; all are exact.");
        }

        if (budget.Groups.FirstOrDefault(g => g.Members.Length > 1 && !(g.IsNormal && g.HasOneDegree)) is { } group)
        {
            string names = string.Join(", ", group.Members.Select(i => budget.Lines[i].Input.Name));
            throw new RefusedOperationException(
                RefusalCode.CorrelatedNotNormal,
                $"Inputs that err together must all be normal, with the same degrees of freedom, to be drawn; {names:given} are not."
            );
        }
    }

    private void Add(int count, CancellationToken cancellation)
    {
        int first = results.Count;
        var added = new (double[] Results, double[] Summary)[count];
        OnAllCores.Run(
            count,
            () => budget.Lines.Select(_ => new double[block]).ToArray(),
            (i, columns) => added[i] = Block(first + i, columns),
            _ => { },
            cancellation
        );
        results.AddRange(added.Select(a => a.Results));
        summaries.AddRange(added.Select(a => a.Summary).Where(s => s.Length > 0));
    }

    private (double[] Results, double[] Summary) Block(int number, double[][] columns)
    {
        int count = columns.Length;
        Span<double> deviations = stackalloc double[count];
        for (int row = 0; row < block; row++)
        {
            ulong place = (((ulong)number * (ulong)block) + (ulong)row) * (ulong)(2 * count);
            foreach (InputGroup group in budget.Groups)
            {
                group.Draw(seed, place, deviations);
                place += (ulong)(2 * group.Members.Length);
            }

            for (int i = 0; i < count; i++)
            {
                UncertaintyBudget.Input input = budget.Lines[i].Input;
                columns[i][row] = budget.Model.ToSi(i, input.Value + (input.StandardUncertainty * deviations[i]));
            }
        }

        var all = new double[block];
        budget.Model.Fill(columns, all);
        int kept = 0;
        for (int row = 0; row < block; row++)
        {
            for (int i = 0; i < count; i++)
            {
                deviations[i] = columns[i][row];
            }

            double result = budget.Model.FromSi(all[row]);
            if (double.IsFinite(result) && budget.Model.Admits(deviations))
            {
                all[kept++] = result;
            }
        }

        double[] some = all[..kept];
        return kept < block / 2 ? (some, []) : (some, Summary(some));
    }

    private double[] Summary(double[] some)
    {
        var numbers = new TrialNumbers([.. some]);
        (double low, double high) = Ends(numbers);
        return hasMoments ? [low, high, numbers.Mean, numbers.StandardDeviation] : [low, high];
    }

    private (double Low, double High) Ends(TrialNumbers numbers) =>
        (numbers.At(SiUnits.Ratio((1 - coverage) / 2)), numbers.At(SiUnits.Ratio((1 + coverage) / 2)));

    /// <summary>
    /// Half a unit of the last significant digit of the standard uncertainty. Source: [JCGM-101] section 7.9.2.
    /// </summary>
    private double Tolerance(int digits)
    {
        double u =
            hasMoments && summaries.Count > 0 ? summaries.Average(s => s[3]) : budget.CombinedStandardUncertainty;
        if (u == 0)
        {
            return 0;
        }

        int last = (int)Math.Floor(Math.Log10(u)) - digits + 1;
        return Math.Round(u / Math.Pow(10, last)) >= Math.Pow(10, digits)
            ? Math.Pow(10, last + 1) / 2
            : Math.Pow(10, last) / 2;
    }

    /// <summary>Whether twice the standard error of each result lies within a bound.</summary>
    private bool IsSteady(double bound) =>
        summaries.Count >= 2 && Enumerable.Range(0, summaries[0].Length).All(i => StandardError(i) * 2 <= bound);

    private double StandardError(int figure) => new Sample(summaries.Select(s => s[figure])).StandardError;

    private UncertaintyBudget.FirstOrderCheck Judge(Ratio stated, Interval firstOrder, double tolerance, bool settled)
    {
        int total = results.Count * block;
        double[] all = [.. results.SelectMany(r => r)];
        int missing = total - all.Length;
        if (summaries.Count < 2)
        {
            throw Guard.NoSolution(
                RefusalCode.TrialsRefused,
                "the trials of a budget",
                $"{missing:value} of {total:total} lie outside the ranges of the formula or have no finite result."
            );
        }

        var numbers = new TrialNumbers(all);
        (double low, double high) = Ends(numbers);
        double off = Math.Max(Math.Abs(firstOrder.Low - low), Math.Abs(firstOrder.High - high));
        double error = 2 * Math.Max(StandardError(0), StandardError(1));
        UncertaintyBudget.FirstOrderOutcome verdict =
            missing > Missing * (1 - coverage) * total ? UncertaintyBudget.FirstOrderOutcome.NotKnown
            : settled
                ? off <= tolerance ? UncertaintyBudget.FirstOrderOutcome.Enough
                    : UncertaintyBudget.FirstOrderOutcome.NotEnough
            // Not as stable as required, but too far off for chance.
            : off > tolerance + (2 * error) ? UncertaintyBudget.FirstOrderOutcome.NotEnough
            : UncertaintyBudget.FirstOrderOutcome.NotKnown;
        return new(
            stated,
            total,
            missing,
            hasMoments ? numbers.Mean : null,
            hasMoments ? numbers.StandardDeviation : null,
            new Interval(low, high),
            firstOrder,
            tolerance,
            settled,
            verdict
        );
    }
}
