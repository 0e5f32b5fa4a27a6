using System.Text.Json;
using System.Text.RegularExpressions;

namespace FuelMath.Mutation;

/// <summary>A mutant as dotnet-stryker reports it.</summary>
internal sealed record Mutant(int Id, string File, int Line, string Kind, string Original, string Replacement)
{
    private const int Shown = 110;

    /// <summary>The mutants that compile, of the files that a pattern matches.</summary>
    internal static Mutant[] Read(string report, string files)
    {
        var pattern = new Regex(files);
        using var document = JsonDocument.Parse(System.IO.File.ReadAllText(report));
        var mutants = new List<Mutant>();
        foreach (JsonProperty file in document.RootElement.GetProperty("files").EnumerateObject())
        {
            string path = file.Name.Replace('\\', '/');
            string name = path[(path.LastIndexOf("/FuelMath/", StringComparison.Ordinal) + "/FuelMath/".Length)..];
            if (!pattern.IsMatch(name))
            {
                continue;
            }

            string[] lines = file.Value.GetProperty("source").GetString()!.Split('\n');
            foreach (JsonElement mutant in file.Value.GetProperty("mutants").EnumerateArray())
            {
                // Of a block left out whole, its statements left out one by one tell more.
                if (
                    mutant.GetProperty("status").GetString() is "CompileError" or "Ignored"
                    || mutant.GetProperty("mutatorName").GetString()!.StartsWith("Block", StringComparison.Ordinal)
                )
                {
                    continue;
                }

                JsonElement place = mutant.GetProperty("location");
                int line = place.GetProperty("start").GetProperty("line").GetInt32();
                mutants.Add(
                    new(
                        int.Parse(
                            mutant.GetProperty("id").GetString()!,
                            System.Globalization.CultureInfo.InvariantCulture
                        ),
                        name,
                        line,
                        mutant.GetProperty("mutatorName").GetString()!,
                        Cut(lines[line - 1]),
                        Cut(mutant.GetProperty("replacement").GetString()!)
                    )
                );
            }
        }

        return [.. mutants.OrderBy(m => m.Id)];
    }

    public override string ToString() => $"{File}:{Line} {Kind}: {Original} => {Replacement}";

    private static string Cut(string text)
    {
        string line = Regex.Replace(text, @"\s+", " ").Trim();
        return line.Length > Shown ? line[..Shown] + "..." : line;
    }
}
