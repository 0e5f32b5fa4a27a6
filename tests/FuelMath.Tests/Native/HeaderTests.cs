using System.Text.Json;
using System.Text.RegularExpressions;
using FuelMath.Formulas;
using FuelMath.Native;
using FuelMath.Tests.House;

namespace FuelMath.Tests.Native;

/// <summary>What is made from the catalog for other languages. The library itself is tested from C, Python and Node: tests/native.</summary>
public sealed class HeaderTests
{
    private const string Folder = "src/FuelMath.Native/include/";

    /// <summary>With WRITE_NATIVE set, the files are written first: that is how they are brought up to date.</summary>
    [Fact]
    public void Files_AreThoseOfTheCatalog()
    {
        (string File, string Text)[] made =
        [
            ("fuelmath.h", HeaderText.Header(FormulaCatalog.All)),
            ("wizard.json", HeaderText.Wizard(FormulaCatalog.All)),
        ];
        if (Environment.GetEnvironmentVariable("WRITE_NATIVE") is not null)
        {
            foreach ((string file, string text) in made)
            {
                File.WriteAllText(Path.Combine(Repository.Root, Folder + file), text);
            }
        }

        Assert.All(made, m => Assert.Equal(m.Text, Repository.Read(Folder + m.File)));
    }

    [Fact]
    public void Wizard_IsJsonThatHoldsEveryFormula()
    {
        using var wizard = JsonDocument.Parse(HeaderText.Wizard(FormulaCatalog.All));

        Assert.Equal(
            FormulaCatalog.All.Select(f => (f.Name, f.Arguments.Length)),
            wizard
                .RootElement.EnumerateArray()
                .Select(f =>
                    (f.GetProperty("formula").GetString()!, f.GetProperty("arguments").EnumerateObject().Count())
                )
        );
        JsonElement carried = wizard
            .RootElement.EnumerateArray()
            .Single(f => f.GetProperty("formula").GetString() == "Orifice.CarriedVolumeFlow");
        Assert.Equal("FUELMATH_ORIFICE_CARRIED_VOLUME_FLOW", carried.GetProperty("name").GetString());
        Assert.EndsWith(", in cm3/min", carried.GetProperty("description").GetString(), StringComparison.Ordinal);
    }

    /// <summary>A place for each formula in order, and names that C takes and that differ.</summary>
    [Fact]
    public void Header_NamesEachFormulaOnceAtItsPlace()
    {
        string[] names =
        [
            .. Regex
                .Matches(
                    HeaderText.Header(FormulaCatalog.All),
                    @"^    (FUELMATH_[A-Z0-9_]+) = (\d+),$",
                    RegexOptions.Multiline
                )
                .Skip(1)
                .Select(m => m.Value.Trim()),
        ];
        string[] formulas = [.. names.Where(n => n.Count(c => c == '_') > 1).TakeLast(FormulaCatalog.All.Length)];

        Assert.Equal(FormulaCatalog.All.Length, formulas.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(
            Enumerable.Range(0, FormulaCatalog.All.Length),
            formulas.Select(n =>
                int.Parse(n.Split(" = ")[1].TrimEnd(','), System.Globalization.CultureInfo.InvariantCulture)
            )
        );
    }
}
