using System.Globalization;
using System.Net;
using System.Text;

namespace FuelMath.Exercises;

/// <summary>Sheets as pages to print, each in one file without others.</summary>
internal static class HtmlSheet
{
    private const string Style =
        "body{font:11pt/1.45 sans-serif;max-width:46em;margin:2em auto;padding:0 1em}"
        + "section{break-inside:avoid;margin:0 0 1.5em}h1{font-size:1.4em}h2{font-size:1.05em;margin:0}"
        + ".caution{border:2px solid;padding:.5em .8em;margin:0 0 .8em}.space{height:7em;border-bottom:1px dotted}"
        + "pre{white-space:pre-wrap;font-size:.85em}td,th{text-align:left;padding:.1em 1em .1em 0}footer{color:#555}";

    internal static string Exercises(ExerciseSheet sheet)
    {
        StringBuilder page = Begin(sheet.Title);
        foreach (string caution in sheet.Cautions)
        {
            Add(page, "<p class=\"caution\"><strong>Caution.</strong> ", caution, "</p>\n");
        }

        for (int i = 0; i < sheet.Exercises.Length; i++)
        {
            Heading(page, i, sheet.Exercises[i]);
            Add(page, "<p>", sheet.Exercises[i].Statement, "</p>\n<div class=\"space\"></div>\n</section>\n");
        }

        return End(page, sheet);
    }

    internal static string Answers(ExerciseSheet sheet)
    {
        StringBuilder page = Begin($"{sheet.Title}: answers");
        for (int i = 0; i < sheet.Exercises.Length; i++)
        {
            Exercise exercise = sheet.Exercises[i];
            Heading(page, i, exercise);
            Add(page, "<p><strong>", exercise.Answer, "</strong> (accepted within ");
            Add(page, "", MarkdownSheet.Tolerance(exercise), ")</p>\n");
            Add(page, "<pre>", exercise.Working.ToText(CultureInfo.InvariantCulture), "</pre>\n");
            page.Append("<table>\n<tr><th>Wrong way</th><th>Leads to</th></tr>\n");
            for (int way = 0; way < exercise.Template.Mistakes.Length; way++)
            {
                Add(page, "<tr><td>", exercise.Template.Mistakes[way].Name, "</td>");
                Add(page, "<td>", exercise.Template.Answer.Write(exercise.MistakenValues[way]), "</td></tr>\n");
            }

            page.Append("</table>\n</section>\n");
        }

        return End(page, sheet);
    }

    private static StringBuilder Begin(string title)
    {
        var page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        Add(page, "<title>", title, "</title>\n");
        page.Append("<style>").Append(Style).Append("</style>\n</head>\n<body>\n");
        Add(page, "<h1>", title, "</h1>\n");
        return page;
    }

    private static string End(StringBuilder page, ExerciseSheet sheet) =>
        page.Append(CultureInfo.InvariantCulture, $"<footer>Sheet {sheet.Seed}</footer>\n</body>\n</html>\n")
            .ToString();

    private static void Heading(StringBuilder page, int index, Exercise exercise)
    {
        page.Append(CultureInfo.InvariantCulture, $"<section>\n<h2>{index + 1}. ");
        Add(page, "", exercise.Template.Title, "</h2>\n");
    }

    private static void Add(StringBuilder page, string before, string text, string after = "") =>
        page.Append(before).Append(WebUtility.HtmlEncode(text)).Append(after);
}
