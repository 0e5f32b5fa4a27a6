using System.Globalization;
using System.Text;

namespace FuelMath.Exercises;

/// <summary>Sheets as Markdown.</summary>
internal static class MarkdownSheet
{
    internal static string Exercises(ExerciseSheet sheet)
    {
        var text = new StringBuilder();
        Line(text, $"# {sheet.Title}\n");
        foreach (string caution in sheet.Cautions)
        {
            Line(text, $"> **Caution.** {caution}\n");
        }

        for (int i = 0; i < sheet.Exercises.Length; i++)
        {
            Line(text, $"## {i + 1}. {sheet.Exercises[i].Template.Title}\n");
            Line(text, $"{sheet.Exercises[i].Statement}\n");
        }

        Line(text, $"Sheet {sheet.Seed}");
        return text.ToString();
    }

    internal static string Answers(ExerciseSheet sheet)
    {
        var text = new StringBuilder();
        Line(text, $"# {sheet.Title}: answers\n");
        for (int i = 0; i < sheet.Exercises.Length; i++)
        {
            Exercise exercise = sheet.Exercises[i];
            Line(text, $"## {i + 1}. {exercise.Template.Title}\n");
            Line(text, $"**{exercise.Answer}** (accepted within {Tolerance(exercise)})\n");
            Line(text, $"{exercise.Working.ToMarkdown(CultureInfo.InvariantCulture)}");
            Line(text, $"| Wrong way | Leads to |\n|---|---|");
            for (int way = 0; way < exercise.Template.Mistakes.Length; way++)
            {
                string value = exercise.Template.Answer.Write(exercise.MistakenValues[way]);
                Line(text, $"| {exercise.Template.Mistakes[way].Name} | {value} |");
            }

            Line(text, $"");
        }

        Line(text, $"Sheet {sheet.Seed}");
        return text.ToString();
    }

    internal static string Tolerance(Exercise exercise) =>
        exercise.Template.Answer.WithUnit(SignificantDigits.Write(exercise.Tolerance, 2));

    private static void Line(StringBuilder text, FormattableString line) =>
        text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
