using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Pumps that differ, in parallel or in series, as lines and nodes of a network.</summary>
/// <remarks>
/// Each has its check valve, so a weak one is held closed by its neighbors. The flow of each is solved; no common curve
/// is assumed. For equal pumps use <see cref="PlainPump.InParallel"/> and <see cref="PlainPump.InSeries"/>.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class PumpSet
{
    private readonly bool isSeries;
    private readonly string from;
    private readonly string to;

    private PumpSet(
        string name,
        string from,
        string to,
        bool isSeries,
        ImmutableArray<Network.Node> nodes,
        ImmutableArray<Line> lines
    )
    {
        (Name, this.from, this.to, this.isSeries) = (name, from, to, isSeries);
        (Nodes, Lines) = (nodes, lines);
    }

    /// <summary>Its name; its pumps are named by it and a number, "lift 1", "lift 2".</summary>
    public string Name { get; }

    /// <summary>The junctions between pumps in series, "lift 1-2"; empty in parallel.</summary>
    public ImmutableArray<Network.Node> Nodes { get; }

    /// <summary>The pumps.</summary>
    public ImmutableArray<Line> Lines { get; }

    /// <summary>Pumps in parallel: at an equal rise flows add up.</summary>
    /// <param name="name">The name for its pumps; not blank.</param>
    /// <param name="from">The node from which all draw.</param>
    /// <param name="to">The node to which all deliver.</param>
    /// <param name="pumps">The pumps, 1 to 16.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">A name is blank, a pump is null, or both ends are the same node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many pumps.</exception>
    /// <remarks>Source: [White-2003] section 11.5 (pumps combined in parallel).</remarks>
    public static PumpSet InParallel(string name, string from, string to, IEnumerable<PlainPump> pumps)
    {
        PlainPump[] all = Checked(name, pumps);
        return new(name, from, to, false, [], [.. all.Select((p, i) => new Line($"{name} {i + 1}", from, to, p))]);
    }

    /// <summary>Pumps in series, one feeding the next: at an equal flow rises add up.</summary>
    /// <param name="name">The name for its pumps; not blank.</param>
    /// <param name="from">The node from which the first draws.</param>
    /// <param name="to">The node to which the last delivers.</param>
    /// <param name="elevation">The height of the nodes between them.</param>
    /// <param name="pumps">The pumps in their order, 1 to 16.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">A name is blank, a pump is null, or both ends are the same node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many pumps, or the height is not finite.</exception>
    /// <remarks>Source: [White-2003] section 11.5 (pumps combined in series).</remarks>
    public static PumpSet InSeries(string name, string from, string to, Length elevation, IEnumerable<PlainPump> pumps)
    {
        PlainPump[] all = Checked(name, pumps);
        string[] places = [from, .. Enumerable.Range(1, all.Length - 1).Select(i => $"{name} {i}-{i + 1}"), to];
        return new(
            name,
            from,
            to,
            true,
            [.. places[1..^1].Select(place => Network.Node.Junction(place, elevation))],
            [.. all.Select((p, i) => new Line($"{name} {i + 1}", places[i], places[i + 1], p))]
        );
    }

    /// <summary>The flow of the pumps in a state.</summary>
    /// <param name="state">A state of a network with these pumps.</param>
    /// <returns>The volume flow, in m³/s.</returns>
    /// <exception cref="ArgumentException">The network does not contain these pumps.</exception>
    public VolumeFlow FlowIn(NetworkState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        double[] flows = [.. Lines.Select(l => state.FlowIn(l.Name).InSi())];
        return SiUnits.VolumeFlow(isSeries ? flows[0] : flows.Sum());
    }

    /// <summary>
    /// Pressure downstream less that upstream of the pumps, as gauges there read it, height included.
    /// </summary>
    /// <param name="state">A state of a network with these pumps.</param>
    /// <returns>The rise, in Pa.</returns>
    /// <exception cref="ArgumentException">The network does not contain these pumps.</exception>
    /// <exception cref="InvalidOperationException">An end is cut off, so that its pressure is not determined.</exception>
    public Pressure RiseIn(NetworkState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.PressureAt(to) - state.PressureAt(from);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Lines.Length} lines");

    private static PlainPump[] Checked(string name, IEnumerable<PlainPump> pumps)
    {
        Guard.Name(name);
        ArgumentNullException.ThrowIfNull(pumps);
        PlainPump[] all = Lists.NoNulls(pumps);
        Guard.InRange(all.Length, 1, PlainPump.MostPumps, nameof(pumps), part: name);
        return all;
    }
}
