using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A network with some of its switched pumps running, and what comes of it. Immutable.</summary>
internal sealed class SwitchCase
{
    private readonly ImmutableArray<SwitchedPump> pumps;
    private readonly int running;

    private SwitchCase(ImmutableArray<SwitchedPump> pumps, int running) =>
        (this.pumps, this.running) = (pumps, running);

    /// <summary>The states whose switches leave everything as it is.</summary>
    internal ImmutableArray<NetworkSolution> Lasting { get; private init; } = [];

    /// <summary>Why there are none, as a clause that follows <see cref="Label"/>.</summary>
    internal string Reason { get; private init; } = "";

    /// <summary>The set of running pumps that a switch makes of this one; null where none acts or several at once do.</summary>
    internal int? Next { get; private init; }

    /// <summary>What runs and what does not: "'second' running".</summary>
    internal string Label =>
        string.Join(" and ", pumps.Select((p, i) => $"'{p.Name}' {(Runs(running, i) ? "running" : "stopped")}"));

    internal static bool Runs(int running, int pump) => (running & (1 << pump)) != 0;

    /// <summary>Solves the case.</summary>
    /// <param name="pumps">The switched pumps.</param>
    /// <param name="running">A bit for each that runs.</param>
    /// <param name="solve">Gives the states of the network with those running.</param>
    /// <exception cref="OutsideTableException">A pump would run outside its data.</exception>
    internal static SwitchCase Of(
        ImmutableArray<SwitchedPump> pumps,
        int running,
        Func<ImmutableArray<NetworkSolution>> solve
    )
    {
        ImmutableArray<NetworkSolution> all;
        try
        {
            all = solve();
        }
        catch (NoSolutionException none)
        {
            return new SwitchCase(pumps, running) { Reason = $"there is no state: {none.Reason.TrimEnd('.')}" };
        }

        return new SwitchCase(pumps, running)
        {
            Lasting =
            [
                .. all.Where(s => Against(pumps, running, s.State).Length == 0)
                    .Select(s => new NetworkSolution(
                        pumps
                            .Select((p, i) => p.Words(s.State, Runs(running, i)))
                            .Aggregate(s.State, (t, w) => t.With(w)),
                        s.IsStable
                    )),
            ],
            Next = all.Length == 1 ? After(pumps, running, all[0].State) : null,
            Reason = string.Join("; or ", all.Select(s => Against(pumps, running, s.State)).Where(a => a.Length > 0)),
        };
    }

    private static int? After(ImmutableArray<SwitchedPump> pumps, int running, NetworkState state)
    {
        int[] acting =
        [
            .. Enumerable.Range(0, pumps.Length).Where(i => pumps[i].Against(state, Runs(running, i)).Length > 0),
        ];
        return acting.Length == 1 ? running ^ (1 << acting[0]) : null;
    }

    private static string Against(ImmutableArray<SwitchedPump> pumps, int running, NetworkState state) =>
        string.Join(" and ", pumps.Select((p, i) => p.Against(state, Runs(running, i))).Where(a => a.Length > 0));
}
