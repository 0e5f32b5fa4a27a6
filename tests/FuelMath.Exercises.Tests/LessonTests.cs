using System.Globalization;
using System.Reflection;

namespace FuelMath.Exercises.Tests;

/// <summary>
/// Worked example, sheet and answers of each lesson in the docs are what the library writes today.
/// <c>WRITE_LESSONS=1</c> writes them again.
/// </summary>
public sealed class LessonTests
{
    public static TheoryData<string, string[]> All
    {
        get
        {
            var all = new TheoryData<string, string[]>();
            foreach ((string name, string[] templates) in Lessons.Templates)
            {
                all.Add(name, templates);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Lesson_ShowsWhatTheLibraryWrites(string name, string[] templates)
    {
        ExerciseTemplate[] all = [.. templates.Select(t => ExerciseTemplates.All.Single(a => a.Name == t))];
        ExerciseSheet sheet = ExerciseSheet.Draw($"Sheet: {name}", all, Math.Max(4, all.Length), Lessons.Seed);
        Exercise first = all[0].Draw(Lessons.Seed);
        string working = first.Working.ToMarkdown(CultureInfo.InvariantCulture);
        Same($"{name}-example", $"{first.Statement}\n\n{working}\nThe answer: **{first.Answer}**.\n");
        Same($"{name}-sheet", Inner(sheet.ToMarkdown()));
        Same($"{name}-answers", Inner(sheet.ToMarkdownAnswers()));
    }

    [Fact]
    public void Lessons_UseEveryTemplate() =>
        Assert.Equal(
            ExerciseTemplates.All.Select(t => t.Name).Order(),
            Lessons.Templates.Values.SelectMany(t => t).Order()
        );

    /// <summary>One level lower, since the page has a heading of its own.</summary>
    private static string Inner(string markdown) =>
        string.Join('\n', markdown.Split('\n').Select(l => l.StartsWith('#') ? $"##{l}"[1..] : l));

    private static void Same(string name, string text)
    {
        string root = typeof(LessonTests)
            .Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
            .Single(a => a.Key == "RepoRoot")
            .Value!;
        string path = Path.Combine(root, "docs", "includes", "teach", $"{name}.md");
        if (Environment.GetEnvironmentVariable("WRITE_LESSONS") is not null)
        {
            File.WriteAllText(path, text);
        }

        Assert.Equal(File.ReadAllText(path), text);
    }
}
