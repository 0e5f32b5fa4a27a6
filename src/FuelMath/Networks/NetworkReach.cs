using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>Finds the pressures that a solution leaves open, where one-way parts without flow are the only ways.</summary>
/// <remarks>
/// Behind such a part any pressure above the one ahead satisfies the equations. What a network fills by itself comes to
/// the pressure ahead, less what the part needs to open: that one is put in. A region that nothing can fill keeps what it
/// had, which a steady state does not know: it is cut off.
/// </remarks>
internal static class NetworkReach
{
    /// <summary>Finds the nodes whose pressure is determined, and fills what the network fills by itself.</summary>
    internal static void Find(NetworkWork<Real> work, double noFlow)
    {
        NetworkPlan plan = work.Plan;
        bool[] known = work.Notes.Known;
        Array.Clear(known, 0, plan.Unknown);
        Array.Fill(known, true, plan.Unknown, known.Length - plan.Unknown);
        int waiting = 0;
        for (int e = 0; e < plan.Links.Length; e++)
        {
            waiting = Follow(work, e, noFlow, waiting);
        }

        Spread(work, noFlow, waiting);
        while (Array.IndexOf(known, false) >= 0 && Fill(work, noFlow) is >= 0 and int filled)
        {
            Spread(work, noFlow, filled);
        }
    }

    /// <summary>Follows the open ways from the nodes that wait; their pressures are those of the solution.</summary>
    private static void Spread(NetworkWork<Real> work, double noFlow, int waiting)
    {
        int[] nodes = work.Notes.Waiting;
        while (waiting > 0)
        {
            waiting--;
            foreach (int e in work.Plan.LinksAt(nodes[waiting]))
            {
                waiting = Follow(work, e, noFlow, waiting);
            }
        }
    }

    /// <summary>Lets the ends of a link know each other, if it is open; gives how many nodes wait then.</summary>
    private static int Follow(NetworkWork<Real> work, int e, double noFlow, int waiting)
    {
        if (!IsOpen(work, e, noFlow))
        {
            return waiting;
        }

        NetworkPlan plan = work.Plan;
        bool up = work.FromUp[e].Value != 0;
        bool down = work.ToDown[e].Value != 0;
        waiting = Know(work.Notes, plan.From[e], up, plan.To[e], down, waiting);
        return Know(work.Notes, plan.To[e], down, plan.From[e], up, waiting);
    }

    /// <summary>
    /// The near end has its pressure from a link, if the link feels no far end or one that is known itself.
    /// </summary>
    private static int Know(StateNotes notes, int near, bool feelsNear, int far, bool feelsFar, int waiting)
    {
        if (notes.Known[near] || !feelsNear || (feelsFar && !notes.Known[far]))
        {
            return waiting;
        }

        notes.Known[near] = true;
        notes.Waiting[waiting] = near;
        return waiting + 1;
    }

    /// <summary>
    /// Gives one region behind a one-way part the pressure to which it fills: the highest that any part gives. Leaves its
    /// nodes waiting and says how many; -1 when there is no such region.
    /// </summary>
    private static int Fill(NetworkWork<Real> work, double noFlow)
    {
        NetworkPlan plan = work.Plan;
        bool[] known = work.Notes.Known;
        int found = -1;
        double highest = double.NegativeInfinity;
        for (int e = 0; e < plan.Links.Length; e++)
        {
            if (known[plan.From[e]] && !known[plan.To[e]] && !IsOpen(work, e, noFlow))
            {
                double filled = FilledTo(work, e);
                if (filled > highest)
                {
                    (highest, found) = (filled, plan.To[e]);
                }
            }
        }

        if (found < 0)
        {
            return -1;
        }

        // Nothing flows in there, so that one pressure holds wherever open ways lead.
        int[] nodes = work.Notes.Waiting;
        int count = 1;
        (nodes[0], known[found]) = (found, true);
        for (int next = 0; next < count; next++)
        {
            int node = nodes[next];
            work.Pressure[node] = new Real(highest);
            foreach (int e in plan.LinksAt(node))
            {
                int other = plan.From[e] == node ? plan.To[e] : plan.From[e];
                if (!known[other] && IsOpen(work, e, noFlow))
                {
                    (nodes[count], known[other]) = (other, true);
                    count++;
                }
            }
        }

        return count;
    }

    /// <summary>Where a part without flow just opens, Pa at elevation zero; minus infinity where it can't fill anything.</summary>
    private static double FilledTo(NetworkWork<Real> work, int e)
    {
        double ahead = work.Pressure[work.Plan.From[e]].Value;
        return work.Plan.Links[e].Part.FilledTo(work, e, ahead);
    }

    /// <summary>Whether a link joins its ends: not when it is one-way and nothing flows, nor at a commanded flow.</summary>
    internal static bool IsOpen(NetworkWork<Real> work, int e, double noFlow)
    {
        double give = Math.Max(Math.Abs(work.FromUp[e].Value), Math.Abs(work.ToDown[e].Value));
        return work.Plan.Links[e].Part.IsOpenIn(work, e, give, noFlow);
    }
}
