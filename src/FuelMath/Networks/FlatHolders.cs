using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Regulators without slope that hold the pressure of one node: if they hold the same pressure, the equations do not
/// determine the flow through each.
/// </summary>
internal sealed class FlatHolders
{
    private readonly ImmutableArray<int[]> groups;

    internal FlatHolders(NetworkPlan plan) =>
        groups = [
            .. plan
                .Links.Index()
                .Where(l => HeldNode(plan, l.Index) >= 0)
                .GroupBy(l => HeldNode(plan, l.Index))
                .Where(g => g.Skip(1).Any())
                .Select(g => g.Select(l => l.Index).ToArray()),
        ];

    /// <summary>Sentences on flows that a state does not determine; empty where all are determined.</summary>
    internal ImmutableArray<string> Remarks(NetworkWork<Real> work)
    {
        if (groups.IsEmpty)
        {
            return [];
        }

        double noFlow = work.NoFlow().Value;
        var remarks = ImmutableArray.CreateBuilder<string>();
        foreach (int[] group in groups)
        {
            int[] holding = Array.FindAll(group, e => IsHolding(work, e));
            if (holding.Length > 1 && Array.Exists(holding, e => work.Flow[e].Value > noFlow))
            {
                string names = string.Join(" and ", holding.Select(e => $"'{work.Plan.Links[e].Name}'"));
                string node = work.Plan.Nodes[HeldNode(work.Plan, holding[0])].Name;
                remarks.Add(
                    $"What flows through {names} each is not determined: they hold one pressure at '{node}' whatever flows."
                );
            }
        }

        return remarks.ToImmutable();
    }

    private static int HeldNode(NetworkPlan plan, int link) =>
        plan.Links[link].Law.FlatlyHeld(plan.From[link], plan.To[link]);

    /// <summary>
    /// Whether its law is met both at its flow and at zero flow, so that its flow at this pressure is not determined.
    /// </summary>
    private static bool IsHolding(NetworkWork<Real> work, int link)
    {
        double held = Math.Abs(work.Pressure[HeldNode(work.Plan, link)].Value);
        Real limit = NetworkWork<Real>.PressureLimit(new Real(held));
        return Math.Abs(work.SurplusAt(link, default).Pressure.Value) <= limit.Value;
    }
}
