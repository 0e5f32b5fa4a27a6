namespace FuelMath;

/// <summary>
/// The regions of a network that nodes of fixed pressure part: what happens in one changes nothing in another.
/// </summary>
internal static class NetworkRegions
{
    /// <summary>The lines of each region, in the order given. A line between two nodes of fixed pressure is one by itself.</summary>
    internal static IEnumerable<Line[]> Of(IEnumerable<Network.Node> nodes, IReadOnlyList<Line> lines)
    {
        Dictionary<string, string> joined = nodes
            .Where(n => !n.IsFixed)
            .ToDictionary(n => n.Name, n => n.Name, StringComparer.Ordinal);
        foreach (Line line in lines.Where(l => joined.ContainsKey(l.From) && joined.ContainsKey(l.To)))
        {
            joined[Root(line.From)] = Root(line.To);
        }

        return lines
            .GroupBy(l =>
                joined.ContainsKey(l.From) ? (true, Root(l.From))
                : joined.ContainsKey(l.To) ? (true, Root(l.To))
                : (false, l.Name)
            )
            .Select(g => g.ToArray());

        string Root(string node)
        {
            while (joined[node] != node)
            {
                node = joined[node];
            }

            return node;
        }
    }
}
