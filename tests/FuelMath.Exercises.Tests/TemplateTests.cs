using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Exercises.Tests;

public sealed class TemplateTests
{
    /// <summary>
    /// Pinned draws: a change of generator, grid or acceptance changes sheets that teachers hold, and asks for a new version
    /// of the template.
    /// </summary>
    [Theory]
    [InlineData("gauge-and-absolute", "40.0 29 95.5")]
    [InlineData("flow-over-pressure", "600 3.5 4.5 1.40 0.90")]
    [InlineData("flow-over-density", "750 815 770")]
    [InlineData("dead-time-and-duty", "10.0 6.0 3000 1.00")]
    [InlineData("hose-loss-turbulent", "320 7.0 1.5 0.015 730 0.65")]
    [InlineData("hose-loss-laminar", "0.85 3.0 1.6 860 140")]
    [InlineData("regulator-reference", "3.3 2.05 1.00")]
    [InlineData("pump-meets-system", "260 2.5 110 6.5 3.2 0.30 100")]
    [InlineData("wire-drop", "7.5 6.0 5.3 75")]
    [InlineData("blend-ratio", "45 790 8.95 730 14.4")]
    [InlineData("premix-by-ratio", "7.0 20")]
    [InlineData("premix-by-percent", "3.00 3.5")]
    [InlineData("lambda-from-belief", "0.94 650 3.2 620 2.0 3.0 0.10")]
    [InlineData("pressure-decay-leak", "380 1050 5.5 0.92 10 3.6 2.7")]
    public void DrawFromASeed_StaysTheSame(string name, string numbers) =>
        Assert.Equal(
            numbers,
            string.Join(
                ' ',
                ExerciseTemplates
                    .All.Single(t => t.Name == name)
                    .Draw(2026)
                    .Numbers.Select(n => n.ToString(CultureInfo.InvariantCulture))
            )
        );

    [Fact]
    public void EveryTemplate_HasItsPropertyOfAll() =>
        Assert.Equal(
            typeof(ExerciseTemplates).GetProperties().Length - 1,
            ExerciseTemplates.All.Select(t => t.Name).Distinct().Count()
        );

    [Fact]
    public void ATemplateWhoseWrongWaysLeadToTheAnswer_CannotBeDrawn() =>
        Assert.Throws<RefusedOperationException>(() => Make("{x}", 3, GivenGrid.From(1, 5, 1)).Draw(1));

    [Fact]
    public void Of_RefusesAGivenThatTheStatementLacks() =>
        Refused<RefusedArgumentException>(
            RefusalCode.Missing,
            "statement",
            null,
            () => Make("{y}", 3, GivenGrid.From(1, 5, 1))
        );

    [Fact]
    public void Of_RefusesFewerThanThreeMistakes() =>
        Refused<RefusedValueException>(RefusalCode.Count, "mistakes", 2, () => Make("{x}", 2, GivenGrid.From(1, 5, 1)));

    [Fact]
    public void Grid_HoldsItsNumbersAsATeacherWritesThem() =>
        Assert.Equal(
            ["12.0", "12.5", "13.0"],
            GivenGrid.From(12.0m, 13.0m, 0.5m).Numbers.Select(n => n.ToString(CultureInfo.InvariantCulture))
        );

    [Fact]
    public void Grid_RefusesWhatIsNoGrid()
    {
        Refused<RefusedValueException>(RefusalCode.OutOfRange, "step", 0, () => GivenGrid.From(1, 2, 0));
        Refused<RefusedValueException>(RefusalCode.Count, "high", 0, () => GivenGrid.From(2, 1, 1));
        Refused<RefusedValueException>(RefusalCode.Count, "high", 10_001, () => GivenGrid.From(0, 10_000, 1));
        Refused<RefusedValueException>(RefusalCode.NotAsWanted, "high", 2, () => GivenGrid.From(1, 2, 0.3m));
        const decimal Most = decimal.MaxValue;
        Refused<RefusedValueException>(
            RefusalCode.OutOfRange,
            "high",
            (double)Most,
            () => GivenGrid.From(-Most, Most, Most / 4)
        );
        foreach (
            (decimal low, decimal high, decimal step) in new[] { (0m, Most, 1e-28m), (Most, -Most, 1m), (0m, Most, 1m) }
        )
        {
            Assert.Equal(
                RefusalCode.Count,
                Refusal.Of(Assert.Throws<RefusedValueException>(() => GivenGrid.From(low, high, step)))!.Code
            );
        }

        Refused<RefusedArgumentException>(RefusalCode.Duplicate, "numbers", null, () => GivenGrid.Of(1, 1));
        Refused<RefusedArgumentException>(RefusalCode.Count, "numbers", null, () => GivenGrid.Of(1));
        Refused<RefusedArgumentException>(RefusalCode.Count, "numbers", null, () => GivenGrid.Of());
    }

    [Fact]
    public void Given_RefusesAUnitOfAnotherKind() =>
        Assert.ThrowsAny<ArgumentException>(() =>
            ExerciseGiven.Of("V", "volume", QuantityKinds.Volume, "bar", GivenGrid.From(1, 2, 1))
        );

    [Fact]
    public void Answer_RefusesDigitsOutsideTwoToSix()
    {
        foreach (int digits in new[] { 1, 7 })
        {
            Refusal refusal = Refused<RefusedValueException>(
                RefusalCode.OutOfRange,
                "digits",
                digits,
                () => ExerciseAnswer.Number(Symbols.Lambda, digits)
            );
            Assert.Equal((2, 6), (refusal.Minimum, refusal.Maximum));
        }
    }

    [Fact]
    public void Draw_RefusesANullAmongTheTemplates() =>
        Refused<RefusedArgumentException>(
            RefusalCode.Null,
            "templates",
            null,
            () => ExerciseSheet.Draw("sheet", [ExerciseTemplates.All[0], null!], 3, 1)
        );

    private static Refusal Refused<TException>(RefusalCode code, string what, double? value, Func<object> call)
        where TException : Exception
    {
        Refusal refusal = Refusal.Of(Assert.Throws<TException>(call))!;
        Assert.Equal((code, what, value), (refusal.Code, refusal.What, refusal.Value));
        return refusal;
    }

    [Theory]
    [InlineData(822.66, 4, "822.7")]
    [InlineData(0.012345, 3, "0.0123")]
    [InlineData(123456, 3, "123000")]
    [InlineData(-9.996, 3, "-10.00")]
    [InlineData(0, 3, "0")]
    public void SignificantDigits_AreWrittenWithoutAnExponent(double value, int digits, string text) =>
        Assert.Equal(text, SignificantDigits.Write(value, digits));

    private static ExerciseTemplate Make(string statement, int mistakes, GivenGrid grid) =>
        ExerciseTemplate.Of(
            default(Same),
            "same",
            1,
            "All the same",
            statement,
            "",
            [ExerciseGiven.Number("x", "a number", grid)],
            ExerciseAnswer.Number(Symbols.Lambda, 3),
            [.. Enumerable.Range(1, mistakes).Select(i => new ExerciseMistake($"way {i}", "It leads to the answer."))]
        );

    private readonly struct Same : IExerciseWays
    {
        public T At<T>(int way, ReadOnlySpan<T> givens)
            where T : struct, IScalar<T> => givens[0];
    }
}
