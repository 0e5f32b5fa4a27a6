using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A network with switched pumps, prepared for each set of running pumps.</summary>
internal sealed class SwitchedNetwork
{
    private readonly ImmutableArray<SwitchedPump> pumps;
    private readonly NetworkPlan[] plans;
    private readonly double manifold;

    private SwitchedNetwork(ImmutableArray<SwitchedPump> pumps, NetworkPlan[] plans, double manifold) =>
        (this.pumps, this.plans, this.manifold) = (pumps, plans, manifold);

    /// <summary>Prepares the cases; null for a network without switched pumps.</summary>
    /// <param name="links">The links of the network.</param>
    /// <param name="prepare">Prepares the network with other links of the same names.</param>
    internal static SwitchedNetwork? Of(Line[] links, Func<Line[], NetworkPlan> prepare)
    {
        ImmutableArray<SwitchedPump> pumps = SwitchedPump.Of(links.Select(l => (l.Name, l.Switch)));
        return pumps.IsEmpty
            ? null
            : new(
                pumps,
                [
                    .. Enumerable
                        .Range(0, 1 << pumps.Length)
                        .Select(running => prepare([.. links.Select(l => Stopped(pumps, running, l))])),
                ],
                double.NaN
            );
    }

    /// <summary>The same cases at conditions.</summary>
    /// <param name="conditions">The conditions.</param>
    /// <param name="given">The settings of the parts there.</param>
    /// <exception cref="ArgumentException">A switch watches the manifold, and its pressure is not given.</exception>
    internal SwitchedNetwork At(NetworkConditions conditions, (int Link, double[] Settings)[] given)
    {
        if (
            conditions.Manifold is null
            && pumps.FirstOrDefault(p => p.By.Kind == PumpSwitchKind.ManifoldAbove) is { } blind
        )
        {
            throw new RefusedArgumentException(
                RefusalCode.Missing,
                $"Must give the {"pressure in the manifold":missing}, which the switch of line '{blind.Name:part}' watches; the conditions do not.",
                nameof(conditions)
            );
        }

        return new(
            pumps,
            Array.ConvertAll(
                plans,
                p =>
                    p.At(
                        conditions.DensitySi,
                        conditions.ViscositySi,
                        [.. given.Where(g => p.Links[g.Link].Law.SettingCount == g.Settings.Length)]
                    )
            ),
            conditions.Manifold?.Si ?? double.NaN
        );
    }

    /// <summary>A line after a state of its network.</summary>
    internal static Line After(Line line, NetworkState last) =>
        line.Switch is { } by ? line.SwitchedBy(After(by, line.Name, last)) : line;

    /// <summary>All consistent states.</summary>
    internal ImmutableArray<Network.Solution> All() =>
        new SwitchChoice<Network.Solution>(pumps, new States(this, NetworkStates.All)).All();

    /// <summary>The consistent state; of several, that of the pumps that were running.</summary>
    internal NetworkState One(PlainPump.ApproachSide? side) =>
        new SwitchChoice<Network.Solution>(pumps, new States(this, plan => [new(NetworkStates.One(plan, side), true)]))
            .One()
            .State;

    private static PumpSwitch After(PumpSwitch by, string name, NetworkState last) =>
        by.After(last.ConditionOf(name) != Network.LineCondition.Stopped);

    private static Line Stopped(ImmutableArray<SwitchedPump> pumps, int running, Line link) =>
        SwitchedPump.Runs(pumps, running, link.Name) ? link : link.Unswitched(new StoppedPump(link.Part));

    private sealed class States(SwitchedNetwork network, Func<NetworkPlan, ImmutableArray<Network.Solution>> solve)
        : ISwitchedStates<Network.Solution>
    {
        /// <inheritdoc />
        public string Sought => NetworkVerdict.Sought;

        /// <inheritdoc />
        public ImmutableArray<Network.Solution> Solve(int running) => solve(network.plans[running]);

        /// <inheritdoc />
        public double ValueIn(Network.Solution state, SwitchedPump pump) => pump.ValueIn(state.State, network.manifold);

        /// <inheritdoc />
        public Network.Solution With(Network.Solution state, IEnumerable<string> remarks) =>
            new(remarks.Aggregate(state.State, (s, remark) => s.With(remark)), state.IsStable);
    }
}
