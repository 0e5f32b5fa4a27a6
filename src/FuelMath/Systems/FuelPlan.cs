using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The fuel path: its nodes and the parts between them.</summary>
/// <remarks>Checked as a whole: names are unique, every line joins nodes that exist, and there is a tank.</remarks>
public sealed class FuelPlan
{
    private readonly bool[] ahead;

    /// <summary>Lays out a fuel path.</summary>
    /// <param name="nodes">Its nodes, at least one of them a tank; names unique.</param>
    /// <param name="lines">Its lines, at least one; names unique, each between two of the nodes.</param>
    /// <exception cref="ArgumentNullException">Either is null.</exception>
    /// <exception cref="ArgumentException">The plan does not hold together; the message says where.</exception>
    public FuelPlan(IEnumerable<PlanNode> nodes, IEnumerable<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(nodes);
        nodes = Lists.NoNulls(nodes);
        ArgumentNullException.ThrowIfNull(lines);
        lines = Lists.NoNulls(lines);
        Nodes = [.. nodes];
        Lines = [.. lines];
        if (Nodes.IsEmpty || Lines.IsEmpty)
        {
            throw new ArgumentException(
                $"A fuel path needs nodes and lines; {Nodes.Length} nodes and {Lines.Length} lines given.",
                Nodes.IsEmpty ? nameof(nodes) : nameof(lines)
            );
        }

        var known = new HashSet<string>(StringComparer.Ordinal);
        foreach (PlanNode node in Nodes)
        {
            if (!known.Add(node.Name))
            {
                throw new ArgumentException($"Node names must be unique; '{node.Name}' is there twice.", nameof(nodes));
            }
        }

        if (!Nodes.Any(n => n is { IsTank: true, UsableVolume: null }))
        {
            throw new ArgumentException(
                "A fuel path needs a tank, where the pressure is known; none given.",
                nameof(nodes)
            );
        }

        var named = new HashSet<string>(StringComparer.Ordinal);
        foreach (Line line in Lines)
        {
            if (line.Part.WhyNoSystem is { } why)
            {
                throw new ArgumentException($"Line '{line.Name}' can't be in a system: {why}.", nameof(lines));
            }

            if (
                line.Part is IRegulator { Reference: RegulatorReference.Tank } regulator
                && Nodes.Count(n => n.IsTank) > 1
                && !Nodes.Any(n => n.IsTank && IsAt(n, line))
            )
            {
                string where = regulator.IsReducing ? "stand at one of them" : "return into one of them";
                throw new ArgumentException(
                    $"Regulator '{line.Name}' refers to tank pressure, and with several tanks it must {where}.",
                    nameof(lines)
                );
            }

            if (!named.Add(line.Name))
            {
                throw new ArgumentException($"Line names must be unique; '{line.Name}' is there twice.", nameof(lines));
            }

            foreach (string end in new[] { line.From, line.To })
            {
                if (!known.Contains(end))
                {
                    throw new ArgumentException(
                        $"Line '{line.Name}' leads to node '{end}', which is not among: {string.Join(", ", known)}.",
                        nameof(lines)
                    );
                }
            }
        }

        CheckSwitches(nameof(lines));
        ahead = Ahead(Nodes, Lines);
        LiftPumps = LiftPumpSearch.In(Nodes, Lines);
        foreach ((PlanNode tank, ImmutableArray<string> lifts) in LiftPumps)
        {
            if (lifts.IsEmpty)
            {
                throw new ArgumentException(
                    $"Surge tank '{tank.Name}' needs a lift pump: one that leads to it and does not draw from it.",
                    nameof(lines)
                );
            }
        }
    }

    private FuelPlan(FuelPlan other, int running)
    {
        (Nodes, ahead, LiftPumps) = (other.Nodes, other.ahead, other.LiftPumps);
        ImmutableArray<SwitchedPump> switched = other.Switched;
        Lines =
        [
            .. other.Lines.Select(l =>
                l.Switch is null
                    ? l
                    : l.Unswitched(SwitchedPump.Runs(switched, running, l.Name) ? l.Part : new StoppedPump(l.Part))
            ),
        ];
    }

    /// <summary>The nodes, in the order given.</summary>
    public ImmutableArray<PlanNode> Nodes { get; }

    /// <summary>The lines, in the order given.</summary>
    public ImmutableArray<Line> Lines { get; }

    /// <summary>The surge tanks, each with the lines of the pumps that fill it.</summary>
    internal ImmutableArray<(PlanNode Tank, ImmutableArray<string> Lifts)> LiftPumps { get; }

    /// <summary>The pumps that join and leave, in the order of the lines.</summary>
    internal ImmutableArray<SwitchedPump> Switched => SwitchedPump.Of(Lines.Select(l => (l.Name, l.Switch)));

    /// <summary>The same path with some of its switched pumps running, a bit for each, and the others stopped.</summary>
    internal FuelPlan Running(int running) => new(this, running);

    /// <summary>The tank that a regulator sits in: where it returns to or draws from, or the only one.</summary>
    internal PlanNode TankOf(Line line) =>
        Nodes.FirstOrDefault(n => n.IsTank && IsAt(n, line)) ?? Nodes.Single(n => n.IsTank);

    /// <summary>Whether a line leads to where a pump draws from.</summary>
    internal bool IsAheadOfAPump(int line) => ahead[line];

    /// <summary>What a solved path does to each surge tank.</summary>
    internal ImmutableArray<SurgeTankBalance> BalancesIn(NetworkState state) =>
        [.. LiftPumps.Select(t => new SurgeTank(t.Tank.Name, t.Tank.UsableVolume!.Value).BalanceOf(state, t.Lifts))];

    private void CheckSwitches(string paramName)
    {
        SwitchedPump.Check([.. Lines.Select(l => (l.Name, l.Switch))], Nodes.Select(n => n.Name), paramName);
        Line? own = Lines.FirstOrDefault(l => l.Switch is { WatchesPressure: false } by && by.Watched == l.Name);
        if (own is not null)
        {
            throw new ArgumentException(
                $"The switch of pump '{own.Name}' watches the pump's own flow, which is gone when it stands still.",
                paramName
            );
        }
    }

    private static bool[] Ahead(ImmutableArray<PlanNode> nodes, ImmutableArray<Line> lines)
    {
        // A return line that ends in the tank is not ahead of the pump, though the pump draws from there.
        var drawnFrom = lines
            .Where(l => l.Part is Pump)
            .Select(l => l.From)
            .Except(nodes.Where(n => n.IsTank).Select(n => n.Name))
            .ToHashSet(StringComparer.Ordinal);
        return [.. lines.Select(l => drawnFrom.Contains(l.To))];
    }

    private static bool IsAt(PlanNode node, Line line) =>
        node.Name == line.To || (line.Part is IRegulator { IsReducing: true } && node.Name == line.From);
}
