using System.Text.Json;
using System.Xml.Linq;

namespace FuelMath.Exercises.Tests;

public sealed class SheetTests
{
    private static readonly ExerciseSheet Sheet = ExerciseSheet.Draw(
        "Fuel delivery & more",
        ExerciseTemplates.All,
        2 * ExerciseTemplates.All.Length,
        2026
    );

    [Fact]
    public void Draw_TakesTheTemplatesInTurn_WithFreshNumbers()
    {
        Assert.Equal(ExerciseTemplates.All.Concat(ExerciseTemplates.All), Sheet.Exercises.Select(e => e.Template));
        Assert.Equal(Sheet.Exercises.Length, Sheet.Exercises.Select(e => e.Statement).Distinct().Count());
    }

    [Fact]
    public void TheSameSeed_GivesTheSameSheets()
    {
        ExerciseSheet again = ExerciseSheet.Draw(Sheet.Title, ExerciseTemplates.All, Sheet.Exercises.Length, 2026);
        Assert.Equal(Sheet.ToMarkdown(), again.ToMarkdown());
        Assert.Equal(Sheet.ToMarkdownAnswers(), again.ToMarkdownAnswers());
        Assert.Equal(Sheet.ToHtmlAnswers(), again.ToHtmlAnswers());
        Assert.Equal(Sheet.ToGift(), again.ToGift());
        Assert.NotEqual(Sheet.ToGift(), ExerciseSheet.Draw(Sheet.Title, ExerciseTemplates.All, 28, 2027).ToGift());
    }

    [Fact]
    public void LearnersSheet_HoldsEachStatementAndCaution_AndNoAnswer()
    {
        string html = XDocument.Parse(Sheet.ToHtml()).Root!.Value;
        string markdown = Sheet.ToMarkdown();
        Assert.Equal(4, Sheet.Cautions.Length);
        Assert.All(Sheet.Cautions, c => Assert.Contains(c, html, StringComparison.Ordinal));
        Assert.All(Sheet.Cautions, c => Assert.Contains(c, markdown, StringComparison.Ordinal));
        Assert.All(
            Sheet.Exercises,
            e =>
            {
                Assert.Contains(e.Statement, html, StringComparison.Ordinal);
                Assert.Contains(e.Statement, markdown, StringComparison.Ordinal);
                Assert.DoesNotContain(e.Answer, html, StringComparison.Ordinal);
                Assert.DoesNotContain(e.Answer, markdown, StringComparison.Ordinal);
            }
        );
    }

    [Fact]
    public void AnswerSheet_HoldsAnswersWorkingsAndMistakes()
    {
        string html = XDocument.Parse(Sheet.ToHtmlAnswers()).Root!.Value;
        string markdown = Sheet.ToMarkdownAnswers();
        Assert.All(
            Sheet.Exercises,
            e =>
            {
                Assert.Contains(e.Answer, html, StringComparison.Ordinal);
                Assert.Contains($"**{e.Answer}**", markdown, StringComparison.Ordinal);
                Assert.Contains(e.Working.Lines[^1].ToText(Invariant), html, StringComparison.Ordinal);
                Assert.All(e.Template.Mistakes, m => Assert.Contains(m.Name, markdown, StringComparison.Ordinal));
            }
        );
    }

    [Fact]
    public void Draw_RefusesNoTemplatesAndNoExercises()
    {
        Assert.Throws<RefusedArgumentException>(() => ExerciseSheet.Draw("x", [], 1, 1));
        Refusal refused = Refusal.Of(
            Assert.Throws<RefusedValueException>(() => ExerciseSheet.Draw("x", ExerciseTemplates.All, 0, 1))
        )!;
        Assert.Equal((0, 1, 1000, "count"), (refused.Value, refused.Minimum, refused.Maximum, refused.What));
        Assert.Throws<RefusedArgumentException>(() => ExerciseSheet.Draw(" ", ExerciseTemplates.All, 1, 1));
    }

    /// <summary>
    /// A question a paragraph: titles, ranges and feedback in the places of the format. <c>WRITE_GIFT=folder</c> writes a
    /// hundred sheets there with what a parser should find in them, for the script in tests/gift.
    /// </summary>
    [Fact]
    public void Gift_HoldsAQuestionForEachExercise()
    {
        string[] questions = Sheet.ToGift().Split("\n\n", StringSplitOptions.RemoveEmptyEntries)[1..];
        Assert.Equal(Sheet.Exercises.Length, questions.Length);
        for (int i = 0; i < questions.Length; i++)
        {
            string[] lines = questions[i].Split('\n');
            Assert.StartsWith($"::{i + 1}. ", lines[0], StringComparison.Ordinal);
            Assert.EndsWith("{#", lines[0], StringComparison.Ordinal);
            Assert.Equal(Sheet.Exercises[i].Template.Mistakes.Length + 4, lines.Length);
            Assert.StartsWith("\t=%100%", lines[1], StringComparison.Ordinal);
            Assert.StartsWith("\t####", lines[^2], StringComparison.Ordinal);
            Assert.Equal("}", lines[^1]);
        }

        if (Environment.GetEnvironmentVariable("WRITE_GIFT") is { } folder)
        {
            Write(Directory.CreateDirectory(folder).FullName);
        }
    }

    private static readonly IFormatProvider Invariant = System.Globalization.CultureInfo.InvariantCulture;

    private static void Write(string folder)
    {
        for (ulong seed = 0; seed < 100; seed++)
        {
            ExerciseSheet sheet = ExerciseSheet.Draw("To be parsed", ExerciseTemplates.All, 28, seed);
            File.WriteAllText(Path.Combine(folder, $"{seed}.gift"), sheet.ToGift());
            var expected = sheet.Exercises.Select(e => new
            {
                title = e.Template.Title,
                statement = e.Statement,
                values = e.Results.Select(r => r.Value),
                tolerances = e.Results.Select(r => r.Tolerance),
                reasons = e.Template.Mistakes.Select(m => m.Reason),
                working = e.Working.Lines[^1].ToText(Invariant),
            });
            File.WriteAllText(Path.Combine(folder, $"{seed}.json"), JsonSerializer.Serialize(expected));
        }
    }
}
