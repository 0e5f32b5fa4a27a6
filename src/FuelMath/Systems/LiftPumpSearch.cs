using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Finds the pumps that fill surge tanks: their outlets lead to the tank, and they draw nothing from it.</summary>
internal static class LiftPumpSearch
{
    /// <summary>Each surge tank with the lines of its lift pumps.</summary>
    internal static ImmutableArray<(Network.Node Tank, ImmutableArray<string> Lifts)> In(
        ImmutableArray<Network.Node> nodes,
        ImmutableArray<Line> lines
    )
    {
        var tanks = nodes.Where(n => n.IsFixed).Select(n => n.Name).ToHashSet(StringComparer.Ordinal);
        Line[] pumps = [.. lines.Where(l => l.Part.IsPump)];
        Line[] passages = [.. lines.Where(l => l.Part is not Pump)];
        return
        [
            .. nodes
                .Where(n => n.UsableVolume is not null)
                .Select(tank =>
                {
                    HashSet<string> drawn = DrawnFrom(tank.Name, pumps, passages, tanks);
                    return (
                        tank,
                        pumps
                            .Where(p => !drawn.Contains(p.From) && Around(p.To, passages, tanks).Contains(tank.Name))
                            .Select(p => p.Name)
                            .ToImmutableArray()
                    );
                }),
        ];
    }

    /// <summary>All nodes that fuel of a tank reaches through pumps.</summary>
    private static HashSet<string> DrawnFrom(string tank, Line[] pumps, Line[] passages, HashSet<string> tanks)
    {
        HashSet<string> reached = NextTo(tank, passages, tanks);
        int before;
        do
        {
            before = reached.Count;
            foreach (Line pump in pumps.Where(p => reached.Contains(p.From)))
            {
                reached.UnionWith(Around(pump.To, passages, tanks).Except(tanks));
            }
        } while (reached.Count > before);

        return reached;
    }

    /// <summary>A tank, and the nodes connected to it without a pump or another tank between.</summary>
    private static HashSet<string> NextTo(string tank, Line[] passages, HashSet<string> tanks)
    {
        HashSet<string> found = [tank];
        foreach (Line line in passages.Where(l => l.From == tank || l.To == tank))
        {
            found.UnionWith(Around(line.From == tank ? line.To : line.From, passages, tanks).Except(tanks));
        }

        return found;
    }

    /// <summary>A node and all nodes connected to it by passages, up to and including tanks.</summary>
    private static HashSet<string> Around(string place, Line[] passages, HashSet<string> tanks)
    {
        HashSet<string> found = [place];
        Queue<string> waiting = new(found);
        while (waiting.TryDequeue(out string? node))
        {
            if (tanks.Contains(node))
            {
                continue;
            }

            foreach (Line line in passages.Where(l => l.From == node || l.To == node))
            {
                string other = line.From == node ? line.To : line.From;
                if (found.Add(other))
                {
                    waiting.Enqueue(other);
                }
            }
        }

        return found;
    }
}
