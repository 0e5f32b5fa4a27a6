using System.Collections.Immutable;
using System.Numerics;

namespace FuelMath;

/// <summary>A set of running switched pumps, and its states.</summary>
internal sealed class SwitchCase<T>
{
    private readonly ImmutableArray<SwitchedPump> pumps;
    private readonly ISwitchedStates<T> states;
    private readonly int running;
    private readonly ImmutableArray<T> all = [];
    private readonly string none = "";

    /// <summary>Solves the case.</summary>
    /// <param name="pumps">The switched pumps.</param>
    /// <param name="running">A bit for each that runs.</param>
    /// <param name="states">Gives the states for this set.</param>
    /// <exception cref="OutsideTableException">A pump would run outside its data.</exception>
    internal SwitchCase(ImmutableArray<SwitchedPump> pumps, int running, ISwitchedStates<T> states)
    {
        (this.pumps, this.running, this.states) = (pumps, running, states);
        try
        {
            all = states.Solve(running);
        }
        catch (NoSolutionException refusal)
        {
            none = $"there is no state: {refusal.Reason.TrimEnd('.')}";
            return;
        }

        Lasting = [.. all.Where(s => Acting(s) == 0).Select(s => states.With(s, Words(s)))];
        Next = all is [T only] && BitOperations.IsPow2(Acting(only)) ? running ^ Acting(only) : null;
    }

    /// <summary>The consistent states: no switch would change.</summary>
    internal ImmutableArray<T> Lasting { get; } = [];

    /// <summary>Why there are none, as a clause after <see cref="Label"/>.</summary>
    internal string Reason =>
        none.Length > 0 ? none : string.Join("; or ", all.Select(Against).Where(a => a.Length > 0));

    /// <summary>The set of running pumps after a switch acts; null where none or several act at once.</summary>
    internal int? Next { get; }

    /// <summary>The running and stopped pumps in words: "'second' running".</summary>
    internal string Label =>
        string.Join(" and ", pumps.Select((p, i) => $"'{p.Name}' {(Runs(i) ? "running" : "stopped")}"));

    private bool Runs(int pump) => SwitchedPump.Runs(running, pump);

    private IEnumerable<string> Words(T state) => pumps.Select((p, i) => p.Words(states.ValueIn(state, p), Runs(i)));

    private string Against(T state) =>
        string.Join(
            " and ",
            pumps.Select((p, i) => p.Against(states.ValueIn(state, p), Runs(i))).Where(a => a.Length > 0)
        );

    /// <summary>The switches that act in a state, a bit for each.</summary>
    private int Acting(T state)
    {
        int acting = 0;
        for (int i = 0; i < pumps.Length; i++)
        {
            acting |= pumps[i].By.Agrees(Runs(i), states.ValueIn(state, pumps[i])) ? 0 : 1 << i;
        }

        return acting;
    }
}
