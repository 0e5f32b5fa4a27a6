using FuelMath.Formulas;

namespace FuelMath;

/// <summary>How the pressure at a node follows from that of a tank, line by line, at the flows of a solved state.</summary>
internal sealed class PathWorking(Network network, StateInputs inputs, double[] pressures, double[] flows)
{
    private static readonly DataSource AlongALine = new(
        "Definition",
        "pressure along a line: what its part takes or gives, and the weight of the fuel"
    );
    private static readonly DataSource ByTheLaw = new("Definition", "difference of two pressures");

    /// <summary>The fuel, the same in all steps.</summary>
    internal Traced Density { get; } = Traced.Input(Symbols.Density, inputs.Density);

    private Traced Viscosity { get; } = ReaderUnits.Input(Symbols.DynamicViscosity, inputs.Viscosity, "mPa s");

    /// <summary>Gauge pressure at a node, Pa.</summary>
    /// <exception cref="InvalidOperationException">No open way leads from a tank to it.</exception>
    internal Traced PressureAt(int node)
    {
        PathStep[] way =
            Way(node)
            ?? throw new RefusedOperationException(
                RefusalCode.Unconnected,
                $"No open way leads from a tank to '{network.Nodes[node].Name:node}', so that its pressure does not follow from one."
            );
        int at = way.Length == 0 ? node : way[0].Start;
        Traced pressure = ReaderUnits.Input(
            new Symbol("p", "Pa", $"pressure in '{network.Nodes[at].Name}' over ambient"),
            pressures[at],
            "bar"
        );
        foreach (PathStep step in way)
        {
            pressure = After(step, pressure);
        }

        return pressure;
    }

    /// <summary>Difference of the steps from the state's pressure at a node, Pa.</summary>
    internal Traced ResidualAt(int node) =>
        Traced.Step(PressureAt(node) - InState(node), new Symbol("r", "Pa", "residual"), ByTheLaw);

    /// <summary>Pressure residual of a line: its part's law less the pressures at its ends, Pa.</summary>
    /// <exception cref="InvalidOperationException">An end is cut off.</exception>
    internal Traced MissOf(int line)
    {
        int from = network.PlaceOf(network.Lines[line].From);
        int to = network.PlaceOf(network.Lines[line].To);
        Traced asked = InState(to) - InState(from);
        double height = inputs.HeightOf(to) - inputs.HeightOf(from);
        if (height != 0)
        {
            asked += Column(height, $"height of '{network.Nodes[to].Name}' over '{network.Nodes[from].Name}'");
        }

        Traced rise = Traced.Step(asked, new Symbol("dps", "Pa", "pressure rise that the system asks"), AlongALine);
        return Traced.Step(-LossOf(line) - rise, new Symbol("r", "Pa", "residual"), ByTheLaw);
    }

    private Traced InState(int node) =>
        double.IsNaN(pressures[node])
            ? throw NetworkState.CutOff(network.Nodes[node].Name)
            : ReaderUnits.Input(
                new Symbol("ps", "Pa", $"pressure at '{network.Nodes[node].Name}' in the solved state"),
                pressures[node],
                "bar"
            );

    private Traced Column(double height, string meaning) =>
        Hydrostatics.ColumnPressure(
            Density,
            Hydrostatics.StandardGravity,
            Traced.Input(new Symbol("h", "m", meaning), height)
        );

    private Traced After(PathStep step, Traced pressure)
    {
        (Line line, int far) = (network.Lines[step.Line], step.End);
        Traced taken = LossOf(step.Line);
        double height = inputs.HeightOf(step.Start) - inputs.HeightOf(far);
        if (height != 0)
        {
            pressure += Column(height, $"height lost along '{line.Name}'");
        }

        return Traced.Step(
            step.IsForward ? pressure - taken : pressure + taken,
            new Symbol("p", "Pa", $"pressure at '{network.Nodes[far].Name}', past '{line.Name}'"),
            AlongALine
        );
    }

