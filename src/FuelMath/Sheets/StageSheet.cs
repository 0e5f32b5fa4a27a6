using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What to tell the controller of one stage of injectors, or that it must not be told yet.</summary>
/// <remarks>Made by a <see cref="TuningSheet"/>.</remarks>
public sealed class StageSheet
{
    internal StageSheet(SystemAssessment assessment, InjectorStage stage)
    {
        Stage = stage.Name;
        StageSet? set = assessment.Sets.FirstOrDefault(s => s.Stage == stage.Name);
        VerdictKind own = set?.Verdict.Kind ?? VerdictKind.Holds;
        Kind = (VerdictKind)Math.Max((int)own, (int)assessment.Verdict.Kind);
        Finding? why =
            own == Kind ? set?.Verdict.Reasons.FirstOrDefault() : assessment.Verdict.Reasons.FirstOrDefault();
        Instruction = TuningSheet.Words(Kind, why);
        Tables = [.. new StageTables(assessment, stage, set).All()];
    }

    /// <summary>The stage's name.</summary>
    public string Stage { get; }

    /// <summary>What the set and the whole come to, the worse of both.</summary>
    public VerdictKind Kind { get; }

    /// <summary>What to do with the numbers: enter them, or what comes first, or that nothing is to be entered.</summary>
    public string Instruction { get; }

    /// <summary>Its tables.</summary>
    public ImmutableArray<SheetTable> Tables { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Stage}: {Kind}");
}
