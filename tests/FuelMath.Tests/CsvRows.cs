using System.Globalization;

namespace FuelMath.Tests;

/// <summary>Rows of a data file beside the tests: comments begin with #, the first other line names the columns.</summary>
internal static class CsvRows
{
    internal static IReadOnlyList<Dictionary<string, string>> Read(string path)
    {
        string[] lines =
        [
            .. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, path)).Where(l => l.Length > 0 && l[0] != '#'),
        ];
        string[] columns = lines[0].Split(',');
        return
        [
            .. lines
                .Skip(1)
                .Select(l => columns.Zip(l.Split(','), KeyValuePair.Create))
                .Select(pairs => new Dictionary<string, string>(pairs)),
        ];
    }

    internal static double Number(this Dictionary<string, string> row, string column) =>
        double.Parse(row[column], CultureInfo.InvariantCulture);
}
