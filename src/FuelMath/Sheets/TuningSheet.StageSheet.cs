using System.Collections.Immutable;

namespace FuelMath;

public sealed partial class TuningSheet
{
    /// <summary>
    /// The numbers to enter in the controller for one injector stage, or the instruction not to enter them yet.
    /// </summary>
    /// <remarks>Created by a <see cref="TuningSheet"/>.</remarks>
    public sealed class StageSheet
    {
        internal StageSheet(SystemAssessment assessment, InjectorStage stage)
        {
            Stage = stage.Name;
            SystemAssessment.StageSet? set = assessment.Sets.FirstOrDefault(s => s.Stage == stage.Name);
            Verdict.Outcome own = set?.Verdict.Kind ?? Verdict.Outcome.Holds;
            Kind = (Verdict.Outcome)Math.Max((int)own, (int)assessment.Verdict.Kind);
            Finding? why =
                own == Kind ? set?.Verdict.Reasons.FirstOrDefault() : assessment.Verdict.Reasons.FirstOrDefault();
            Instruction = TuningSheet.Words(Kind, why);
            Tables = [.. new StageTables(assessment, stage, set).All()];
        }

        /// <summary>The stage's name.</summary>
        public string Stage { get; }

        /// <summary>The worse verdict of the set and the whole.</summary>
        public Verdict.Outcome Kind { get; }

        /// <summary>The instruction for the numbers: enter them, act first, or do not enter them.</summary>
        public string Instruction { get; }

        /// <summary>Its tables.</summary>
        public ImmutableArray<SheetTable> Tables { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Stage}: {Kind}");
    }
}
