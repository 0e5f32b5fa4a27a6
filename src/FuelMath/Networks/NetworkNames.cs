using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace FuelMath;

/// <summary>The names of a network's nodes and lines, and the place of each. Shared by all plans of one network. Immutable.</summary>
internal sealed class NetworkNames
{
    private readonly Dictionary<string, int> nodes;
    private readonly Dictionary<string, int> lines;
    private readonly NetworkNames? part;

    /// <param name="nodes">The nodes, those of sought pressure first.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="part">
    /// The names of a network of which this one is made, and whose handles it takes, too; null where there is none.
    /// </param>
    /// <exception cref="InvalidOperationException">Nodes and lines do not begin with those of the part.</exception>
    internal NetworkNames(IEnumerable<Network.Node> nodes, IEnumerable<Line> lines, NetworkNames? part)
    {
        (Nodes, Lines) = ([.. nodes.Select(n => n.Name)], [.. lines.Select(l => l.Name)]);
        Junctions = [.. nodes.Where(n => !n.IsFixed).Select(n => n.Name)];
        (this.nodes, this.lines) = (Places(Nodes), Places(Lines));
        this.part = part;
        if (part is not null && !(Begins(Nodes, part.Nodes) && Begins(Lines, part.Lines)))
        {
            throw new InvalidOperationException("A network must begin with the nodes and lines of its part.");
        }
    }

    internal ImmutableArray<string> Nodes { get; }

    /// <summary>Those nodes whose pressure is sought.</summary>
    internal ImmutableArray<string> Junctions { get; }

    internal ImmutableArray<string> Lines { get; }

    /// <summary>The index of a node.</summary>
    /// <exception cref="ArgumentException">There is none of this name.</exception>
    internal int Node(string name, [CallerArgumentExpression(nameof(name))] string paramName = "")
    {
        ArgumentNullException.ThrowIfNull(name, paramName);
        return nodes.TryGetValue(name, out int i) ? i : throw Missing("node", name, nodes.Keys);
    }

    /// <summary>The index of a line.</summary>
    /// <exception cref="ArgumentException">There is none of this name.</exception>
    internal int Line(string name, [CallerArgumentExpression(nameof(name))] string paramName = "")
    {
        ArgumentNullException.ThrowIfNull(name, paramName);
        return lines.TryGetValue(name, out int i) ? i : throw Missing("line", name, lines.Keys);
    }

    /// <inheritdoc cref="Node(string, string)" />
    /// <exception cref="ArgumentException">The handle is of another network, or of none.</exception>
    internal int Node(Network.NodeHandle node) =>
        Knows(node.Names) ? node.Index : throw Foreign(node.Name, nameof(node));

    /// <inheritdoc cref="Line(string, string)" />
    /// <exception cref="ArgumentException">The handle is of another network, or of none.</exception>
    internal int Line(Network.LineHandle line) =>
        Knows(line.Names) ? line.Index : throw Foreign(line.Name, nameof(line));

    /// <summary>Whether another network has the same names in the same order.</summary>
    internal bool IsLike(NetworkNames other) =>
        ReferenceEquals(this, other)
        || (
            Junctions.Length == other.Junctions.Length
            && Nodes.SequenceEqual(other.Nodes, StringComparer.Ordinal)
            && Lines.SequenceEqual(other.Lines, StringComparer.Ordinal)
        );

    private bool Knows(NetworkNames? names) =>
        names is not null && (ReferenceEquals(names, this) || ReferenceEquals(names, part));

    private static bool Begins(ImmutableArray<string> all, ImmutableArray<string> first) =>
        all.Take(first.Length).SequenceEqual(first, StringComparer.Ordinal);

    private static Dictionary<string, int> Places(ImmutableArray<string> names) =>
        names.Index().ToDictionary(n => n.Item, n => n.Index, StringComparer.Ordinal);

    private static RefusedArgumentException Missing(string what, string name, IEnumerable<string> known) =>
        new(
            RefusalCode.NotOneOf,
            $"There is no {what:subject} '{name:given}'. Known: {known.Order(StringComparer.Ordinal):allowed}.",
            nameof(name)
        );

    private static RefusedArgumentException Foreign(string name, string paramName) =>
        name.Length == 0
            ? new(RefusalCode.Missing, "Must be a handle that a network found; it is an empty one.", paramName)
            : new(
                RefusalCode.OfAnother,
                $"Must be a handle of this network; that of '{name:part}' is of another.",
                paramName
            );
}
