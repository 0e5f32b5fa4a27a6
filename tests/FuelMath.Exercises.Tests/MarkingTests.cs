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

    /// <summary>Rail as it stands is the rated pressure: taking the rail for the difference, or leaving the rating as it is, leads to one number.</summary>
    [Fact]
    public void TwoMistakesThatFit_AreBothTold()
    {
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

    /// <summary>
    /// By hand, 888.444 cm3/min with dQ/Q = dQ0/Q0 + (ddp - dp0/dp0)/2: half a unit of the fourth digit is 0.05; 800 cm3/min
    /// is 1.3333e-5 m3/s, rounded by 5e-10; 3 bar by 5 Pa, 4.5 bar by 5 Pa, 1.8 bar by 5 Pa, 1 bar by 5 Pa.
    /// </summary>
    [Fact]
    public void Tolerance_IsHalfTheLastDigitAndTheRoundingOfTheGivens()
    {
        const double q = 888.444333277743;
        double byHand = 0.05 + (q * ((5e-10 / (800 / 6e7)) + (5 / 3e5 / 2) + (3 * 5 / 3.7e5 / 2)));
        Assert.Equal(byHand, Flow.Tolerance, 1e-9);
    }

    [Fact]
    public void Digits_OfAPureNumber_NeedNoUnit() =>
        Assert.Equal(
            ExerciseVerdict.Right,
            Make(ExerciseTemplates.BlendRatio, 85, 789, 9.00m, 745, 14.6m).Mark("9.7998", null).Verdict
        );

    private static Exercise Make(ExerciseTemplate template, params decimal[] numbers) =>
        new(template, 0, 0, [.. numbers], template.Results(numbers));
}
