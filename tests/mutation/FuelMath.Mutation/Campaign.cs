using System.Diagnostics;
using System.Globalization;

namespace FuelMath.Mutation;

/// <summary>Runs mutants, all or a random sample, in child processes, and prints what came of them.</summary>
internal sealed class Campaign(string tests, string filter, Mutant[] all, int sample, int seed)
{
    /// <summary>How long a mutant may take beyond ten times what its tests take: a loop without end counts as killed.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(Number("MUTATION_PATIENCE") ?? 20);

    /// <summary>The most seconds of tests for a mutant, the quickest first; a mutant that they leave counts as survived.</summary>
    private static readonly double Cap = Number("MUTATION_CAP") ?? double.PositiveInfinity;

    private readonly Dictionary<int, List<(string Test, double Milliseconds)>> reaching = [];
    private readonly HashSet<int> killed = [];
    private readonly HashSet<int> endless = [];

    internal int Run()
    {
        Mutant[] chosen = Chosen();
        Console.WriteLine(Invariant($"{all.Length} mutants, {chosen.Length} of them drawn with seed {seed}"));
        Cover();
        int[] reached = [.. chosen.Select(m => m.Id).Where(reaching.ContainsKey)];
        var clock = Stopwatch.StartNew();
        Work(reached, together: true);
        // A mutant of what is made once shows only in a process of its own.
        Work([.. reached.Where(m => !killed.Contains(m))], together: false);
        Print(chosen, clock.Elapsed);
        return 0;
    }

    private Mutant[] Chosen()
    {
        if (Environment.GetEnvironmentVariable("MUTATION_ONLY") is { Length: > 0 } list)
        {
            HashSet<string> wanted = [.. list.Split(' ')];
            return [.. all.Where(m => wanted.Contains(m.Id.ToString(CultureInfo.InvariantCulture)))];
        }

        Mutant[] shuffled = [.. all];
        new Random(seed).Shuffle(shuffled);
        return [.. shuffled.Take(sample > 0 ? sample : all.Length).OrderBy(m => m.Id)];
    }

    private void Cover()
    {
        using Process child = Start("cover", tests, filter);
        while (child.StandardOutput.ReadLine() is { } line)
        {
            string[] words = Words(line);
            if (words is ["test", string id, string time, string mutants])
            {
                foreach (string mutant in mutants.Split(' '))
                {
                    int number = int.Parse(mutant, CultureInfo.InvariantCulture);
                    if (!reaching.TryGetValue(number, out List<(string, double)>? list))
                    {
                        reaching[number] = list = [];
                    }

                    list.Add((id, double.Parse(time, CultureInfo.InvariantCulture)));
                }
            }
            else if (words is ["bad", string name])
            {
                Console.WriteLine($"not used, because it fails without a mutant: {name}");
            }
        }

        child.WaitForExit();
        foreach ((int mutant, List<(string Test, double Milliseconds)> list) in reaching.ToArray())
        {
            double sum = 0;
            reaching[mutant] =
            [
                .. list.OrderBy(t => t.Milliseconds).TakeWhile(t => (sum += t.Milliseconds) <= 1e3 * Cap),
            ];
        }
    }

    private void Work(int[] mutants, bool together)
    {
        var left = new Queue<int>(mutants);
        while (left.Count > 0)
        {
            int[] batch = together ? [.. left] : [left.Peek()];
            string plan = Path.GetTempFileName();
            File.WriteAllLines(plan, [filter, .. batch.Select(Line)]);
            using Process child = Start("run", tests, plan);
            int running = -1;
            while (true)
            {
                TimeSpan wait =
                    Patience
                    + (
                        running < 0
                            ? TimeSpan.FromMinutes(10)
                            : TimeSpan.FromMilliseconds(10 * reaching[running].Sum(t => t.Milliseconds))
                    );
                Task<string?> read = child.StandardOutput.ReadLineAsync();
                string[] words = read.Wait(wait) ? Words(read.Result ?? "") : ["endless"];
                if (words is ["start", string id])
                {
                    running = int.Parse(id, CultureInfo.InvariantCulture);
                }
                else if (words is ["killed" or "survived", ..])
                {
                    _ = words[0] == "killed" && killed.Add(running);
                    left.Dequeue();
                    running = -1;
                    if (left.Count % 100 == 0)
                    {
                        Console.Error.WriteLine(Invariant($"{left.Count} left"));
                    }
                }
                else if (words is ["endless"] || (read.IsCompleted && read.Result is null))
                {
                    if (running >= 0)
                    {
                        // It hangs, or it ended the process, as a stack without end does.
                        killed.Add(running);
                        endless.Add(running);
                        left.Dequeue();
                    }

                    break;
                }
            }

            if (!child.HasExited)
            {
                child.Kill(true);
            }

            File.Delete(plan);
        }
    }

    private string Line(int mutant) =>
        string.Join(
            Child.Between,
            [mutant.ToString(CultureInfo.InvariantCulture), .. reaching[mutant].Select(t => t.Test)]
        );

    private void Print(Mutant[] chosen, TimeSpan time)
    {
        foreach (Mutant mutant in chosen.Where(m => !killed.Contains(m.Id)))
        {
            Console.WriteLine($"{(reaching.ContainsKey(mutant.Id) ? "survived" : "not reached")} {mutant.Id} {mutant}");
        }

        int count = chosen.Count(m => killed.Contains(m.Id));
        int unreached = chosen.Count(m => !reaching.ContainsKey(m.Id));
        (double low, double high) = Bounds(count, chosen.Length);
        Console.WriteLine(
            Invariant(
                $"{chosen.Length} mutants, {count} killed ({100.0 * count / chosen.Length:0.0} %; 95 % between {low:0.0} and {high:0.0} %), {endless.Count} of them by time, {chosen.Length - count - unreached} survived, {unreached} not reached; {time.TotalSeconds:0} s"
            )
        );
    }

    /// <summary>Wilson's interval of a share, in percent; a draw without putting back from few is narrower.</summary>
    private static (double Low, double High) Bounds(int hits, int count)
    {
        const double z = 1.96;
        double p = (double)hits / count;
        double middle = (p + (z * z / (2 * count))) / (1 + (z * z / count));
        double half = z * Math.Sqrt((p * (1 - p) / count) + (z * z / (4.0 * count * count))) / (1 + (z * z / count));
        return (100 * (middle - half), 100 * (middle + half));
    }

    private static Process Start(params string[] words)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath!) == "dotnet")
        {
            start.ArgumentList.Add(typeof(Campaign).Assembly.Location);
        }

        foreach (string word in words)
        {
            start.ArgumentList.Add(word);
        }

        return Process.Start(start)!;
    }

    private static double? Number(string variable) =>
        double.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out double number)
            ? number
            : null;

    private static string[] Words(string line) =>
        line.StartsWith(Child.Mark, StringComparison.Ordinal)
            ? line[Child.Mark.Length..].Split(Child.Between)
            : ["other"];

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
