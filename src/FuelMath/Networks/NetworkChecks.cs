using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace FuelMath;

/// <summary>The checks of a network before solving.</summary>
internal static class NetworkChecks
{
    internal static void All(Network.Node[] nodes, Line[] lines)
    {
        NotEmpty(nodes, lines);
        Unique(nodes.Select(n => n.Name), "node", nameof(nodes));
        Unique(lines.Select(l => l.Name), "line", nameof(lines));
        EndsExist(nodes, lines);
        SpacesAreFixed(nodes, lines);
        EveryNodeIsReached(nodes, lines);
        HumpsCanBeSearched(nodes, lines);
        SwitchedPump.Check([.. lines.Select(l => (l.Name, l.Switch))], nodes.Select(n => n.Name), nameof(lines));
    }

    /// <summary>Checks a given pressure, Pa gauge.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It lies below vacuum.</exception>
    internal static double NotBelowVacuum(
        GaugePressure pressure,
        [CallerArgumentExpression(nameof(pressure))] string paramName = ""
    ) =>
        pressure.Si >= NetworkVerdict.Vacuum
            ? pressure.Si
            : throw Guard.Outside(
                pressure,
                RefusalCode.OutOfRange,
                $"Must be at least {Amount.KilopascalsGauge(NetworkVerdict.Vacuum):least}, which is vacuum; it was {pressure:value}.",
                paramName
            );

    /// <summary>Refuses a network for which one solve is not enough.</summary>
    /// <exception cref="ArgumentException">It may have several states.</exception>
    internal static void OneState(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        if (network.Plan.Humps is [int hump, ..])
        {
            throw new RefusedArgumentException(
                RefusalCode.SeveralStates,
                $"Must have one state by its laws; the curve of '{network.Plan.Links[hump].Name:part}' has a hump. Solve such a network by itself.",
                nameof(network)
            );
        }

        if (Array.Find(network.Plan.Links, l => l.Switch is not null) is { } switched)
        {
            throw new RefusedArgumentException(
                RefusalCode.SeveralStates,
                $"Must have one state by its laws; '{switched.Name:part}' joins and leaves. Solve such a network by itself.",
                nameof(network)
            );
        }
    }

    /// <summary>
    /// Checks for one hump a region at most, and that the required rise of the rest of the network never falls with flow.
    /// If no weight of a link is negative, the matrix of conductances has positive diagonal and nonpositive other elements,
    /// with column sums not below zero. By the maximum principle an inflow at a node then changes no pressure more than
    /// the one there. A regulator that is opened by return-line pressure has a negative weight.
    /// </summary>
    private static void HumpsCanBeSearched(Network.Node[] nodes, Line[] lines)
    {
        if (!Array.Exists(lines, HasHump))
        {
            return;
        }

        HashSet<string> given = [.. nodes.Where(n => n.IsFixed).Select(n => n.Name)];
        foreach (Line[] region in NetworkRegions.Of(nodes, lines))
        {
            ImmutableArray<string> humps = [.. region.Where(HasHump).Select(l => l.Name)];
            if (humps.Length > 1)
            {
                throw new HumpedCurvesException(
                    $"Where no node of fixed pressure parts them, at most {1:most} pump may have a curve with a hump; {humps:part} have.",
                    nameof(lines),
                    humps
                );
            }

            Line? pushed = Array.Find(region, l => l.Law.IsOpenedFromBehind && !given.Contains(l.To));
            if (humps.Length == 1 && pushed is not null)
            {
                throw new HumpedCurvesException(
                    $"The curve of '{humps[0]:part}' has a hump, and return pressure at '{pushed.To:node}' lowers what '{pushed.Name:other}' holds: the network may ask less of the pump at a greater flow, so that its states can't be searched for.",
                    nameof(lines),
                    humps
                );
            }
        }

        static bool HasHump(Line line) => line.Law.HumpedCurve.Length > 0;
    }

    private static void NotEmpty(Network.Node[] nodes, Line[] lines)
    {
        if (nodes.Length == 0)
        {
            throw Guard.Empty(nameof(nodes));
        }

        if (lines.Length == 0)
        {
            throw Guard.Empty(nameof(lines));
        }

        if (!Array.Exists(nodes, n => n.IsFixed))
        {
            throw new RefusedArgumentException(
                RefusalCode.FixedPressureNeeded,
                "A network needs a node of fixed pressure; none given.",
                nameof(nodes)
            );
        }
    }

    private static void Unique(IEnumerable<string> names, string what, string paramName)
    {
        string? twice = names.GroupBy(n => n, StringComparer.Ordinal).FirstOrDefault(g => g.Skip(1).Any())?.Key;
        if (twice is not null)
        {
            throw new RefusedArgumentException(
                RefusalCode.Duplicate,
                $"Each {what:subject} needs a name of its own; '{twice:given}' comes twice.",
                paramName
            );
        }
    }

    private static void EndsExist(Network.Node[] nodes, Line[] lines)
    {
        HashSet<string> known = [.. nodes.Select(n => n.Name)];
        foreach (Line line in lines)
        {
            string? missing =
                !known.Contains(line.From) ? line.From
                : !known.Contains(line.To) ? line.To
                : null;
            if (missing is not null)
            {
                throw new RefusedArgumentException(
                    RefusalCode.NotThere,
                    $"Line '{line.Name:part}' leads to a node '{missing:node}', which is not there.",
                    nameof(lines)
                );
            }
        }
    }

    private static void SpacesAreFixed(Network.Node[] nodes, Line[] lines)
    {
        HashSet<string> given = [.. nodes.Where(n => n.IsFixed).Select(n => n.Name)];
        Line? wrong = Array.Find(lines, l => l.Law.NeedsSpace && !given.Contains(l.To));
        if (wrong is not null)
        {
            throw new RefusedArgumentException(
                RefusalCode.FixedPressureNeeded,
                $"Opening '{wrong.Name:part}' must lead to a node of fixed pressure; '{wrong.To:node}' is a junction.",
                nameof(lines)
            );
        }
    }

    private static void EveryNodeIsReached(Network.Node[] nodes, Line[] lines)
    {
        ILookup<string, string> next = lines
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
            throw new RefusedArgumentException(
                RefusalCode.Unconnected,
                $"No path from any fixed pressure to: {island:given}.",
                nameof(lines)
            );
        }
    }
}
