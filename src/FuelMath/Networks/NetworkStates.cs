using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Solves a network that may have several states, and chooses among them.</summary>
internal static class NetworkStates
{
    /// <summary>All states, in the order of the flow of the pump with the hump.</summary>
    internal static ImmutableArray<NetworkSolution> All(NetworkPlan plan)
    {
        using NetworkWork<Real> work = plan.Rent<Real>();
        if (plan.Hump < 0)
        {
            return [new(NetworkVerdict.State(work, Real.All(work.Solve(warm: false))), true)];
        }

        HumpSearch search = new(work);
        ImmutableArray<NetworkSolution> all =
        [
            .. search.Meetings().Select(m => new NetworkSolution(search.State(m), m.IsStable)),
        ];
        string remark = $"{Humped(plan)} {Meetings(plan, all)}.";
        return [.. all.Select(s => new NetworkSolution(s.State.With(remark), s.IsStable))];
    }

    /// <summary>The only stable state, or the one reached from a side.</summary>
    internal static NetworkState One(NetworkPlan plan, ComingFrom? side)
    {
        ImmutableArray<NetworkSolution> all = All(plan);
        return (all.Count(s => s.IsStable), side) switch
        {
            (1, null) => all.First(s => s.IsStable).State,
            (_, null) => throw new NoSolutionException(
                NetworkVerdict.Sought,
                $"{Humped(plan)} {Meetings(plan, all)}. Ask for all of them, or say from which side the pump comes.",
                plan.Links[plan.Hump].Name,
                double.NaN,
                all[0].State.Iterations
            ),
            (1, _) => all.First(s => s.IsStable).State,
            (_, ComingFrom.NoFlow) => all[0].State.With("This one is come to from no flow."),
            _ => all[^1].State.With("This one is come to from free flow."),
        };
    }

    private static string Humped(NetworkPlan plan) => $"The curve of '{plan.Links[plan.Hump].Name}' has a hump";

    private static string Meetings(NetworkPlan plan, ImmutableArray<NetworkSolution> all)
    {
        string[] places =
        [
            .. all.Select(s =>
                $"{NetworkVerdict.LitersPerHour(s.State.FlowSi(plan.Hump))} ({(s.IsStable ? "stable" : "not stable")})"
            ),
        ];
        return places.Length == 1
            ? $"and meets the network at one flow only: {places[0]}"
            : $"and meets the network at {places.Length} flows: {string.Join(", ", places)}";
    }
}
