using System.Diagnostics;
using System.Globalization;

namespace FuelMath.Mutation;

/// <summary>Runs mutants, all or a random sample, in child processes, and prints what came of them.</summary>
internal sealed class Campaign(string tests, string filter, string own, Mutant[] all, Survivors known)
{
    /// <summary>How long a mutant may take beyond ten times what its tests take: a loop without end counts as killed.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(Number("MUTATION_PATIENCE") ?? 20);

    /// <summary>The most seconds of tests of the room for a mutant.</summary>
    private static readonly double Cap = Number("MUTATION_CAP") ?? 20;

    /// <summary>The most seconds of all other tests for one that those leave; what is left then counts as survived.</summary>
    private static readonly double FarCap = Number("MUTATION_FAR_CAP") ?? 60;

    private readonly Dictionary<int, string[]> plans = [];
    private readonly HashSet<int> killed = [];
    private readonly HashSet<int> endless = [];
    private Coverage coverage = null!;

    internal int Run(int sample, int seed)
    {
        var clock = Stopwatch.StartNew();
        Mutant[] chosen = Chosen(sample, seed);
        Console.WriteLine(Invariant($"{all.Length} mutants, {chosen.Length} of them drawn with seed {seed}"));
        coverage = Coverage.Read(tests, filter, own);
        int[] drawn = [.. chosen.Select(m => m.Id)];
        int[] passing = [.. drawn.Where(m => !coverage.Kept.Contains(m))];
        Work([.. passing.Where(m => Own(m).Length > 0)], Own, together: true);
        // What the library or a test class makes once and keeps must be made with the mutant: in a process of its own, and by
        // all tests of the classes that reach it, because only the first of them is seen to make what the others look at.
        Work(
            [.. drawn.Where(m => (Own(m).Length > 0 || coverage.Kept.Contains(m)) && IsLeft(m))],
            Own,
            together: false
        );
        int near = killed.Count;
        Work([.. passing.Where(m => Others(m).Length > 0 && IsLeft(m))], Others, together: true);
        int[] kept = [.. drawn.Where(m => Own(m).Length == 0 || coverage.Kept.Contains(m))];
        Work([.. kept.Where(m => Others(m).Length > 0 && IsLeft(m))], Others, together: false);
        Print(chosen, near, clock.Elapsed);
        return 0;
    }

    private bool IsLeft(int mutant) => !killed.Contains(mutant);

    private bool IsReached(int mutant) => coverage.Of(mutant).Count > 0 || coverage.Kept.Contains(mutant);

    private Mutant[] Chosen(int sample, int seed)
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

    /// <summary>The tests of a mutant's own room, until they take too long together.</summary>
    private Coverage.Test[] Own(int mutant) => Within(Cap, coverage.Of(mutant).Where(t => t.IsOwn));

    /// <summary>The tests of all other rooms, until they take too long together.</summary>
    private Coverage.Test[] Others(int mutant) => Within(FarCap, coverage.Of(mutant).Where(t => !t.IsOwn));

    private static Coverage.Test[] Within(double seconds, IEnumerable<Coverage.Test> sorted)
    {
        double sum = 0;
        return [.. sorted.TakeWhile(t => (sum += t.Milliseconds) <= 1e3 * seconds || sum == t.Milliseconds)];
    }

    private void Work(int[] mutants, Func<int, Coverage.Test[]> choice, bool together)
    {
        var left = new Queue<int>(mutants);
        while (left.Count > 0)
        {
            int[] batch = together ? [.. left] : [left.Peek()];
            string plan = Path.GetTempFileName();
            File.WriteAllLines(plan, together ? Plan(batch, choice) : Alone(batch[0], choice));
            using Process child = ChildProcess.Start("run", tests, plan);
            int running = -1;
            while (true)
            {
                TimeSpan wait = Patience + (running < 0 ? TimeSpan.FromMinutes(30) : Usual(choice(running), together));
                Task<string?> read = child.StandardOutput.ReadLineAsync();
                string[] words = read.Wait(wait) ? Child.Words(read.Result ?? "") : ["endless"];
                if (words is ["start", string id])
                {
                    running = int.Parse(id, CultureInfo.InvariantCulture);
                }
                else if (words is ["killed" or "survived", ..])
                {
                    _ = words[0] == "killed" && killed.Add(running);
                    left.Dequeue();
                    running = -1;
                    if (left.Count % 20 == 0)
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

    /// <summary>The classes to look into, then a line for each mutant: its number and its tests.</summary>
    private static IEnumerable<string> Plan(int[] batch, Func<int, Coverage.Test[]> choice)
    {
        Coverage.Test[][] each = [.. batch.Select(choice)];
        yield return string.Join('|', each.SelectMany(t => t).Select(t => t.Class + ".").Distinct());
        for (int i = 0; i < batch.Length; i++)
        {
            yield return string.Join(
                Child.Between,
                [batch[i].ToString(CultureInfo.InvariantCulture), .. each[i].Select(t => t.Id)]
            );
        }
    }

    /// <summary>The classes that reach a mutant, and those of its room where nobody can say; then its number, and all their tests but those that fail without a mutant.</summary>
    private IEnumerable<string> Alone(int mutant, Func<int, Coverage.Test[]> choice)
    {
        IEnumerable<string> classes = choice(mutant).Select(t => t.Class + ".").Distinct();
        yield return string.Join('|', coverage.Kept.Contains(mutant) ? classes.Append(own) : classes);
        yield return string.Join(
            Child.Between,
            [mutant.ToString(CultureInfo.InvariantCulture), Child.All, .. coverage.Unused]
        );
    }

    /// <summary>Ten times what its tests take; nobody added up what all tests of its classes take.</summary>
    private static TimeSpan Usual(Coverage.Test[] chosen, bool together) =>
        together ? TimeSpan.FromMilliseconds(10 * chosen.Sum(t => t.Milliseconds)) : TimeSpan.FromMinutes(5);

    private void Print(Mutant[] chosen, int near, TimeSpan time)
    {
        Mutant[] left = [.. chosen.Where(m => !killed.Contains(m.Id))];
        Mutant[] holes = [.. left.Where(m => known.Of(m) is null)];
        foreach (Mutant mutant in left)
        {
            string word = known.Of(mutant) ?? (IsReached(mutant.Id) ? "survived" : "not reached");
            Console.WriteLine($"{word}\t{mutant.Id}\t{mutant}");
        }

        int counted = chosen.Length - left.Length + holes.Length;
        int count = chosen.Length - left.Length;
        int unreached = holes.Count(m => !IsReached(m.Id));
        (double low, double high) = Bounds(count, counted);
        Console.WriteLine(
            Invariant(
                $"{chosen.Length} mutants, {left.Length - holes.Length} of them known to change nothing that matters; of the other {counted} {near} killed by tests of the room, {count} by all ({100.0 * count / counted:0.0} %; 95 % between {low:0.0} and {high:0.0} %), {endless.Count} by time, {holes.Length - unreached} survived, {unreached} not reached; {time.TotalSeconds:0} s"
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

    private static double? Number(string variable) =>
        double.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out double number)
            ? number
            : null;

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
