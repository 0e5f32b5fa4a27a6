using System.Globalization;
using Xunit.Abstractions;

namespace FuelMath.Mutation;

/// <summary>What a child process does; it answers in lines of standard output that begin with a mark.</summary>
internal static class Child
{
    internal const string Mark = "##";
    internal const char Between = '\t';
    private const int None = -1;

    /// <summary>Runs each test twice, and says how long the second run takes and which mutants it reaches.</summary>
    internal static int Cover(string tests, string filter)
    {
        var suite = new Suite(tests, filter);
        var control = new Control(suite.Library);
        foreach ((string id, ITestCase test) in suite.Cases)
        {
            control.Capture(true);
            control.Switch(None);
            (double milliseconds, string? failed) = suite.Run([test]);
            int[] reached = control.Reached();
            control.Capture(false);
            if (failed is null && reached.Length > 0)
            {
                Say("test", id, milliseconds.ToString(CultureInfo.InvariantCulture), string.Join(' ', reached));
            }
            else if (failed is not null)
            {
                Say("bad", test.DisplayName);
            }
        }

        return 0;
    }

    /// <summary>Switches mutants on, one after the other, and runs the tests that reach each.</summary>
    internal static int Run(string tests, string plan)
    {
        string[] lines = File.ReadAllLines(plan);
        var suite = new Suite(tests, lines[0]);
        var control = new Control(suite.Library);
        bool alone = lines.Length == 2;
        if (!alone)
        {
            // What is made once and kept must be made without a mutant.
            control.Switch(None);
            IEnumerable<string> all = lines.Skip(1).SelectMany(l => l.Split(Between).Skip(1)).Distinct();
            foreach (string id in all)
            {
                suite.Run([suite.Cases[id]]);
            }
        }

        foreach (string line in lines.Skip(1))
        {
            string[] parts = line.Split(Between);
            Say("start", parts[0]);
            control.Switch(int.Parse(parts[0], CultureInfo.InvariantCulture));
            string? failed = null;
            foreach (string id in parts.Skip(1))
            {
                failed = suite.Run([suite.Cases[id]]).Failed;
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

    private static void Say(params string[] words)
    {
        Console.Out.WriteLine(Mark + string.Join(Between, words.Select(w => w.ReplaceLineEndings(" "))));
        Console.Out.Flush();
    }
}
