using System.Globalization;

namespace FuelMath.Exercises.Tests;

public sealed class MarkingTests
{
    /// <summary>800 cm3/min at 3.0 bar, rail 4.5 bar gauge, manifold 1.80, ambient 1.00: 800 sqrt(3.7/3) = 888.4 cm3/min by hand.</summary>
    private static readonly Exercise Flow = Make(ExerciseTemplates.FlowOverPressure, 800, 3.0m, 4.5m, 1.80m, 1.00m);

    /// <summary>600 cm3/min of 820 kg/m3, then 750 kg/m3: 10 sqrt(0.82 x 0.75) = 7.842 g/s by hand.</summary>
    private static readonly Exercise Mass = Make(ExerciseTemplates.FlowOverDensity, 600, 820, 750);

    [Theory]
    [InlineData("888.4 cm3/min", ExerciseVerdict.Right)]
    [InlineData("888,4 cm3/min", ExerciseVerdict.Right)]
    [InlineData("888.4 cc/min", ExerciseVerdict.Right)]
    [InlineData("0.8884 L/min", ExerciseVerdict.Right)]
    [InlineData("53.31 lph", ExerciseVerdict.Right)]
    [InlineData("0.89 L/min", ExerciseVerdict.TooFewDigits)]
    [InlineData("890 cm3/min", ExerciseVerdict.TooFewDigits)]
    [InlineData("986.7 cm3/min", ExerciseVerdict.KnownMistake)]
    [InlineData("800 cm3/min", ExerciseVerdict.KnownMistake)]
    [InlineData("8.884 L/min", ExerciseVerdict.WrongFactor)]
    [InlineData("888.4 cm3/s", ExerciseVerdict.WrongFactor)]
    [InlineData("-888.4 cm3/min", ExerciseVerdict.WrongFactor)]
    [InlineData("850.0 cm3/min", ExerciseVerdict.Wrong)]
    [InlineData("888.4", ExerciseVerdict.MissingUnit)]
    [InlineData("11.1 g/s", ExerciseVerdict.WrongKind)]
    [InlineData("14 gph", ExerciseVerdict.NotRead)]
    [InlineData("about nine hundred", ExerciseVerdict.NotRead)]
    [InlineData("", ExerciseVerdict.NotRead)]
    public void Reply_IsToldWhatItIs(string reply, ExerciseVerdict verdict) =>
        Assert.Equal(verdict, Flow.Mark(reply, null).Verdict);

    [Fact]
    public void AMissingUnit_SaysWhichIsExpected()
    {
        string told = Flow.Mark("888.4", null).Text;
        Assert.Contains("volume flow", told, StringComparison.Ordinal);
        Assert.Contains("cm3/min", told, StringComparison.Ordinal);
    }

    [Fact]
    public void AVolumeFlowForAMassFlow_SaysWhichIsExpected()
    {
        ExerciseMarking marking = Mass.Mark("627.4 cm3/min", null);
        Assert.Equal(ExerciseVerdict.WrongKind, marking.Verdict);
        Assert.Contains("mass flow", marking.Text, StringComparison.Ordinal);
        Assert.Equal(ExerciseVerdict.Right, Mass.Mark("7.842 g/s", null).Verdict);
        Assert.Equal(ExerciseVerdict.Right, Mass.Mark("28.23 kg/hr", null).Verdict);
    }

    [Fact]
    public void AKnownMistake_IsNamedWithItsReason()
    {
        ExerciseMarking marking = Flow.Mark("986.7 cm3/min", null);
        Assert.Equal("square root forgotten", Assert.Single(marking.Mistakes).Name);
        Assert.Contains(marking.Mistakes[0].Reason, marking.Text, StringComparison.Ordinal);
        Assert.Equal((986.7 / 888.4) - 1, marking.Deviation!.Value, 1e-3);
    }

    /// <summary>At 2.8 bar the absolute manifold of 1.7 leaves 2.8: what is ambient counted twice leads where another mistake leads.</summary>
    [Fact]
    public void TwoMistakesThatFit_AreBothTold()
    {
        // Rail as it stands is 3.0 bar, the rated pressure: "rail taken for the difference" and "rating left as it is" agree.
        Exercise both = Make(ExerciseTemplates.FlowOverPressure, 800, 3.0m, 3.0m, 1.50m, 1.00m);
        ExerciseMarking marking = both.Mark("800.0 cm3/min", null);
        Assert.Equal(2, marking.Mistakes.Length);
        Assert.All(marking.Mistakes, m => Assert.Contains(m.Reason, marking.Text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("850.0 cm3/min", "4.3", "small")]
    [InlineData("930.0 cm3/min", "4.7", "great")]
    public void AnUnknownWay_SaysHowFarAndWhichWay(string reply, string percent, string direction)
    {
        ExerciseMarking marking = Flow.Mark(reply, null);
        Assert.Equal(ExerciseVerdict.Wrong, marking.Verdict);
        Assert.Contains(percent, marking.Text, StringComparison.Ordinal);
        Assert.Contains(direction, marking.Text, StringComparison.Ordinal);
    }

    /// <summary>Half a unit of the fourth digit, 0.05, and each given rounded to five: 0.005 of 800 and the like, by hand below 0.2.</summary>
    [Fact]
    public void Tolerance_FollowsFromTheDigits()
    {
        double dp = 0.05 * 888.4 / 800 / 1;
        Assert.InRange(Flow.Tolerance, 0.05, 0.05 + (4 * dp));
    }

    [Fact]
    public void Digits_OfAPureNumber_NeedNoUnit() =>
        Assert.Equal(
            ExerciseVerdict.Right,
            ExerciseTemplates.BlendRatio.Draw(1) is { } blend ? blend.Mark(blend.Answer, CultureInfo.InvariantCulture).Verdict : default
        );

    private static Exercise Make(ExerciseTemplate template, params decimal[] numbers) =>
        new(template, 0, 0, [.. numbers], template.Results(numbers));
}
