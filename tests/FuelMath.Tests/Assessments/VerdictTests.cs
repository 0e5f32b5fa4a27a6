using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>How findings become a verdict.</summary>
public sealed partial class VerdictTests
{
    private static readonly DataSource Rule = new("Definition", "a test");

    private static readonly Gen<Finding> AnyFinding = Gen.Zip(
            Gen.Elements(Enum.GetValues<Severity>()),
            Gen.Elements(true, false)
        )
        .Select(pair => Made(pair.Item1, pair.Item2));

    [Theory]
    [InlineData(Severity.Note, false, Verdict.Outcome.Holds)]
    [InlineData(Severity.Note, true, Verdict.Outcome.Holds)]
    [InlineData(Severity.Warning, false, Verdict.Outcome.ActFirst)]
    [InlineData(Severity.Warning, true, Verdict.Outcome.NotKnown)]
    [InlineData(Severity.Danger, false, Verdict.Outcome.DoNotRun)]
    [InlineData(Severity.Danger, true, Verdict.Outcome.DoNotRun)]
    public void Of_OneFinding_FollowsItsSeverity(Severity severity, bool isNotKnown, Verdict.Outcome expected)
    {
        Finding finding = Made(severity, isNotKnown);
        var verdict = Verdict.Of([finding]);

        Assert.Equal(expected, verdict.Kind);
        Assert.Equal<Finding>(expected == Verdict.Outcome.Holds ? [] : [finding], [.. verdict.Reasons]);
        Assert.Equal<Finding>(isNotKnown ? [finding] : [], [.. verdict.NotJudged]);
    }

    /// <summary>The worst decides, whatever the order and however they are put together.</summary>
    [Property]
    public Property Together_OfAnyParts_IsTheWorstOfAll() =>
        Prop.ForAll(
            AnyFinding.ListOf().ToArbitrary(),
            AnyFinding.ListOf().ToArbitrary(),
            (one, other) =>
            {
                var together = Verdict.Together([Verdict.Of(one), Verdict.Of(other)]);
                Verdict.Outcome worst = one.Concat(other)
                    .Select(Verdict.KindOf)
                    .DefaultIfEmpty(Verdict.Outcome.Holds)
                    .Max();
                return together.Kind == worst
                    && together.Reasons.All(r => Verdict.KindOf(r) == worst)
                    && (worst == Verdict.Outcome.Holds) == together.Reasons.IsEmpty
                    && together.Kind == Verdict.Of(other.Concat(one)).Kind;
            }
        );

    [Fact]
    public void Together_OfNothing_IsNotKnown()
    {
        var verdict = Verdict.Together([]);

        Assert.Equal(Verdict.Outcome.NotKnown, verdict.Kind);
        Assert.Equal(FindingCode.NothingJudged, Assert.Single(verdict.Reasons).Code);
    }

    [Fact]
    public void ToString_HoldsWithSomethingNotJudged_SaysBoth() =>
        Assert.Equal("holds; not judged: something", Verdict.Of([Made(Severity.Note, true)]).ToString());

    /// <summary>The first reason stands there, the others are counted; what does not decide is not.</summary>
    [Theory]
    [InlineData(1, "act first: something (1)")]
    [InlineData(2, "act first: something (1) and 1 more")]
    [InlineData(3, "act first: something (1) and 2 more")]
    public void ToString_OfReasons_CountsThoseAfterTheFirst(int warnings, string expected) =>
        Assert.Equal(
            expected,
            Verdict
                .Of([.. Enumerable.Repeat(Made(Severity.Warning, false), warnings), Made(Severity.Note, false)])
                .ToString()
        );

    /// <summary>A danger, what is not known, a warning, a note: in this order, and those alike as they came.</summary>
    [Fact]
    public void Findings_OfAVerdict_TheGravestFirst()
    {
        Finding[] given =
        [
            Made(Severity.Note, false),
            Made(Severity.Warning, false),
            Made(Severity.Danger, false),
            Made(Severity.Note, true),
            Made(Severity.Warning, true),
            Made(Severity.Danger, true),
        ];

        Assert.Equal<Finding>(
            [given[2], given[5], given[4], given[1], given[0], given[3]],
            [.. Verdict.Of(given).Findings]
        );
    }

    [Fact]
    public void WithQuantities_OfAFinding_KeepsTheRest()
    {
        Finding finding = Made(Severity.Warning, true).WithQuantities(Pressure.FromBars(3), Pressure.FromBars(2));

        Assert.Equal(3, ((Pressure)finding.ValueQuantity!).Bars);
        Assert.Equal(2, ((Pressure)finding.LimitQuantity!).Bars);
        Assert.True(finding.IsNotKnown);
        Assert.Equal((FindingCode.Custom, "part"), (finding.Code, finding.Part));
    }

    /// <summary>Every code has its row on the page, and every row its code.</summary>
    [Fact]
    public void Page_ListsEveryCode() =>
        Assert.Equal(
            Enum.GetNames<FindingCode>(),
            Row().Matches(House.Repository.Read("docs/guide/findings.md")).Select(m => m.Groups["code"].Value)
        );

    /// <summary>A code that no source gives is a promise without a finding.</summary>
    [Fact]
    public void EveryCode_IsGivenSomewhere()
    {
        string all = string.Join(
            "\n",
            House
                .Repository.Code("src/")
                .Where(f => !f.EndsWith("FindingCode.cs", StringComparison.Ordinal))
                .Select(House.Repository.Read)
        );

        House.Offenders.None(Enum.GetNames<FindingCode>().Where(c => !Regex.IsMatch(all, $@"FindingCode\.{c}\b")));
    }

    private static Finding Made(Severity severity, bool isNotKnown)
    {
        var finding = new Finding(FindingCode.Custom, severity, "part", "something", "1", "none", Rule, "Do it.");
        return isNotKnown ? finding.AsNotKnown() : finding;
    }

    [GeneratedRegex(@"^\| `(?<code>\w+)` \|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
