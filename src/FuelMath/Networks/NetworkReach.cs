using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Finds which nodes hang on a given pressure by open ways, and which region each of the others belongs to: one that
/// nothing flows into or out of, so that its own links leave its level open.
/// </summary>
/// <remarks>
/// Something may flow in circles inside such a region: it then has no one pressure, but still one level. Its level is
/// found by <see cref="NetworkFilling"/>.
/// </remarks>
internal sealed class NetworkReach(NetworkPlan plan)
{
    /// <summary>The region that hangs on given pressures.</summary>
    internal const int Joined = 0;

    private readonly int[] regions = new int[plan.Nodes.Length];
    private readonly int[] members = new int[plan.Nodes.Length];
    private readonly int[] begins = new int[plan.Nodes.Length + 2];

    /// <summary>How many regions there are, the joined one included.</summary>
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

    /// <summary>Follows the open ways from the members that were put down last; gives where the region ends.</summary>
    private int Spread(NetworkWork<Real> work, double noFlow, int next, int end)
    {
        for (; next < end; next++)
        {
            int node = members[next];
            foreach (int e in plan.LinksAt(node))
            {
                int other = plan.From[e] == node ? plan.To[e] : plan.From[e];
                if (regions[other] < 0 && IsOpen(work, e, noFlow))
                {
                    (regions[other], members[end]) = (regions[node], other);
                    end++;
                }
            }
        }

        return end;
    }

    private static bool IsOpen(NetworkWork<Real> work, int e, double noFlow) =>
        work.Plan.Links[e].Law.IsOpenIn(work, e, noFlow);
}
