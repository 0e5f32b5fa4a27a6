using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The cause of a pressure below vacuum where nothing is drawn, for the text of a refusal.</summary>
internal static class SuctionSide
{
    /// <summary>A sentence that names the pumps that draw from the region of a node.</summary>
    internal static RefusalText Words(NetworkWork<Real> work, int node)
    {
        NetworkPlan plan = work.Plan;
        double noFlow = work.NoFlow().Value;
        HashSet<int> reached = [node];
        Stack<int> waiting = new(reached);
        while (waiting.TryPop(out int at))
        {
            foreach (int e in plan.LinksAt(at))
            {
                int other = plan.From[e] == at ? plan.To[e] : plan.From[e];
                bool follows = !plan.Links[e].Law.IsPump && work.IsOpen(e, noFlow);
                if (follows && other < plan.Unknown && reached.Add(other))
                {
                    waiting.Push(other);
                }
            }
        }

        string[] pumps =
        [
            .. plan
                .Links.Index()
                .Where(l => l.Item.Law.IsPump && reached.Contains(plan.From[l.Index]))
                .Select(l => l.Item.Name),
        ];
        return pumps.Length == 0
            ? (RefusalText)"Nothing is drawn, but what stands in the network would tear off."
            : $"Too little can flow to where these draw: {pumps:part}.";
    }
}
