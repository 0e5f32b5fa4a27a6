using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Solves a network that may have several states, and chooses among them.</summary>
internal static class NetworkStates
{
    /// <summary>
    /// All states. Each pump with a hump is searched by itself, because fixed pressures part them, and each of its meeting
    /// points comes with each of the others', the flow of the last pump rising first.
    /// </summary>
    internal static ImmutableArray<Network.Solution> All(NetworkPlan plan)
    {
        using NetworkWork<Real> work = plan.Rent<Real>();
        if (plan.Humps is [])
        {
            return [new(NetworkVerdict.State(work, Real.All(work.Solve(warm: false))), true)];
        }

        HumpSearch[] searches = [.. plan.Humps.Select(h => new HumpSearch(work, h))];
        foreach (HumpSearch search in searches)
        {
            search.Find();
        }

        int count = searches.Aggregate(1, (n, s) => checked(n * s.Meetings.Count));
        Network.Solution[] all = [.. Enumerable.Range(0, count).Select(i => Solution(work, searches, Places(i)))];
        string[] remarks = [.. searches.Select((_, k) => $"{Humped(plan, k)} {Meetings(k)}.")];
        return [.. all.Select(s => new Network.Solution(remarks.Aggregate(s.State, (t, r) => t.With(r)), s.IsStable))];

        // The meeting point of each pump in a state.
        int[] Places(int state)
        {
            int[] places = new int[searches.Length];
            for (int k = searches.Length - 1; k >= 0; k--)
            {
                (state, places[k]) = Math.DivRem(state, searches[k].Meetings.Count);
            }

            return places;
        }

        // What a pump does where the others are at their first meeting points.
        string Meetings(int pump)
        {
            int apart = searches.Skip(pump + 1).Aggregate(1, (n, s) => n * s.Meetings.Count);
            string[] places =
            [
                .. searches[pump]
                    .Meetings.Select(
                        (m, i) =>
                            $"{NetworkVerdict.LitersPerHour(all[i * apart].State.FlowSi(plan.Humps[pump]))} ({(m.IsStable ? "stable" : "not stable")})"
                    ),
            ];
            return places.Length == 1
                ? $"and meets the network at one flow only: {places[0]}"
                : $"and meets the network at {places.Length} flows: {string.Join(", ", places)}";
        }
    }

    /// <summary>The only stable state, or the one reached from a side.</summary>
    internal static NetworkState One(NetworkPlan plan, PlainPump.ApproachSide? side)
    {
        ImmutableArray<Network.Solution> all = All(plan);
        NetworkState[] stable = [.. all.Where(s => s.IsStable).Select(s => s.State)];
        return (stable, side) switch
        {
            ([NetworkState only], _) => only,
            (_, null) => throw new NoSolutionException(
                RefusalCode.SeveralStates,
                NetworkVerdict.Sought,
                $"{string.Join(' ', all[0].State.Remarks.TakeLast(plan.Humps.Length)):explanation} Ask for all of them, or say from which side {(plan.Humps.Length == 1 ? "the pump comes" : "the pumps come"):explanation}.",
                plan.Links[plan.Humps[0]].Name,
                double.NaN,
                all[0].State.Iterations
            ),
            (_, PlainPump.ApproachSide.NoFlow) => stable[0].With("This one is come to from no flow."),
            _ => stable[^1].With("This one is come to from free flow."),
        };
    }

    private static string Humped(NetworkPlan plan, int pump) =>
        $"The curve of '{plan.Links[plan.Humps[pump]].Name}' has a hump";

    /// <summary>The state in which each pump is at one of its meeting points.</summary>
    /// <exception cref="NoSolutionException">It is not a state that the network can be in.</exception>
    /// <exception cref="OutsideTableException">A pump runs outside its data there.</exception>
    private static Network.Solution Solution(NetworkWork<Real> work, HumpSearch[] searches, int[] places)
    {
        bool isStable = true;
        for (int k = 0; k < searches.Length; k++)
        {
            searches[k].Take(places[k]);
            isStable &= searches[k].Meetings[places[k]].IsStable;
        }

        searches[^1].Solve();
        foreach (HumpSearch search in searches)
        {
            search.PutCurve();
        }

        work.TakeOver(Real.Of(searches.Sum(s => s.Iterations)), work.StartScale);

        // The same flows and pressures, now judged by the pumps' own curves.
        Real error = work.Linearize(Real.Less(Real.Of(0), Real.Of(1)));
        double greatest = 0;
        for (int i = 0; i < work.Plan.Unknown; i++)
        {
            greatest = Math.Max(greatest, Math.Abs(work.Pressure[i].Value));
        }

        return new(NetworkVerdict.State(work, error.Value <= HumpSearch.Noise(greatest)), isStable);
    }
}
