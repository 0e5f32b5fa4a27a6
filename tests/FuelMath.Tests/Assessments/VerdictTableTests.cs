namespace FuelMath.Tests.Assessments;

/// <summary>Many systems at many points, each with the verdict that follows by hand.</summary>
public sealed class VerdictTableTests
{
    public static TheoryData<string> Names => [.. VerdictCases.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Assess_EachCase_ComesToTheVerdictThatFollowsByHand(string name)
    {
        VerdictCase given = VerdictCases.All[name];

        Verdict verdict = new SystemAssessment(given.System, [given.Point]).Points[0].Verdict;

        Assert.True(
            given.Kind == verdict.Kind && (given.Decides is null || verdict.Reasons.Any(r => r.Code == given.Decides)),
            $"{name}: must be {given.Kind} by {given.Decides}; it was {verdict.Kind}: {string.Join(" | ", verdict.Findings)}"
        );
        Assert.Equal(given.Kind == Verdict.Outcome.Holds, verdict.Reasons.IsEmpty);
    }

    [Fact]
    public void Table_HoldsEveryKind() =>
        Assert.Equal(
            Enum.GetValues<Verdict.Outcome>().Order(),
            VerdictCases.All.Values.Select(c => c.Kind).Distinct().Order()
        );

    /// <summary>The whole is never better than its worst point.</summary>
    [Fact]
    public void Assess_PointsOfOneSystem_TheWorstDecides()
    {
        VerdictCase[] same = [VerdictCases.All["healthy, held"], VerdictCases.All["fuel hotter than its data"]];

        var assessment = new SystemAssessment(same[1].System, same.Select(c => c.Point));

        Assert.Equal([Verdict.Outcome.Holds, Verdict.Outcome.NotKnown], assessment.Points.Select(p => p.Verdict.Kind));
        Assert.Equal(Verdict.Outcome.NotKnown, assessment.Verdict.Kind);
    }

    [Fact]
    public void Assess_NoPoint_IsNotKnown() =>
        Assert.Equal(
            (Verdict.Outcome.NotKnown, FindingCode.NothingJudged),
            Described(new SystemAssessment(VerdictCases.Fitted(1, 1, 1, 1), []).Verdict)
        );

    private static (Verdict.Outcome, FindingCode) Described(Verdict verdict) => (verdict.Kind, verdict.Reasons[0].Code);
}
