using UnitsNet;

namespace FuelMath;

/// <summary>A surge tank: filled by a lift pump, drawn from by another, with the excess overflowing.</summary>
/// <remarks>
/// <para>
/// In the network it is a node of fixed pressure: filling and draining affect each other only through its volume, which
/// changes by inflow less outflow. It overflows to the main tank when inflow exceeds outflow, and drains otherwise, for
/// example while the lift pump draws air. Source: [Definition] conservation of volume.
/// </para>
/// </remarks>
public sealed partial class SurgeTank
{
    private readonly double volume;

    /// <summary>Creates a surge tank.</summary>
    /// <param name="node">Its node of fixed pressure.</param>
    /// <param name="usableVolume">
    /// The volume that can be drawn from the full tank before its pump draws air; greater than zero.
    /// </param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not greater than zero.</exception>
    public SurgeTank(string node, Volume usableVolume)
    {
        Node = Guard.Name(node);
        volume = Guard.Positive(usableVolume, usableVolume.InSi());
    }

    /// <summary>Its node.</summary>
    public string Node { get; }

    /// <summary>The volume that can be drawn from the full tank, in m³.</summary>
    public Volume UsableVolume => SiUnits.Volume(volume);

    /// <summary>The balance of the tank in a solved network.</summary>
    /// <param name="state">The network in steady state, with the lift pump running.</param>
    /// <param name="liftPump">The link of the lift pump.</param>
    /// <returns>The balance, with and without the lift pump.</returns>
    /// <exception cref="ArgumentException">
    /// There is no such node or link, the node has no fixed pressure, the pump does not feed it, or the lift circuit
    /// also draws from the tank, so that neither stops without the other.
    /// </exception>
    public FuelBalance BalanceIn(NetworkState state, string liftPump) =>
        Balance(state, [liftPump], nameof(liftPump), mayReturn: false);

    /// <summary>The balance of a tank with several lift pumps in a solved network.</summary>
    /// <param name="state">The network in steady state, with the lift pumps running.</param>
    /// <param name="liftPumps">The links of the lift pumps, at least one.</param>
    /// <returns>The balance, with and without the lift pumps.</returns>
    /// <exception cref="ArgumentException">
    /// None is given, or one does not meet the conditions of the other overload.
    /// </exception>
    public FuelBalance BalanceIn(NetworkState state, IEnumerable<string> liftPumps)
    {
        ArgumentNullException.ThrowIfNull(liftPumps);
        return Balance(state, Lists.NoNulls(liftPumps), nameof(liftPumps), mayReturn: false);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Node}: {UsableVolume}");

    /// <summary>The same for lift pumps that may be stopped: backward flow through them counts as drawn.</summary>
    internal FuelBalance BalanceOf(NetworkState state, IEnumerable<string> liftPumps) =>
        Balance(state, [.. liftPumps], nameof(liftPumps), mayReturn: true);

    private FuelBalance Balance(NetworkState state, string[] named, string paramName, bool mayReturn)
    {
        ArgumentNullException.ThrowIfNull(state);
        string liftPump = string.Join("', '", named);
        NetworkPlan plan = state.Plan;
        int tank = plan.Node(Node, "node");
        if (tank < plan.Unknown)
        {
            throw new RefusedArgumentException(
                RefusalCode.FixedPressureNeeded,
                $"Surge tank '{Node:node}' must be a node of fixed pressure.",
                nameof(state)
            );
        }

        bool[] lifts = JoinedTo(plan, named.Select(n => plan.Link(n)));
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
                    $"'{plan.Links[e].Name:part}' draws from '{Node:node}' and is joined to '{liftPump:other}': one does not stand still without the other.",
                    paramName
                );
            }
        }

        return feeds
            ? new(Node, [.. named], volume, lift, returned, drawn)
            : throw new RefusedArgumentException(
                RefusalCode.NotThere,
                $"'{liftPump:part}' does not lead to '{Node:node}'.",
                paramName
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
