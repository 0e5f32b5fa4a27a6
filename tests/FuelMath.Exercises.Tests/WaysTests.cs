using System.Globalization;

namespace FuelMath.Exercises.Tests;

/// <summary>The right answer and each wrong one of a case worked out apart from this library.</summary>
public sealed class WaysTests
{
    public static TheoryData<string, string, string> Cases()
    {
        var cases = new TheoryData<string, string, string>();
        foreach (string[] row in Rows())
        {
            cases.Add(row[0], row[1], row[2]);
        }

        return cases;
    }

    /// <summary>[Definition] of each law, by a script of a few lines with numbers in customary units; roots by bracketing.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    [Trait("Source", "Definition")]
    public void EachWay_GivesWhatItGivesByHand(string name, string numbers, string answers)
    {
        ExerciseTemplate template = ExerciseTemplates.All.Single(t => t.Name == name);
        decimal[] given = [.. numbers.Split(' ').Select(n => decimal.Parse(n, CultureInfo.InvariantCulture))];
        double[] expected = [.. answers.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        ExerciseResult[] results = [.. template.Results(given)];
        Assert.Equal(template.Mistakes.Length + 1, expected.Length);
        Assert.Equal(expected.Length, results.Length);
        for (int way = 0; way < expected.Length; way++)
        {
            Assert.True(
                Math.Abs((results[way].Value / expected[way]) - 1) < 1e-9,
                $"{name}, way {way}: {results[way].Value:R} for {expected[way]:R}"
            );
        }
    }

    [Fact]
    public void EveryTemplate_HasACase() =>
        Assert.Equal(ExerciseTemplates.All.Select(t => t.Name).Order(), Rows().Select(r => r[0]).Order());

    private static IEnumerable<string[]> Rows() =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "ways.csv"))
            .Where(l => l[0] != '#')
            .Skip(1)
            .Select(l => l.Split(';'));
}
