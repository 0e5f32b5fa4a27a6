using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A pump in a line with its switch.</summary>
internal sealed class SwitchedPump(string name, PumpSwitch by)
{
    /// <summary>Each one more doubles the networks to be prepared and solved.</summary>
    internal const int Most = 3;

    internal string Name { get; } = name;

    internal PumpSwitch By { get; } = by;

    /// <summary>Those of some lines that have a switch.</summary>
    internal static ImmutableArray<SwitchedPump> Of(IEnumerable<(string Name, PumpSwitch? Switch)> lines) =>
        [.. lines.Where(l => l.Switch is not null).Select(l => new SwitchedPump(l.Name, l.Switch!))];

    /// <summary>The set of those that were running, a bit for each.</summary>
    internal static int Before(ImmutableArray<SwitchedPump> pumps) =>
        pumps.Select((p, i) => p.By.WasRunning ? 1 << i : 0).Sum();

    /// <summary>Whether one of a set runs.</summary>
    internal static bool Runs(int running, int pump) => (running & (1 << pump)) != 0;

    /// <summary>Whether a line is none of those that stand still.</summary>
    internal static bool Runs(ImmutableArray<SwitchedPump> pumps, int running, string line) =>
        !pumps.Index().Any(p => p.Item.Name == line && !Runs(running, p.Index));

    /// <summary>Refuses switches that can't be followed.</summary>
    /// <param name="lines">The lines with their switches.</param>
    /// <param name="nodes">The names of the nodes.</param>
    /// <param name="paramName">The argument that holds the lines.</param>
    /// <exception cref="ArgumentException">There are too many, or one watches what is not there.</exception>
    internal static void Check(
        IReadOnlyCollection<(string Name, PumpSwitch? Switch)> lines,
        IEnumerable<string> nodes,
        string paramName
    )
    {
        ImmutableArray<SwitchedPump> pumps = Of(lines);
        if (pumps.Length > Most)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"At most {Most:most} pumps may join and leave; there are {pumps.Length:value}.",
                paramName
            );
        }

        HashSet<string> places = [.. nodes];
        HashSet<string> names = [.. lines.Select(l => l.Name)];
        foreach (SwitchedPump pump in pumps.Where(p => p.By.WatchesName))
        {
            if (!(pump.By.WatchesPressure ? places : names).Contains(pump.By.Watched))
            {
                throw new RefusedArgumentException(
                    RefusalCode.NotThere,
                    $"Pump '{pump.Name:part}' is switched by {pump.By.Subject:other}, which is not there.",
                    paramName
                );
            }

            if (!pump.By.WatchesPressure && pump.By.Watched == pump.Name)
            {
                throw new RefusedArgumentException(
                    RefusalCode.WatchesItself,
                    $"The switch of pump '{pump.Name:part}' watches the pump's own flow, which is gone when it stands still.",
                    paramName
                );
            }
        }
    }

    /// <summary>Why a state does not last; empty if this switch leaves it alone.</summary>
    /// <param name="value">What it sees there.</param>
    /// <param name="running">Whether the pump runs there.</param>
    internal string Against(double value, bool running) =>
        By.Agrees(running, value)
            ? ""
            : $"{By.Subject} is {By.Show(value)}, which {(running ? "stops" : "starts")} '{Name}' ({By.Thresholds})";

    /// <summary>Why it runs, or does not, in a state that lasts.</summary>
    internal string Words(double value, bool running) =>
        $"'{Name}' is {(running ? "running" : "stopped")}: {By.Subject} is {By.Show(value)}; {By.Thresholds}.";

    /// <summary>What its switch sees in a state, SI.</summary>
    /// <param name="state">The state.</param>
    /// <param name="manifold">Pressure in the manifold, Pa gauge.</param>
    /// <exception cref="NoSolutionException">That is not determined.</exception>
    internal double ValueIn(NetworkState state, double manifold)
    {
        NetworkPlan plan = state.Plan;
        switch (By.Kind)
        {
            case PumpSwitchKind.ManifoldAbove:
                return manifold;
            case PumpSwitchKind.FlowAbove:
                return state.FlowSi(plan.Link(By.Watched, "watched"));
            case PumpSwitchKind.TotalDrawAbove:
                double openings = plan.Links.Index().Where(l => l.Item.Law.NeedsSpace).Sum(l => state.FlowSi(l.Index));
                return openings + plan.Nodes.Sum(n => n.DrawSi);
            default:
                int node = plan.Node(By.Watched, "watched");
                return !state.IsCutOff(node)
                    ? state.PressureSi(node)
                    : throw new NoSolutionException(
                        RefusalCode.PressureUndetermined,
                        NetworkVerdict.Sought,
                        $"'{Name:part}' is switched by the pressure at '{By.Watched:node}', which is not determined: every way to it is shut.",
                        By.Watched,
                        double.NaN,
                        state.Iterations
                    );
        }
    }
}
