using FuelMath.Bench;

namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>The bench result of the injectors of one stage.</summary>
    public sealed class StageSet
    {
        private static readonly DataSource Rule = new(
            "Definition",
            "a set is accepted when it is matched and each of it is"
        );

        /// <summary>Assigns a set to a stage.</summary>
        /// <param name="stage">The stage's name; not blank.</param>
        /// <param name="report">The report of the bench.</param>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="report"/> is null.</exception>
        public StageSet(string stage, SetReport report)
        {
            ArgumentNullException.ThrowIfNull(report);
            (Stage, Report) = (Guard.Name(stage), report);
            Verdict = report.IsAccepted ? Verdict.Of(report.Findings) : Verdict.Of([NotAccepted(), .. report.Findings]);
        }

        /// <summary>The stage's name.</summary>
        public string Stage { get; }

        /// <summary>The report of the bench.</summary>
        public SetReport Report { get; }

        /// <summary>The verdict on the set: never "holds" when it is not accepted.</summary>
        public Verdict Verdict { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Stage}: {Verdict}");

        /// <summary>"Not known" where the readings are inconclusive; else a finding to act on.</summary>
        private Finding NotAccepted()
        {
            string[] named = [.. Report.Members.Where(m => !m.IsAccepted).Select(m => $"'{m.Name}'")];
            string why =
                named.Length == 0 ? "spread"
                : Report.SpreadVerdict == BenchVerdict.Accepted ? string.Join(", ", named)
                : $"spread; {string.Join(", ", named)}";
            var finding = new Finding(
                FindingCode.SetNotAccepted,
                Severity.Warning,
                Stage,
                $"The injectors of stage '{Stage}' are not accepted",
                why,
                "accepted",
                Rule,
                "See what the bench says of each; clean, read again or exchange."
            );
            return Verdict.Of(Report.Findings).Kind is Verdict.Outcome.Holds or Verdict.Outcome.NotKnown
                ? finding.AsNotKnown()
                : finding;
        }
    }
}
