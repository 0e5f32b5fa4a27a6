namespace FuelMath.Samples.Assessment;

/// <summary>A node in the picture of a path: its row from the tank, and its place in the row.</summary>
internal sealed class PathBox(string name, double bars)
{
    internal string Name => name;

    /// <summary>Gauge pressure; not a number where every way to the node is shut.</summary>
    internal double Bars => bars;

    internal int Depth { get; set; }

    internal int Lane { get; set; }

    internal int Lanes { get; set; } = 1;
}

/// <summary>A part in the picture, in the direction in which fuel flows.</summary>
internal sealed class PathEdge(string name, PathBox from, PathBox to, string label, double stroke)
{
    internal string Name => name;

    internal PathBox From => from;

    internal PathBox To => to;

    internal string Label => label;

    internal double Stroke => stroke;

    /// <summary>Whether it leads back to a row above, as the overflow of a surge tank does.</summary>
    internal bool IsBack { get; set; }

    /// <summary>Its place among parts that join the same two nodes, and how many there are.</summary>
    internal int Twin { get; set; }

    internal int Twins { get; set; } = 1;
}

/// <summary>Rows and lanes of a path: a node stands one row below the lowest that feeds it; what returns to the tank ends below.</summary>
internal sealed class PathLayout
{
    private readonly Dictionary<string, PathBox> boxes = [];

    internal PathLayout(FuelSystem system, SystemState state)
    {
        var tanks = system.Network.Nodes.Where(n => n.IsFixed).Select(n => n.Name).ToHashSet();
        double most = Math.Max(1e-12, system.Network.Lines.Max(l => Math.Abs(state.FlowThrough(l.Name).LitersPerHour)));
        foreach (Line line in system.Network.Lines)
        {
            double flow = state.FlowThrough(line.Name).LitersPerHour;
            (string from, string to) = flow < 0 ? (line.To, line.From) : (line.From, line.To);
            PathBox start = Box(from, from, state);
            PathBox end = tanks.Contains(to) ? Box(to + "|", $"{to}, back", state, to) : Box(to, to, state);
            Edges.Add(
                new(
                    line.Name,
                    start,
                    end,
                    $"{Difference(start, end)}{Say.Number(Math.Abs(flow), "0.0")} L/h",
                    1 + (3 * Math.Abs(flow) / most)
                )
            );
        }

        MarkBack();
        Deepen();
        Place();
    }

    internal List<PathEdge> Edges { get; } = [];

    internal IReadOnlyCollection<PathBox> Boxes => boxes.Values;

    internal int Rows => 1 + Boxes.Max(b => b.Depth);

    private PathBox Box(string key, string name, SystemState state, string? node = null)
    {
        if (!boxes.TryGetValue(key, out PathBox? box))
        {
            bool known = state.Network.TryPressureAt(node ?? name, out GaugePressure pressure);
            boxes.Add(key, box = new(name, known ? pressure.AboveAmbient.Bars : double.NaN));
        }

        return box;
    }

    private static string Difference(PathBox start, PathBox end) =>
        double.IsNaN(end.Bars - start.Bars) ? "" : $"{Say.Number(end.Bars - start.Bars, "+0.00;-0.00;0.00")} bar, ";

    private void MarkBack()
    {
        var open = new HashSet<PathBox>();
        var done = new HashSet<PathBox>();
        foreach (PathBox box in Boxes.OrderBy(b => Edges.Count(e => e.To == b)))
        {
            Visit(box, open, done);
        }
    }

    private void Visit(PathBox box, HashSet<PathBox> open, HashSet<PathBox> done)
    {
        if (!done.Add(box))
        {
            return;
        }

        open.Add(box);
        foreach (PathEdge edge in Edges.Where(e => e.From == box))
        {
            if (open.Contains(edge.To))
            {
                edge.IsBack = true;
            }
            else
            {
                Visit(edge.To, open, done);
            }
        }

        open.Remove(box);
    }

    private void Deepen()
    {
        for (int i = 0; i < Boxes.Count; i++)
        {
            foreach (PathEdge edge in Edges.Where(e => !e.IsBack && e.To.Depth <= e.From.Depth))
            {
                edge.To.Depth = edge.From.Depth + 1;
            }
        }
    }

    private void Place()
    {
        foreach (IGrouping<int, PathBox> row in Boxes.GroupBy(b => b.Depth).OrderBy(g => g.Key))
        {
            PathBox[] ordered = [.. row.OrderBy(Center)];
            for (int i = 0; i < ordered.Length; i++)
            {
                (ordered[i].Lane, ordered[i].Lanes) = (i, ordered.Length);
            }
        }

        foreach (IGrouping<(PathBox, PathBox), PathEdge> twins in Edges.GroupBy(e => (e.From, e.To)))
        {
            PathEdge[] all = [.. twins];
            for (int i = 0; i < all.Length; i++)
            {
                (all[i].Twin, all[i].Twins) = (i, all.Length);
            }
        }
    }

    private double Center(PathBox box) =>
        Edges
            .Where(e => e.To == box && !e.IsBack)
            .Select(e => (e.From.Lane + 0.5) / e.From.Lanes)
            .DefaultIfEmpty(0.5)
            .Average();
}
