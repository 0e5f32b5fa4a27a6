namespace FuelMath;

/// <summary>
/// The links that must carry flow so that every junction is connected to a given pressure: if they do, nothing is cut
/// off and nothing needs filling.
/// </summary>
/// <remarks>
/// Pipes and similar parts always connect their ends; one-way parts do while something flows. Regulators and capped
/// injectors are not counted, because their condition depends on more.
/// </remarks>
internal sealed class OpenWays
{
    internal OpenWays(NetworkPlan plan)
    {
        var reached = new bool[plan.Nodes.Length];
        Stack<int> waiting = new();
        void Reach(int node)
        {
            if (!reached[node])
            {
                reached[node] = true;
                waiting.Push(node);
            }
        }

        for (int i = plan.Unknown; i < reached.Length; i++)
        {
            Reach(i);
        }

        List<int> needed = [.. plan.Links.Index().Where(l => l.Item.Law.IsPump).Select(l => l.Index)];
        Queue<int> oneWay = new();
        while (waiting.Count > 0 || oneWay.Count > 0)
        {
            if (waiting.TryPop(out int node))
            {
                foreach (int e in plan.LinksAt(node))
                {
                    if (!plan.Links[e].Law.Joins)
                    {
                        continue;
                    }

                    if (plan.Links[e].Law.IsOneWay)
                    {
                        oneWay.Enqueue(e);
                    }
                    else
                    {
                        Reach(plan.From[e]);
                        Reach(plan.To[e]);
                    }
                }
            }
            else
            {
                int e = oneWay.Dequeue();
                if (!(reached[plan.From[e]] && reached[plan.To[e]]))
                {
                    needed.Add(e);
                    Reach(plan.From[e]);
                    Reach(plan.To[e]);
                }
            }
        }

        Needed = [.. needed];
        Suffice = !Array.Exists(reached, r => !r);
    }

    /// <summary>Whether such links suffice.</summary>
    internal bool Suffice { get; }

    /// <summary>The one-way links that must carry flow, including every pump.</summary>
    internal int[] Needed { get; }
}