    /// <summary>Pressure loss of a line's part from its first to its second node, without the column.</summary>
    private Traced LossOf(int index)
    {
        Line line = network.Lines[index];
        double[] settings = inputs.SettingsOf(index);
        LossInputs at = new()
        {
            Flow = ReaderUnits.Input(new Symbol("Q", "m3/s", $"volume flow in '{line.Name}'"), flows[index], "L/h"),
            Density = Density,
            Viscosity = Viscosity,
            Settings = settings,
        };
        return line.Part.Law.LossWorking(at)
            ?? ReaderUnits.Input(
                new Symbol("dp", "Pa", $"pressure that '{line.Name}' takes, by its law"),
                LossByLaw(line, settings, flows[index]),
                "bar"
            );
    }

    /// <summary>Pressure loss by the law of a part without steps of its own, at the pressures of the state.</summary>
    private double LossByLaw(Line line, double[] settings, double flow)
    {
        int from = network.PlaceOf(line.From);
        int to = network.PlaceOf(line.To);
        Network.Node[] ends =
        [
            Network.Node.FixedPressure("from", default, SiUnits.Length(inputs.HeightOf(from))),
            Network.Node.FixedPressure("to", default, SiUnits.Length(inputs.HeightOf(to))),
        ];
        var alone = new NetworkPlan(ends, [new Line(line.Name, "from", "to", line.Part)]);
        using NetworkWork<Real> work = alone.Rent<Real>();
        work.SetFluid(new Real(inputs.Density), new Real(inputs.Viscosity));
        if (settings.Length > 0)
        {
            work.Set(0, settings);
        }

        work.SetPressure(0, new Real(pressures[from]));
        work.SetPressure(1, new Real(pressures[to]));
        (double up, double down) = (work.Pressure[0].Value, work.Pressure[1].Value);
        Balance<Real> law = work.BalanceAt(0, new Real(flow), work.Pressure[0], work.Pressure[1]);
        double loss = law.Loss.Number.Value;

        // The law uses the pressure of its own side.
        return law.Down.Value > 0
            ? up - (((law.Up.Value * up) - loss) / law.Down.Value)
            : ((loss + (law.Down.Value * down)) / law.Up.Value) - down;
    }

    /// <summary>The lines from a tank to a node: along the flow if there is such a way, else against it.</summary>
    private PathStep[]? Way(int node) => Way(node, along: true) ?? Way(node, along: false);

    private PathStep[]? Way(int node, bool along)
    {
        var reached = new PathStep?[network.Nodes.Length];
        var tanks = Enumerable.Range(0, network.Nodes.Length).Where(i => network.Nodes[i].IsFixed).ToHashSet();
        var open = new Queue<int>(tanks);
        var seen = new HashSet<int>(tanks);
        while (open.TryDequeue(out int at))
        {
            foreach (PathStep step in StepsFrom(at, along).Where(s => seen.Add(s.End)))
            {
                reached[step.End] = step;
                open.Enqueue(step.End);
            }
        }

        if (!seen.Contains(node))
        {
            return null;
        }

        var way = new List<PathStep>();
        for (int at = node; reached[at] is { } step; at = step.Start)
        {
            way.Insert(0, step);
        }

        return [.. way];
    }

    private IEnumerable<PathStep> StepsFrom(int node, bool along)
    {
        for (int i = 0; i < network.Lines.Length; i++)
        {
            int from = network.PlaceOf(network.Lines[i].From);
            int to = network.PlaceOf(network.Lines[i].To);

            // A part that shuts transmits pressure only while fuel flows in it; a passage does so at rest, too.
            bool rests = flows[i] == 0 && network.Lines[i].Part is { IsPassage: true, Law.IsOneWay: false };
            if (node == from && (rests || (along ? flows[i] > 0 : flows[i] < 0)))
            {
                yield return new(i, from, to, true);
            }

            if (node == to && (rests || (along ? flows[i] < 0 : flows[i] > 0)))
            {
                yield return new(i, to, from, false);
            }
        }
    }
}
