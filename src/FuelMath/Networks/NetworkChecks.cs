namespace FuelMath;

/// <summary>What can be wrong with a network before anything is solved.</summary>
internal static class NetworkChecks
{
    internal static void All(NetworkNode[] nodes, NetworkLink[] links)
    {
        NotEmpty(nodes, links);
        Unique(nodes.Select(n => n.Name), "node", nameof(nodes));
        Unique(links.Select(l => l.Name), "link", nameof(links));
        EndsExist(nodes, links);
        SpacesAreFixed(nodes, links);
        EveryNodeIsReached(nodes, links);
        HumpsCanBeSearched(nodes, links);
        SwitchedPump.Check([.. links.Select(l => (l.Name, l.Given?.Switch))], nodes.Select(n => n.Name), nameof(links));
    }

    /// <summary>A pressure that is given, Pa gauge.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It lies below vacuum.</exception>
    internal static double NotBelowVacuum(GaugePressure pressure, string paramName) =>
        pressure.Si >= NetworkVerdict.Vacuum
            ? pressure.Si
            : throw new ArgumentOutOfRangeException(
                paramName,
                $"Must be at least {NetworkVerdict.Kilopascals(NetworkVerdict.Vacuum)} gauge, which is vacuum; it was {NetworkVerdict.Kilopascals(pressure.Si)} gauge."
            );

    /// <summary>Refuses a network that one solve is not enough for.</summary>
    /// <exception cref="ArgumentException">It may have several states.</exception>
    internal static void OneState(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        string? why =
            network.Plan.Hump >= 0 ? $"the curve of '{network.Plan.Links[network.Plan.Hump].Name}' has a hump"
            : Array.Find(network.Plan.Links, l => l.Given?.Switch is not null) is { } switched
                ? $"'{switched.Name}' joins and leaves"
            : null;
        if (why is not null)
        {
            throw new ArgumentException(
                $"Must have one state by its laws; {why}. Solve such a network by itself.",
                nameof(network)
            );
        }
    }

    /// <summary>
    /// One hump at most, and around it only parts by which the rest never asks for less at a greater flow. With no weight of
    /// a link negative, the nodes' conductances make a matrix whose columns add up to nothing or more and which is positive
    /// on its diagonal only. By the maximum principle flow pushed in at a node then moves no pressure more than the one
    /// there. A regulator that return pressure opens has a negative weight.
    /// </summary>
    private static void HumpsCanBeSearched(NetworkNode[] nodes, NetworkLink[] links)
    {
        string[] humps = [.. links.Where(l => l.Part.HasHump).Select(l => l.Name)];
        if (humps.Length > 1)
        {
            throw new ArgumentException(
                $"At most one pump may have a curve with a hump; {string.Join(" and ", humps.Select(h => $"'{h}'"))} have. Where nodes of fixed pressure part them, make a network of each.",
                nameof(links)
            );
        }

        HashSet<string> given = [.. nodes.Where(n => n.IsFixed).Select(n => n.Name)];
        NetworkLink? pushed = Array.Find(links, l => l.Part.IsOpenedFromBehind && !given.Contains(l.To));
        if (humps.Length == 1 && pushed is not null)
        {
            throw new ArgumentException(
                $"The curve of '{humps[0]}' has a hump, and return pressure at '{pushed.To}' lowers what '{pushed.Name}' holds: the network may ask less of the pump at a greater flow, so that its states can't be searched for.",
                nameof(links)
            );
        }
    }

    private static void NotEmpty(NetworkNode[] nodes, NetworkLink[] links)
    {
        if (nodes.Length == 0)
        {
            throw new ArgumentException("A network needs nodes; none given.", nameof(nodes));
        }

        if (links.Length == 0)
        {
            throw new ArgumentException("A network needs links; none given.", nameof(links));
        }

        if (Array.Exists(nodes, n => n is null) || Array.Exists(links, l => l is null))
        {
            throw new ArgumentException("A node or link is null.", nameof(nodes));
        }

        if (!Array.Exists(nodes, n => n.IsFixed))
        {
            throw new ArgumentException("A network needs a node of fixed pressure; none given.", nameof(nodes));
        }
    }

    private static void Unique(IEnumerable<string> names, string what, string paramName)
    {
        string? twice = names.GroupBy(n => n, StringComparer.Ordinal).FirstOrDefault(g => g.Skip(1).Any())?.Key;
        if (twice is not null)
        {
            throw new ArgumentException($"Each {what} needs a name of its own; '{twice}' comes twice.", paramName);
        }
    }

    private static void EndsExist(NetworkNode[] nodes, NetworkLink[] links)
    {
        HashSet<string> known = [.. nodes.Select(n => n.Name)];
        foreach (NetworkLink link in links)
        {
            string? missing =
                !known.Contains(link.From) ? link.From
                : !known.Contains(link.To) ? link.To
                : null;
            if (missing is not null)
            {
                throw new ArgumentException(
                    $"Link '{link.Name}' leads to a node '{missing}', which is not there.",
                    nameof(links)
                );
            }
        }
    }

    private static void SpacesAreFixed(NetworkNode[] nodes, NetworkLink[] links)
    {
        HashSet<string> given = [.. nodes.Where(n => n.IsFixed).Select(n => n.Name)];
        NetworkLink? wrong = Array.Find(links, l => l.Part.NeedsSpace && !given.Contains(l.To));
        if (wrong is not null)
        {
            throw new ArgumentException(
                $"Opening '{wrong.Name}' must lead to a node of fixed pressure; '{wrong.To}' is a junction.",
                nameof(links)
            );
        }
    }

    private static void EveryNodeIsReached(NetworkNode[] nodes, NetworkLink[] links)
    {
        ILookup<string, string> next = links
            .SelectMany(l => new[] { (l.From, l.To), (From: l.To, To: l.From) })
            .ToLookup(p => p.From, p => p.To, StringComparer.Ordinal);
        Queue<string> waiting = new(nodes.Where(n => n.IsFixed).Select(n => n.Name));
        HashSet<string> reached = [.. waiting];
        while (waiting.TryDequeue(out string? at))
        {
            foreach (string other in next[at].Where(reached.Add))
            {
                waiting.Enqueue(other);
            }
        }

        string[] island = [.. nodes.Select(n => n.Name).Where(n => !reached.Contains(n))];
        if (island.Length > 0)
        {
            throw new ArgumentException(
                $"No path from any fixed pressure to {(island.Length == 1 ? "node" : "nodes")} {string.Join(", ", island.Select(n => $"'{n}'"))}.",
                nameof(links)
            );
        }
    }
}
