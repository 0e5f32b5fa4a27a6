using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

public sealed partial class BriefAssessment
{
    /// <summary>
    /// How much a first answer depends on one estimate: one solve at each end of its range, all else equal.
    /// </summary>
    /// <remarks>One estimate at a time: two together may have more effect than either.</remarks>
    public sealed class EstimateInfluence
    {
        private readonly Verdict.Outcome verdict;

        internal EstimateInfluence(
            SystemBrief.Estimate estimate,
            ImmutableArray<OutputMovement> movements,
            Verdict atLeast,
            Verdict atGreatest,
            Verdict.Outcome verdict
        )
        {
            (Estimate, VerdictAtLeast, VerdictAtGreatest) = (estimate, atLeast, atGreatest);
            this.verdict = verdict;
            Movements = [.. movements.OrderByDescending(m => m.Weight)];
            ChangesVerdict = atLeast.Kind != verdict || atGreatest.Kind != verdict;
        }

        /// <summary>The estimate.</summary>
        public SystemBrief.Estimate Estimate { get; }

        /// <summary>Each answer at each point, the one nearest to its limit or furthest past it first.</summary>
        public ImmutableArray<OutputMovement> Movements { get; }

        /// <summary>The verdict on all points at the low end of the range.</summary>
        public Verdict VerdictAtLeast { get; }

        /// <summary>The verdict on all points at the high end of the range.</summary>
        public Verdict VerdictAtGreatest { get; }

        /// <summary>Whether the verdict at either end differs from that at the estimate.</summary>
        public bool ChangesVerdict { get; }

        internal double Weight => Movements.IsEmpty ? 0 : Movements[0].Weight;

        /// <summary>Formats the estimate and its largest movement as one line.</summary>
        /// <returns>The text.</returns>
        public override string ToString()
        {
            if (Movements.IsEmpty)
            {
                return $"{Estimate}: no answer to move";
            }

            OutputMovement m = Movements[0];
            return $"{Estimate}: {Words(m.Output)} at {m.Point} {Percent(m.Value)} becomes {Percent(m.AtLeast)} to "
                + $"{Percent(m.AtGreatest)} (limit {Percent(m.Limit)}){Changed()}. Measure: {Estimate.Remedy}";
        }

        /// <summary>The verdict at an end where it differs, with its first reason: the graver one of two.</summary>
        private string Changed()
        {
            if (!ChangesVerdict)
            {
                return "";
            }

            Verdict other = new[] { VerdictAtLeast, VerdictAtGreatest }
                .Where(v => v.Kind != verdict)
                .MaxBy(v => v.Kind)!;
            string reason = other.Reasons.IsEmpty ? "" : $" ({other.Reasons[0].What})";
            return $", and the verdict \"{Verdict.Words(other.Kind)}\"{reason}";
        }

        private static string Words(Output output) =>
            output switch
            {
                Output.DutyCycle => "duty cycle",
                Output.LeanDeviation => "lambda above what is asked",
                _ => "pump reserve",
            };

        private static string Percent(UnitsNet.Ratio? value) =>
            value is { } v ? string.Create(CultureInfo.InvariantCulture, $"{100 * v.InSi():0.#} %") : "no answer";
    }
}
