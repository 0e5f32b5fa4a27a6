using System.Globalization;
using System.Net;
using System.Text;

namespace FuelMath.Exercises;

/// <summary>Exercises in the GIFT format: one question in each paragraph, without blank lines inside.</summary>
internal static class GiftSheet
{
    internal static string Exercises(ExerciseSheet sheet)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"// {Plain(sheet.Title)}, sheet {sheet.Seed}\n\n");
        for (int i = 0; i < sheet.Exercises.Length; i++)
        {
            Exercise exercise = sheet.Exercises[i];
            text.Append(CultureInfo.InvariantCulture, $"::{i + 1}. {Plain(exercise.Template.Title)}::[html]");
            if (exercise.Template.Caution.Length > 0)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"<p><strong>Caution.</strong> {Html(exercise.Template.Caution)}</p>"
                );
            }

            text.Append(
                CultureInfo.InvariantCulture,
                $"<p>{Html(exercise.Statement)} Enter the number alone.</p> {{#\n"
            );
            text.Append(CultureInfo.InvariantCulture, $"\t=%100%{Range(exercise.Results[0])}#Right.\n");
            for (int way = 0; way < exercise.Template.Mistakes.Length; way++)
            {
                string told = Html(ExerciseMarker.Tell(exercise.Template.Mistakes[way]));
                text.Append(CultureInfo.InvariantCulture, $"\t=%0%{Range(exercise.Results[way + 1])}#{told}\n");
            }

            string working = exercise.Working.ToText(CultureInfo.InvariantCulture).TrimEnd('\n');
            string lines = string.Join("<br>", working.Split('\n').Select(l => Html(l.TrimStart())));
            text.Append(CultureInfo.InvariantCulture, $"\t####<p>{lines}</p>\n}}\n\n");
        }

        return text.ToString();
    }

    /// <summary>A number and its tolerance, without exponents, which not every reader accepts.</summary>
    private static string Range(ExerciseResult result) =>
        $"{SignificantDigits.Write(result.Value, 9)}:{SignificantDigits.Write(result.Tolerance, 4)}";

    private static string Html(string text) => Plain(WebUtility.HtmlEncode(text));

    /// <summary>Escapes the special characters of GIFT.</summary>
    private static string Plain(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            if (c is '~' or '=' or '#' or '{' or '}' or ':' or '\\')
            {
                escaped.Append('\\');
            }

            escaped.Append(c);
        }

        return escaped.ToString();
    }
}
