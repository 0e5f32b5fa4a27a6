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
    /// <summary>A closing pressure below which a pump without flow still shows its own pressure, Pa.</summary>
    private const double ClearlyShut = 1;

    /// <summary>Whether each junction is cut off; fills the others.</summary>
    internal static bool[] CutOff(NetworkWork<Real> work, double noFlow)
    {
        NetworkPlan plan = work.Plan;
        var known = new bool[plan.Nodes.Length];
        Array.Fill(known, true, plan.Unknown, known.Length - plan.Unknown);
        Spread(work, noFlow, known);
        while (Array.IndexOf(known, false) >= 0 && Fill(work, noFlow, known))
        {
            Spread(work, noFlow, known);
        }

        return [.. known.Take(plan.Unknown).Select(k => !k)];
    }

    /// <summary>Follows the open ways, whose pressures are those of the solution.</summary>
    private static void Spread(NetworkWork<Real> work, double noFlow, bool[] known)
    {
        NetworkPlan plan = work.Plan;
        bool grew = true;
        while (grew)
        {
            grew = false;
            for (int e = 0; e < plan.Links.Length; e++)
            {
                if (IsOpen(work, e, noFlow))
                {
                    bool up = work.FromUp[e].Value != 0;
                    bool down = work.ToDown[e].Value != 0;
                    grew |= Know(plan.From[e], up, plan.To[e], down);
                    grew |= Know(plan.To[e], down, plan.From[e], up);
                }
            }
        }

        // The near end has its pressure from this link, if the link feels no far end or one that is known itself.
        bool Know(int near, bool feelsNear, int far, bool feelsFar)
        {
            bool now = !known[near] && feelsNear && (!feelsFar || known[far]);
            known[near] |= now;
            return now;
        }
    }

    /// <summary>Gives one region behind a one-way part the pressure to which it fills: the highest that any part gives.</summary>
    private static bool Fill(NetworkWork<Real> work, double noFlow, bool[] known)
    {
        NetworkPlan plan = work.Plan;
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
            return false;
        }

        // Nothing flows in there, so that one pressure holds wherever open ways lead.
        Stack<int> waiting = new([found]);
        while (waiting.TryPop(out int node))
        {
            known[node] = true;
            work.Pressure[node] = new Real(highest);
            for (int e = 0; e < plan.Links.Length; e++)
            {
                int other =
                    plan.From[e] == node ? plan.To[e]
                    : plan.To[e] == node ? plan.From[e]
                    : -1;
                if (other >= 0 && !known[other] && IsOpen(work, e, noFlow))
                {
                    waiting.Push(other);
                }
            }
        }

        return true;
    }

    /// <summary>Where a part without flow just opens, Pa at elevation zero; minus infinity where it can't fill anything.</summary>
    private static double FilledTo(NetworkWork<Real> work, int e)
    {
        double ahead = work.Pressure[work.Plan.From[e]].Value;
        return work.Plan.Links[e].Kind switch
        {
            LinkKind.CheckPipe => ahead,
            LinkKind.CheckValve => ahead - ((SquarePart)work.Plan.Links[e].Part).Opening,
            LinkKind.Pump => ahead - LossAtNoFlow(work, e),
            LinkKind.ReducingRegulator => Math.Min(ahead, work.Law<ReducingLaw<Real>>(e).Held.Value),
            _ => double.NegativeInfinity,
        };
    }

    private static double LossAtNoFlow(NetworkWork<Real> work, int e) =>
        work.Plan.Links[e].Part is PumpTablePart
            ? -work.Law<PumpTableLaw<Real>>(e).RiseAt(default).Number.Value
            : -((PumpPowerPart)work.Plan.Links[e].Part).Shutoff;

    /// <summary>Whether a link joins its ends: not when it is one-way and nothing flows, nor at a commanded flow.</summary>
    internal static bool IsOpen(NetworkWork<Real> work, int e, double noFlow)
    {
        NetworkLink link = work.Plan.Links[e];
        double give = Math.Max(Math.Abs(work.FromUp[e].Value), Math.Abs(work.ToDown[e].Value));
        double flow = work.Flow[e].Value;
        return link.Kind switch
        {
            LinkKind.Pump => flow > 0 || -flow <= give * ClearlyShut,
            LinkKind.CappedOrifice => give > 1 / Stiff.JudgedByFlow,
            _ => !NetworkVerdict.IsOneWay(link) || flow > noFlow,
        };
    }
}
