using System.Globalization;
using Xunit.Abstractions;

namespace FuelMath.Mutation;

/// <summary>What a child process does; it answers in lines of standard output that begin with a mark.</summary>
internal static class Child
{
    internal const string Mark = "##";
    internal const char Between = '\t';

    /// <summary>In place of the tests of a mutant: all that were found.</summary>
    internal const string All = "*";

    private const int None = -1;

    /// <summary>Runs each test that is not known yet, and says how long it takes and which mutants it reaches.</summary>
    internal static int Cover(string tests, string filter, string known)
    {
        HashSet<string> done = [.. File.ReadAllLines(known)];
        string left = Environment.GetEnvironmentVariable("MUTATION_WITHOUT") ?? "";
        string[] without = left.Split('|', StringSplitOptions.RemoveEmptyEntries);
        using var suite = new Suite(tests);
        var control = new Control(suite.Library);
        control.Switch(None);
        control.Capture(true);
        suite.Find(filter);
        // What the data of theories reach is mostly made once and kept.
        Say("kept", string.Join(' ', control.Reached().Reached));
        foreach ((string id, ITestCase test) in suite.Cases)
        {
            string type = test.TestMethod.TestClass.Class.Name;
            if (done.Contains(id) || without.Any(w => $"{type}.".Contains(w, StringComparison.Ordinal)))
            {
                continue;
            }

            (double milliseconds, string? failed) = suite.Run([test]);
            (int[] reached, int[] kept) = control.Reached();
            Say(
                failed is null ? "test" : "bad",
                id,
                type,
                milliseconds.ToString("0", CultureInfo.InvariantCulture),
                failed ?? string.Join(' ', reached)
            );
            if (kept.Length > 0)
            {
                Say("kept", string.Join(' ', kept));
            }
        }

        return 0;
    }

    /// <summary>Switches mutants on, one after the other, and runs the tests that reach each.</summary>
    internal static int Run(string tests, string plan)
    {
        string[] lines = File.ReadAllLines(plan);
        using var suite = new Suite(tests);
        var control = new Control(suite.Library);
        bool alone = lines.Length == 2;
        if (alone)
        {
            // What is made once, by tests or already while they are found, is made with the mutant.
            Say("start", lines[1].Split(Between)[0]);
            control.Switch(Number(lines[1]));
            suite.Find(lines[0]);
        }
        else
        {
            control.Switch(None);
            suite.Find(lines[0]);
            IEnumerable<string> all = lines.Skip(1).SelectMany(l => l.Split(Between).Skip(1)).Distinct();
            foreach (string id in all.Where(suite.Cases.ContainsKey))
            {
                suite.Run([suite.Cases[id]]);
            }
        }

        foreach (string line in lines.Skip(1))
        {
            string[] parts = line.Split(Between);
            if (!alone)
            {
                Say("start", parts[0]);
            }

            control.Switch(Number(line));
            string? failed = null;
            IEnumerable<ITestCase> cases = parts is [_, All, .. string[] unused]
                ? suite.Cases.Where(c => !unused.Contains(c.Key)).Select(c => c.Value)
                : parts.Skip(1).Where(suite.Cases.ContainsKey).Select(id => suite.Cases[id]);
            foreach (ITestCase test in cases)
            {
                failed = suite.Run([test]).Failed;
                if (failed is not null)
                {
                    break;
                }
            }

            control.Switch(None);
            Say(failed is null ? "survived" : "killed", parts[0], failed ?? "");
        }

        return 0;
    }

    /// <summary>The words of a line with the mark; "other" for any other line.</summary>
    internal static string[] Words(string line) =>
        line.StartsWith(Mark, StringComparison.Ordinal) ? line[Mark.Length..].Split(Between) : ["other"];

    private static int Number(string line) => int.Parse(line.Split(Between)[0], CultureInfo.InvariantCulture);

    private static void Say(params string[] words)
    {
        Console.Out.WriteLine(Mark + string.Join(Between, words.Select(w => w.ReplaceLineEndings(" "))));
        Console.Out.Flush();
    }
}
