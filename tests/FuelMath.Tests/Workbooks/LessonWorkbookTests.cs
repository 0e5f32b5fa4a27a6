using System.Collections.Immutable;
using System.IO.Compression;
using FuelMath.Exercises;
using FuelMath.Exercises.Tests;
using FuelMath.Formulas;
using FuelMath.Tests.House;
using FuelMath.Workbooks;

namespace FuelMath.Tests.Workbooks;

/// <summary>
/// The live workbook of each lesson in the docs is what the library writes today, and gives the answers of its exercises.
/// <c>WRITE_LESSONS=1</c> writes them again.
/// </summary>
public sealed class LessonWorkbookTests
{
    private static readonly Dictionary<string, FormulaInfo.FormulaTopic> Topics = new()
    {
        ["pressure"] = FormulaInfo.FormulaTopic.Regulators,
        ["injectors"] = FormulaInfo.FormulaTopic.Injectors,
        ["lines"] = FormulaInfo.FormulaTopic.Hoses,
        ["pump"] = FormulaInfo.FormulaTopic.Pumps,
        ["wiring"] = FormulaInfo.FormulaTopic.Wiring,
        ["mixture"] = FormulaInfo.FormulaTopic.Mixing,
    };

    public static TheoryData<string> Names => [.. Lessons.Templates.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Workbook_OfALesson_IsWhatTheLibraryWrites(string name)
    {
        string path = Path.Combine(Repository.Root, "docs", "teach", "workbooks", $"{name}.xlsx");
        Workbook book = Book(name);
        if (Environment.GetEnvironmentVariable("WRITE_LESSONS") is not null)
        {
            book.WriteFile(path);
        }

        using var stream = new MemoryStream();
        book.Write(stream);
        stream.Position = 0;
        using FileStream file = File.OpenRead(path);
        Assert.Equal(Parts(stream), Parts(file));
    }

    /// <summary>The answer comes from the exercise's own reading in numbers, the cell from its reading as text.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Workbook_OfALesson_GivesTheAnswersOfItsExercises(string name)
    {
        Exercise[] exercises = Exercises(name);
        SheetEngine engine = WorkbookCells.Calculate(Book(name));
        var cells = WorkbookCells.Read(Book(name));
        foreach (Exercise exercise in exercises)
        {
            (string Sheet, string Cell) result = cells
                .Single(c =>
                    c.Key.Sheet == exercise.Template.Name
                    && c.Key.Cell.StartsWith('C')
                    && c.Value.EndsWith(",NA())", StringComparison.Ordinal)
                )
                .Key;
            Close.Within(1e-12, exercise.Value, engine.Number(result.Sheet, result.Cell));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_OfALesson_LinksItsWorkbook(string name) =>
        Assert.Contains($"(workbooks/{name}.xlsx)", Repository.Read($"docs/teach/{name}.md"), StringComparison.Ordinal);

    private static Exercise[] Exercises(string name) =>
        [.. Lessons.Templates[name].Select(t => ExerciseTemplates.All.Single(a => a.Name == t).Draw(Lessons.Seed))];

    private static Workbook Book(string name)
    {
        Exercise[] exercises = Exercises(name);
        return Workbook.FromFormulas(
            exercises.Select(e => e.ToFormula(Topics[name])),
            FormulaInfo.CallUnits.Customary,
            exercises.Select(e => ImmutableArray.CreateRange(e.Numbers, n => (double)n))
        );
    }

    /// <summary>What a file holds, without when it was made.</summary>
    private static SortedDictionary<string, string> Parts(Stream stream)
    {
        using var zip = new ZipArchive(stream, ZipArchiveMode.Read);
        var parts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (
            ZipArchiveEntry entry in zip.Entries.Where(e => e.FullName.StartsWith("xl/", StringComparison.Ordinal))
        )
        {
            using var reader = new StreamReader(entry.Open());
            parts[entry.FullName] = reader.ReadToEnd();
        }

        return parts;
    }
}
