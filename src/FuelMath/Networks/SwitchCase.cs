using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A set of running switched pumps, and its states.</summary>
internal sealed class SwitchCase<T>
{
    private readonly ImmutableArray<SwitchedPump> pumps;
    private readonly ISwitchedStates<T> states;
    private readonly int running;

    /// <summary>Solves the case.</summary>
    /// <param name="pumps">The switched pumps.</param>
    /// <param name="running">A bit for each that runs.</param>
    /// <param name="states">Gives the states for this set.</param>
    /// <exception cref="OutsideTableException">A pump would run outside its data.</exception>
    internal SwitchCase(ImmutableArray<SwitchedPump> pumps, int running, ISwitchedStates<T> states)
    {
        (this.pumps, this.running, this.states) = (pumps, running, states);
        ImmutableArray<T> all;
        try
        {
            all = states.Solve(running);
        }
        catch (NoSolutionException none)
        {
            Reason = $"there is no state: {none.Reason.TrimEnd('.')}";
            return;
        }

        Lasting = [.. all.Where(s => Against(s).Length == 0).Select(Explained)];
        Next = all.Length == 1 ? After(all[0]) : null;
        Reason = string.Join("; or ", all.Select(Against).Where(a => a.Length > 0));
    }

    /// <summary>The consistent states: no switch would change.</summary>
    internal ImmutableArray<T> Lasting { get; } = [];

    /// <summary>Why there are none, as a clause after <see cref="Label"/>.</summary>
    internal string Reason { get; }

    /// <summary>The set of running pumps after a switch acts; null where none or several act at once.</summary>
    internal int? Next { get; }

    /// <summary>The running and stopped pumps in words: "'second' running".</summary>
    internal string Label =>
        string.Join(" and ", pumps.Select((p, i) => $"'{p.Name}' {(Runs(i) ? "running" : "stopped")}"));

    private bool Runs(int pump) => SwitchedPump.Runs(running, pump);

    private T Explained(T state) =>
        pumps
            .Select((p, i) => p.Words(states.ValueIn(state, p), Runs(i)))
            .Aggregate(state, (s, words) => states.With(s, words));

    private string Against(T state, int pump) => pumps[pump].Against(states.ValueIn(state, pumps[pump]), Runs(pump));

    private string Against(T state) =>
        string.Join(" and ", pumps.Select((_, i) => Against(state, i)).Where(a => a.Length > 0));

    private int? After(T state)
    {
        int[] acting = [.. Enumerable.Range(0, pumps.Length).Where(i => Against(state, i).Length > 0)];
        return acting.Length == 1 ? running ^ (1 << acting[0]) : null;
    }
}
