using System.Text.Json;
using FuelMath.Formulas;
using FuelMath.Tests.House;

namespace FuelMath.Tests.Formulas;

/// <summary>What is made from the catalog and kept beside the code is that of the library.</summary>
/// <remarks>With the environment variable WRITE_CATALOG set the files are written first: that is how they are brought up to date.</remarks>
public sealed class FormulaPagesTests
{
    private const string CatalogFile = "src/FuelMath/catalog.json";

    private static bool Writes => Environment.GetEnvironmentVariable("WRITE_CATALOG") is not null;

    [Fact]
    public void Pages_AreThoseOfTheCatalog()
    {
        (string Path, string Text)[] pages = [.. FormulaPages.All()];
        if (Writes)
        {
            foreach ((string path, string text) in pages)
            {
                string full = Path.Combine(Repository.Root, "docs", path);
                Directory.CreateDirectory(Path.GetDirectoryName(full)!);
                File.WriteAllText(full, text);
            }
        }

        Offenders.None(
            pages.Where(p => !Exists(p.Path) || Repository.Read($"docs/{p.Path}") != p.Text).Select(p => p.Path)
        );
    }

    /// <summary>A formula that is gone takes its page with it.</summary>
    [Fact]
    public void NoPage_IsLeftOver()
    {
        HashSet<string> made = [.. FormulaPages.All().Select(p => $"docs/{p.Path}")];

        Offenders.None(
            new[] { "docs/formulas", "docs/images/formulas" }
                .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Repository.Root, folder)))
                .Select(f => Path.GetRelativePath(Repository.Root, f).Replace('\\', '/'))
                .Where(f => !made.Contains(f))
        );
    }

    /// <summary>The result and its slope are drawn over a good part of the usual range.</summary>
    [Fact]
    public void EveryChart_HasTwoLines() =>
        Offenders.None(
            FormulaCatalog
                .All.Select(f => (f.Name, Lines: FormulaChart.Draw(f).Split("<polyline points=\"").Skip(1).ToArray()))
                .Where(f => f.Lines.Length != 2 || f.Lines.Any(l => l.Split('"')[0].Split(' ').Length < 50))
                .Select(f => f.Name)
        );

    [Fact]
    public void CatalogFile_IsThatOfTheLibrary()
    {
        string json = FormulaCatalog.ToJson();
        if (Writes)
        {
            File.WriteAllText(Path.Combine(Repository.Root, CatalogFile), json);
        }

        Assert.Equal(json, Repository.Read(CatalogFile));
    }

    /// <summary>The file says enough to convert and to hold a range without this library.</summary>
    [Fact]
    public void CatalogFile_HoldsRangesUnitsAndExamples()
    {
        using var document = JsonDocument.Parse(Repository.Read(CatalogFile));

        JsonElement[] formulas = [.. document.RootElement.GetProperty("formulas").EnumerateArray()];

        Assert.Equal(FormulaCatalog.All.Length, formulas.Length);
        Assert.All(
            formulas,
            formula =>
            {
                FormulaInfo info = FormulaCatalog.Named(formula.GetProperty("name").GetString()!);
                JsonElement[] arguments = [.. formula.GetProperty("arguments").EnumerateArray()];
                Assert.Equal(info.Arguments.Length, arguments.Length);
                for (int i = 0; i < arguments.Length; i++)
                {
                    FormulaInfo.Argument argument = info.Arguments[i];
                    JsonElement unit = document
                        .RootElement.GetProperty("kinds")
                        .GetProperty(arguments[i].GetProperty("kind").GetString()!)
                        .GetProperty(arguments[i].GetProperty("customaryUnit").GetString()!);
                    double si =
                        (2.5 + unit.GetProperty("offset").GetDouble())
                        * unit.GetProperty("numerator").GetDouble()
                        / unit.GetProperty("denominator").GetDouble();
                    Assert.Equal(argument.Quantity.ToSi(2.5, argument.Quantity.CustomaryUnit), si);
                    Assert.Equal(argument.Minimum, arguments[i].GetProperty("minimum").GetDouble());
                }

                Assert.Equal(info.Example.Expected, formula.GetProperty("example").GetProperty("expected").GetDouble());
            }
        );
    }

    private static bool Exists(string path) => File.Exists(Path.Combine(Repository.Root, "docs", path));
}
