using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Finds the nodes that are connected to a given pressure by open links, and the region of each of the others: a region
/// without inflow or outflow, whose level its own links do not determine.
/// </summary>
/// <remarks>
/// Fuel may circulate inside such a region: it then has several pressures but one level, which
/// <see cref="NetworkFilling"/> finds.
/// </remarks>
internal sealed class NetworkReach(NetworkPlan plan)
{
    /// <summary>The region connected to given pressures.</summary>
    internal const int Joined = 0;

    private readonly int[] regions = new int[plan.Nodes.Length];
    private readonly int[] members = new int[plan.Nodes.Length];
    private readonly int[] begins = new int[plan.Nodes.Length + 2];

    /// <summary>Number of regions, including the joined one.</summary>
    internal int Count { get; private set; }

    /// <summary>The region of a node.</summary>
    internal int Of(int node) => regions[node];

    /// <summary>The nodes of a region.</summary>
    internal ReadOnlySpan<int> Members(int region) =>
        members.AsSpan(begins[region], begins[region + 1] - begins[region]);

    /// <summary>Finds the regions of a solved workspace.</summary>
    internal void Find(NetworkWork<Real> work, double noFlow)
    {
        Array.Fill(regions, -1);
        int end = 0;
        for (int i = plan.Unknown; i < regions.Length; i++)
        {
            (regions[i], members[end]) = (Joined, i);
            end++;
        }

        begins[0] = 0;
        Count = 1;
        end = Spread(work, noFlow, 0, end);
        for (int i = 0; i < plan.Unknown; i++)
        {
            if (regions[i] < 0)
            {
                (begins[Count], regions[i], members[end]) = (end, Count, i);
                Count++;
                end = Spread(work, noFlow, end, end + 1);
            }
        }

        begins[Count] = end;
    }

    /// <summary>Follows the open links from the last members; returns the end of the region.</summary>
    private int Spread(NetworkWork<Real> work, double noFlow, int next, int end)
    {
        for (; next < end; next++)
        {
            int node = members[next];
            foreach (int e in plan.LinksAt(node))
            {
                int other = plan.From[e] == node ? plan.To[e] : plan.From[e];
                if (regions[other] < 0 && work.IsOpen(e, noFlow))
                {
                    (regions[other], members[end]) = (regions[node], other);
                    end++;
                }
            }
        }

        return end;
    }
}
