using System.Text.Json;
using System.Text.RegularExpressions;

namespace FuelMath.Mutation;

/// <summary>A mutant as dotnet-stryker reports it.</summary>
internal sealed record Mutant(int Id, string File, int Line, string Kind, string Original, string Replacement)
{
    private const int Shown = 110;

    /// <summary>
    /// Kinds of changes that are not run: tests hold the data of a text, not its words; and of a block left out whole, its
    /// statements left out one by one tell more.
    /// </summary>
    private static readonly string[] LeftAlone = ["string", "regex", "block"];

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
                string kind = mutant.GetProperty("mutatorName").GetString()!;
                if (
                    mutant.GetProperty("status").GetString() is "CompileError"
                    || LeftAlone.Any(k => kind.Contains(k, StringComparison.OrdinalIgnoreCase))
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
                        kind,
                        Cut(lines[line - 1]),
                        Cut(mutant.GetProperty("replacement").GetString()!)
                    )
                );
            }
        }

        return [.. mutants.OrderBy(m => m.Id)];
    }

    /// <summary>Place, kind, line of code and what a part of it becomes, divided by tabs, as survivors.tsv has them.</summary>
    public override string ToString() => $"{File}:{Line}\t{Kind}\t{Original}\t{Replacement}";

    private static string Cut(string text)
    {
        string line = Regex.Replace(text, @"\s+", " ").Trim();
        return line.Length > Shown ? line[..Shown] + "..." : line;
    }
}
