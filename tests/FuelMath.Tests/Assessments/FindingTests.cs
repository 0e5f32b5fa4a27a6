using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>A finding by itself: what it must have, and what becomes of it when it is made into another one.</summary>
public sealed class FindingTests
{
    private static readonly DataSource Rule = new("Definition", "a test");

    [Fact]
    public void New_WithoutASource_IsRefused() =>
        Assert.Throws<ArgumentNullException>(
            "limitSource",
            () => new Finding(FindingCode.Custom, Severity.Note, "part", "what", "1", "2", null!, "Do it.")
        );

    [Theory]
    [InlineData(" ", "what", "1", "2", "Do it.", "part")]
    [InlineData("part", " ", "1", "2", "Do it.", "what")]
    [InlineData("part", "what", " ", "2", "Do it.", "value")]
    [InlineData("part", "what", "1", " ", "Do it.", "limit")]
    [InlineData("part", "what", "1", "2", " ", "action")]
    public void New_WithABlankText_IsRefused(
        string part,
        string what,
        string value,
        string limit,
        string action,
        string name
    ) =>
        Assert.Equal(
            name,
            Assert
                .ThrowsAny<ArgumentException>(() =>
                    new Finding(FindingCode.Custom, Severity.Note, part, what, value, limit, Rule, action)
                )
                .ParamName
        );

    /// <summary>While the sensor works a danger is none: said as a warning. What is less than a danger stays what it is.</summary>
    [Theory]
    [InlineData(Severity.Danger, Severity.Warning)]
    [InlineData(Severity.Warning, Severity.Warning)]
    [InlineData(Severity.Note, Severity.Note)]
    public void IfSensorFails_IsAWarning_AndKeepsTheRest(Severity severity, Severity expected)
    {
        Finding finding = Made(severity).AsNotKnown();
        Finding failed = finding.IfSensorFails();

        Assert.Equal((expected, "If the sensor fails: what"), (failed.Severity, failed.What));
        Assert.Equal(
            (finding.Code, finding.Part, finding.Value, finding.Limit, finding.LimitSource, finding.Action, true),
            (failed.Code, failed.Part, failed.Value, failed.Limit, failed.LimitSource, failed.Action, failed.IsNotKnown)
        );
        Assert.Equal((finding.ValueQuantity, finding.LimitQuantity), (failed.ValueQuantity, failed.LimitQuantity));
    }

    [Fact]
    public void AsNotKnown_KeepsTheNumbers()
    {
        Finding finding = Made(Severity.Warning);
        Finding unknown = finding.AsNotKnown();

        Assert.Equal((false, true), (finding.IsNotKnown, unknown.IsNotKnown));
        Assert.Equal(3, ((ElectricPotential)unknown.ValueQuantity!).Volts);
        Assert.Equal(2, ((ElectricPotential)unknown.LimitQuantity!).Volts);
        Assert.Null(finding.WithQuantities(ElectricPotential.FromVolts(1), null).LimitQuantity);
    }

    /// <summary>Value and limit have as many digits as tell them apart, both alike.</summary>
    [Theory]
    [InlineData(3, 2, "3.00 V", "2.00 V")]
    [InlineData(2.001, 2, "2.001 V", "2.000 V")]
    public void Of_TwoNumbers_ShowsWhatTellsThemApart(double value, double limit, string one, string other)
    {
        Finding finding = Finding.Of(
            FindingCode.Custom,
            Severity.Note,
            "part",
            "what",
            Shown.Volts(value),
            Shown.Volts(limit),
            Rule,
            "Do it."
        );

        Assert.Equal((one, other), (finding.Value, finding.Limit));
    }

    [Fact]
    public void ToString_SaysAll() =>
        Assert.Equal("Danger: what: 3.00 V (limit 2.00 V, " + Rule + "). Do it.", Made(Severity.Danger).ToString());

    /// <summary>What was not judged is said once, and not again where it is the reason.</summary>
    [Fact]
    public void Verdict_SaysWhatWasNotJudgedOnce()
    {
        Finding note = Made(Severity.Note).AsNotKnown();
        Finding warning = Made(Severity.Warning).AsNotKnown();

        Assert.Equal("not known: what (3.00 V)", Verdict.Of([warning]).ToString());
        Assert.Equal("holds; not judged: what", Verdict.Of([note, note]).ToString());
        Assert.Equal("not known: what (3.00 V); not judged: what", Verdict.Of([note, warning]).ToString());
    }

    /// <summary>Equal findings of several verdicts are listed once; any difference makes two.</summary>
    [Fact]
    public void Together_ListsEqualFindingsOnce()
    {
        Finding one = Made(Severity.Warning);

        Assert.Single(Verdict.Together([Verdict.Of([one]), Verdict.Of([Made(Severity.Warning)])]).Findings);
        Assert.Equal(
            2,
            Verdict.Together([Verdict.Of([one]), Verdict.Of([Made(Severity.Warning).AsNotKnown()])]).Findings.Length
        );
        Assert.Equal(2, Verdict.Together([Verdict.Of([one]), Verdict.Of([Made(Severity.Note)])]).Findings.Length);
    }

    private static Finding Made(Severity severity) =>
        Finding.Of(FindingCode.Custom, severity, "part", "what", Shown.Volts(3), Shown.Volts(2), Rule, "Do it.");
}
