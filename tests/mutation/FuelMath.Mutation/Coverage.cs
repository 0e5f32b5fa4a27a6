using System.Globalization;

namespace FuelMath.Mutation;

/// <summary>Which tests reach which mutants, kept in a file beside the mutated library, so that it is found out once.</summary>
internal sealed class Coverage
{
    private readonly Dictionary<int, List<Test>> reaching = [];

    private Coverage() { }

    /// <summary>A test, its class, how long it takes, and whether it belongs to the room.</summary>
    internal sealed record Test(string Id, string Class, double Milliseconds, bool IsOwn);

    /// <summary>The mutants that run while something is made once and kept: any test may notice them.</summary>
    internal HashSet<int> Kept { get; } = [];

    /// <summary>The tests that fail without a mutant, and so tell nothing.</summary>
    internal HashSet<string> Unused { get; } = [];

    /// <summary>The tests that reach a mutant, the quickest first.</summary>
    internal IReadOnlyList<Test> Of(int mutant) => reaching.GetValueOrDefault(mutant) ?? [];

    /// <summary>Reads what is known, and finds out what is not.</summary>
    internal static Coverage Read(string tests, string filter, string own)
    {
        string file = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(tests))!, "coverage.txt");
        string known = Path.GetTempFileName();
        string[] lines = File.Exists(file) ? File.ReadAllLines(file) : [];
        File.WriteAllLines(known, lines.Select(Child.Words).Where(w => w.Length > 2).Select(w => w[1]));
        using (StreamWriter writer = File.AppendText(file))
        {
            ChildProcess.Read(
                line =>
                {
                    if (line.StartsWith(Child.Mark, StringComparison.Ordinal))
                    {
                        writer.WriteLine(line);
                        writer.Flush();
                    }
                },
                "cover",
                tests,
                filter,
                known
            );
        }

        File.Delete(known);
        var coverage = new Coverage();
        string[] room = own.Split('|');
        foreach (string[] words in File.ReadLines(file).Select(Child.Words))
        {
            coverage.Take(words, filter.Split('|'), room);
        }

        foreach (List<Test> list in coverage.reaching.Values)
        {
            list.Sort((one, other) => one.Milliseconds.CompareTo(other.Milliseconds));
        }

        return coverage;
    }

    private void Take(string[] words, string[] wanted, string[] room)
    {
        switch (words)
        {
            case ["kept", string mutants]:
                Kept.UnionWith(Numbers(mutants));
                break;
            case ["test", string id, string type, string time, string mutants] when IsOf(type, wanted):
                var test = new Test(id, type, double.Parse(time, CultureInfo.InvariantCulture), IsOf(type, room));
                foreach (int mutant in Numbers(mutants))
                {
                    if (!reaching.TryGetValue(mutant, out List<Test>? list))
                    {
                        reaching[mutant] = list = [];
                    }

                    list.Add(test);
                }

                break;
            case ["bad", string id, _, _, string name]:
                Unused.Add(id);
                Console.Error.WriteLine($"not used, because it fails without a mutant: {name}");
                break;
        }
    }

    private static bool IsOf(string type, string[] names) =>
        names.Any(n => $"{type}.".Contains(n, StringComparison.Ordinal));

    private static IEnumerable<int> Numbers(string list) =>
        list.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => int.Parse(n, CultureInfo.InvariantCulture));
}
