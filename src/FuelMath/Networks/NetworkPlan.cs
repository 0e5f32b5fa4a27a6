using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A network prepared for solving: nodes, links, the order of elimination and the links grouped by law. The changing
/// state of a solve is in a <see cref="NetworkWork{T}"/>.
/// </summary>
/// <remarks>
/// For repeated solves of the same network: rent a workspace, set it, solve it, read it. If the plan has no fluid, set
/// it first.
/// </remarks>
internal sealed class NetworkPlan
{
    private readonly int[][] linksAt;
    private readonly ConcurrentDictionary<Type, object> pools = [];

    /// <summary>Prepares a network. The caller has checked names, ends and reach.</summary>
    /// <param name="nodes">The nodes.</param>
    /// <param name="links">The links.</param>
    /// <param name="like">
    /// A plan of the same nodes and of lines between the same ones, whose names and order of elimination it shares.
    /// </param>
    /// <param name="part">The names of a network that it begins with, whose handles it takes, too.</param>
    internal NetworkPlan(
        IReadOnlyList<Network.Node> nodes,
        IReadOnlyList<Line> links,
        NetworkPlan? like = null,
        NetworkNames? part = null
    )
    {
        (Density, Viscosity) = (double.NaN, double.NaN);

        // Unknown pressures first, so that the matrix holds only these.
        Nodes = [.. nodes.Where(n => !n.IsFixed), .. nodes.Where(n => n.IsFixed)];
        Links = [.. links];
        MostSettings = Links.Max(l => l.Law.SettingCount);
        Unknown = nodes.Count(n => !n.IsFixed);
        Humps = [.. Links.Index().Where(l => l.Item.Law.HumpedCurve.Length > 0).Select(l => l.Index)];
        if (like is not null)
        {
            (Names, From, To, linksAt, Order) = (like.Names, like.From, like.To, like.linksAt, like.Order);
        }
        else
        {
            Names = new NetworkNames(Nodes, Links, part);
            From = [.. Links.Select(l => Names.Node(l.From, "lines"))];
            To = [.. Links.Select(l => Names.Node(l.To, "lines"))];
            ILookup<int, int> around = From.Index().Concat(To.Index()).ToLookup(end => end.Item, end => end.Index);
            linksAt = [.. Enumerable.Range(0, Nodes.Length).Select(i => around[i].ToArray())];
            Order = new Elimination(
                Unknown,
                From.Zip(To).Where(e => e.First < Unknown && e.Second < Unknown).Select(e => (e.First, e.Second))
            );
        }

        // Links of one law follow each other in one group.
        Groups = [.. Links.Index().GroupBy(l => l.Item.Law.Law).Select(g => g.Select(l => l.Index).ToArray())];
        Place = new (int Group, int Index)[Links.Length];
        foreach ((int g, int[] members) in Groups.Index())
        {
            foreach ((int i, int link) in members.Index())
            {
                Place[link] = (g, i);
            }
        }

        Flat = new FlatHolders(this);
    }

    /// <summary>The same network with another fluid, and other settings of some links.</summary>
    private NetworkPlan(NetworkPlan other, double density, double viscosity, (int Link, double[] Settings)[] given)
    {
        (Density, Viscosity, Given) = (density, viscosity, given);
        (Names, linksAt) = (other.Names, other.linksAt);
        (Nodes, Links, Unknown, Humps) = (other.Nodes, other.Links, other.Unknown, other.Humps);
        (From, To, MostSettings) = (other.From, other.To, other.MostSettings);
        (Order, Groups, Place, Flat) = (other.Order, other.Groups, other.Place, other.Flat);
    }

    /// <summary>Density of its fluid, kg/m³; NaN where none was given.</summary>
    internal double Density { get; }

    /// <summary>Dynamic viscosity of its fluid, Pa s.</summary>
    internal double Viscosity { get; }

    /// <summary>Junctions first, then nodes of fixed pressure.</summary>
    internal Network.Node[] Nodes { get; }

    /// <summary>In the order they were given.</summary>
    internal Line[] Links { get; }

    /// <summary>Settings of links that differ from those of their parts.</summary>
    internal (int Link, double[] Settings)[] Given { get; } = [];

    internal NetworkNames Names { get; }

    /// <summary>Number of unknown pressures: nodes 0 to Unknown - 1.</summary>
    internal int Unknown { get; }

    /// <summary>The pumps whose curves have humps, no two in one region.</summary>
    internal int[] Humps { get; }

    /// <summary>Regulators whose flows may not be determined.</summary>
    internal FlatHolders Flat { get; }

    /// <summary>The upstream node of each link.</summary>
    internal int[] From { get; }

    /// <summary>The downstream node of each link.</summary>
    internal int[] To { get; }

    /// <summary>The links that have an end at a node.</summary>
    internal ReadOnlySpan<int> LinksAt(int node) => linksAt[node];

    /// <summary>The largest number of settings of a link.</summary>
    internal int MostSettings { get; }

    internal Elimination Order { get; }

    /// <summary>The links of each law.</summary>
    internal int[][] Groups { get; }

    /// <summary>The place of each link among the groups.</summary>
    internal (int Group, int Index)[] Place { get; }

    /// <inheritdoc cref="NetworkNames.Node(string, string)" />
    internal int Node(string name, [CallerArgumentExpression(nameof(name))] string paramName = "") =>
        Names.Node(name, paramName);

    /// <inheritdoc cref="NetworkNames.Line(string, string)" />
    internal int Link(string name, [CallerArgumentExpression(nameof(name))] string paramName = "") =>
        Names.Line(name, paramName);

    /// <inheritdoc cref="NetworkPlan(NetworkPlan, double, double, ValueTuple{int, double[]}[])" />
    internal NetworkPlan At(double density, double viscosity, (int Link, double[] Settings)[] given) =>
        new(this, density, viscosity, given);

    /// <summary>A workspace with the description's own settings; dispose of it to return it.</summary>
    internal NetworkWork<T> Rent<T>()
        where T : struct, IScalar<T> => PoolOf<T>().Rent();

    private WorkPool<T> PoolOf<T>()
        where T : struct, IScalar<T> =>
        pools.TryGetValue(typeof(T), out object? found)
            ? (WorkPool<T>)found
            : (WorkPool<T>)pools.GetOrAdd(typeof(T), static (_, plan) => new WorkPool<T>(plan), this);

    /// <summary>A state that has the same nodes and links.</summary>
    /// <exception cref="ArgumentException">It has others.</exception>
    internal NetworkState Like(NetworkState start)
    {
        ArgumentNullException.ThrowIfNull(start);
        return Names.IsLike(start.Plan.Names)
            ? start
            : throw new RefusedArgumentException(
                RefusalCode.OfAnother,
                "Must be a state of a network with the same nodes and links.",
                nameof(start)
            );
    }

    internal Ends EndsOf(int link)
    {
        int f = From[link];
        int t = To[link];
        return new(link, f, t, Slot(t, f), Slot(f, t));
    }

    /// <summary>The slot of an element; the conductance to a given pressure is kept with its node.</summary>
    private int Slot(int row, int column) =>
        column >= Unknown ? Order.Slots
        : row >= Unknown ? Elimination.Slot(column)
        : Order.Slot(row, column);
}
