namespace FuelMath;

/// <content>How a balance is read from a solved network.</content>
public sealed partial class SurgeTankBalance
{
    /// <summary>The balance of a surge tank in a solved network.</summary>
    /// <param name="state">The network in steady state, with the lift pumps running.</param>
    /// <param name="node">The surge tank: a node made by <see cref="Network.Node.SurgeTank"/>.</param>
    /// <param name="liftPumps">The lines of the lift pumps, at least one.</param>
    /// <returns>The balance, with and without the lift pumps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="state"/> or <paramref name="liftPumps"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// There is no such node or line, the node is no surge tank, no pump is given, one does not feed the tank, or the lift circuit
    /// also draws from it, so that neither stops without the other.
    /// </exception>
    public static SurgeTankBalance FromState(NetworkState state, string node, IEnumerable<string> liftPumps)
    {
        ArgumentNullException.ThrowIfNull(liftPumps);
        return From(state, node, Lists.NoNulls(liftPumps), mayReturn: false);
    }

    /// <summary>The same for lift pumps that may be stopped: backward flow through them counts as drawn.</summary>
    internal static SurgeTankBalance FromStoppable(NetworkState state, string node, IEnumerable<string> liftPumps) =>
        From(state, node, [.. liftPumps], mayReturn: true);

    private static SurgeTankBalance From(NetworkState state, string node, string[] liftPumps, bool mayReturn)
    {
        ArgumentNullException.ThrowIfNull(state);
        string liftPump = string.Join("', '", liftPumps);
        NetworkPlan plan = state.Plan;
        int tank = plan.Node(node);
        if (plan.Nodes[tank].UsableVolume is not { } volume)
        {
            throw new RefusedArgumentException(
                RefusalCode.WrongKind,
                $"Node '{node:node}' must be {"a surge tank":allowed}; it is not.",
                nameof(node)
            );
        }

        bool[] lifts = JoinedTo(plan, liftPumps.Select(p => plan.Link(p)));
        (double lift, double returned, double drawn) = (0, 0, 0);
        bool feeds = false;
        foreach (int e in plan.LinksAt(tank))
        {
            double into = plan.To[e] == tank ? state.FlowSi(e) : -state.FlowSi(e);
            feeds |= lifts[e];
            lift += lifts[e] ? Math.Max(into, 0) : 0;
            returned += lifts[e] ? 0 : Math.Max(into, 0);
            drawn += lifts[e] && !mayReturn ? 0 : Math.Max(-into, 0);
            if (lifts[e] && into < 0 && !mayReturn)
            {
                throw new RefusedArgumentException(
                    RefusalCode.JoinedByAnother,
                    $"'{plan.Links[e].Name:part}' draws from '{node:node}' and is joined to '{liftPump:other}': one does not stand still without the other.",
                    nameof(liftPumps)
                );
            }
        }

        return feeds
            ? new(node, [.. liftPumps], volume.InSi(), lift, returned, drawn)
            : throw new RefusedArgumentException(
                RefusalCode.NotThere,
                $"'{liftPump:part}' does not lead to '{node:node}'.",
                nameof(liftPumps)
            );
    }

    /// <summary>The links connected to some links through junctions, directly or indirectly.</summary>
    private static bool[] JoinedTo(NetworkPlan plan, IEnumerable<int> first)
    {
        var joined = new bool[plan.Links.Length];
        Stack<int> waiting = new(first);
        while (waiting.TryPop(out int link))
        {
            if (joined[link])
            {
                continue;
            }

            joined[link] = true;
            foreach (int node in new[] { plan.From[link], plan.To[link] })
            {
                if (node < plan.Unknown)
                {
                    foreach (int other in plan.LinksAt(node))
                    {
                        waiting.Push(other);
                    }
                }
            }
        }

        return joined;
    }
}
