using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Puts regions that nothing flows into at the level to which the network fills them by itself.</summary>
/// <remarks>
/// Behind a one-way part without flow any pressure above the one at which it just opens satisfies the equations. Filling
/// ends at the least level at which none of the parts that lead there opens, so the part with the greatest lift decides.
/// The region moves as a whole, for what flows in circles in it keeps its differences of pressure. A region that nothing
/// can fill keeps what it had, which a steady state does not know: it is cut off. Allocates nothing.
/// </remarks>
internal sealed class NetworkFilling(NetworkPlan plan)
{
    /// <summary>Looks at a region, as a multiple of the regions: more means levels that lift each other.</summary>
    private const int MostLooks = 50;

    /// <summary>A change of level that is none, Pa, and as a part of the pressure.</summary>
    private const double NoChange = 1e-7;
    private const double NoChangeOfPressure = 1e-13;

    private readonly NetworkReach reach = new(plan);
    private readonly double[] shifts = new double[plan.Nodes.Length + 1];
    private readonly int[] filledFrom = new int[plan.Nodes.Length + 1];
    private readonly int[] queue = new int[plan.Nodes.Length + 1];
    private readonly bool[] waits = new bool[plan.Nodes.Length + 1];

    /// <summary>The regions of the state that was looked at last.</summary>
    internal NetworkReach Reach => reach;

    /// <summary>Finds the nodes whose pressure is determined, and fills what the network fills by itself.</summary>
    /// <returns>Whether every link that was touched keeps its law afterwards.</returns>
    internal bool Fill(NetworkWork<Real> work, double noFlow)
    {
        reach.Find(work, noFlow);
        bool[] known = work.Notes.Known;
        for (int i = 0; i < known.Length; i++)
        {
            known[i] = reach.Of(i) == NetworkReach.Joined;
        }

        if (reach.Count == 1)
        {
            return true;
        }

        bool settled = FindShifts(work, noFlow);
        for (int r = 1; r < reach.Count; r++)
        {
            if (double.IsFinite(shifts[r]))
            {
                foreach (int node in reach.Members(r))
                {
                    work.Pressure[node] += new Real(shifts[r]);
                    known[node] = true;
                }
            }
        }

        return JudgeAgain(work, noFlow) && settled;
    }

    /// <summary>How far each region has to move: minus infinity where nothing fills it.</summary>
    private bool FindShifts(NetworkWork<Real> work, double noFlow)
    {
        int regions = reach.Count;
        Array.Fill(shifts, double.NegativeInfinity, 0, regions);
        Array.Fill(filledFrom, NetworkReach.Joined, 0, regions);
        shifts[NetworkReach.Joined] = 0;
        (int head, int waiting) = (0, regions - 1);
        for (int r = 1; r < regions; r++)
        {
            (queue[r - 1], waits[r]) = (r, true);
        }

        for (int looks = MostLooks * regions; waiting > 0; looks--)
        {
            if (looks == 0)
            {
                return false;
            }

            int region = queue[head];
            head = (head + 1) % queue.Length;
            waiting--;
            waits[region] = false;
            (double shift, int from) = ShiftOf(work, region, noFlow);
            double before = shifts[region];
            if (IsSame(shift, before))
            {
                continue;
            }

            // What was filled from here can't fill it further: something would flow in a circle.
            if (double.IsFinite(before) && IsFilledFrom(from, region))
            {
                return false;
            }

            (shifts[region], filledFrom[region]) = (shift, from);
            foreach (int node in reach.Members(region))
            {
                foreach (int e in plan.LinksAt(node))
                {
                    int next = reach.Of(plan.To[e]);
                    if (plan.From[e] == node && next != region && next != NetworkReach.Joined && !waits[next])
                    {
                        (queue[(head + waiting) % queue.Length], waits[next]) = (next, true);
                        waiting++;
                    }
                }
            }
        }

        return true;
    }

    private static bool IsSame(double shift, double before) =>
        shift.Equals(before)
        || (double.IsFinite(before) && Math.Abs(shift - before) <= NoChange + (NoChangeOfPressure * Math.Abs(before)));

    private bool IsFilledFrom(int region, int source)
    {
        while (region != NetworkReach.Joined && region != source)
        {
            region = filledFrom[region];
        }

        return region == source;
    }

    /// <summary>How far the parts that lead to a region move it, and the region that it is filled from.</summary>
    private (double Shift, int From) ShiftOf(NetworkWork<Real> work, int region, double noFlow)
    {
        (double greatest, int source) = (double.NegativeInfinity, NetworkReach.Joined);
        foreach (int node in reach.Members(region))
        {
            foreach (int e in plan.LinksAt(node))
            {
                int from = plan.From[e];
                if (
                    plan.To[e] == node
                    && double.IsFinite(shifts[reach.Of(from)])
                    && reach.Of(from) != region
                    && !plan.Links[e].Law.IsOpenIn(work, e, noFlow)
                )
                {
                    double ahead = work.Pressure[from].Value + shifts[reach.Of(from)];
                    double shift = plan.Links[e].Law.FilledTo(work, e, ahead) - work.Pressure[node].Value;
                    (greatest, source) = shift > greatest ? (shift, reach.Of(from)) : (greatest, source);
                }
            }
        }

        return (greatest, source);
    }

    /// <summary>
    /// Lifts what is cut off to where no pressure is below vacuum. Gives the first part that would open then and pull it
    /// down again; -1 where none does.
    /// </summary>
    internal int LiftCutOff(NetworkWork<Real> work)
    {
        for (int r = 1; r < reach.Count; r++)
        {
            if (double.IsFinite(shifts[r]))
            {
                continue;
            }

            double raise = 0;
            foreach (int node in reach.Members(r))
            {
                raise = Math.Max(raise, NetworkVerdict.Vacuum - work.PressureAt(node).Value);
            }

            foreach (int node in reach.Members(r))
            {
                work.Pressure[node] += new Real(raise);
            }

            int opens = raise > 0 ? FirstThatOpens(work, r) : -1;
            if (opens >= 0)
            {
                return opens;
            }
        }

        return -1;
    }

    private int FirstThatOpens(NetworkWork<Real> work, int region)
    {
        foreach (int node in reach.Members(region))
        {
            foreach (int e in plan.LinksAt(node))
            {
                bool leads = plan.From[e] == node && work.Notes.Known[plan.To[e]] && plan.Links[e].Law.IsPump;
                double limit = NetworkWork<Real>.PressureLimit(work.Pressure[plan.To[e]]).Value;
                if (leads && work.SurplusAt(e, default).Pressure.Value > limit)
                {
                    return e;
                }
            }
        }

        return -1;
    }

    /// <summary>Takes the errors of pressure of the links at nodes that moved; whether they are small enough.</summary>
    private bool JudgeAgain(NetworkWork<Real> work, double noFlow)
    {
        double greatest = 0;
        double worst = 0;
        for (int e = 0; e < plan.Links.Length; e++)
        {
            (int from, int to) = (plan.From[e], plan.To[e]);
            greatest = Math.Max(
                greatest,
                Math.Max(Math.Abs(work.Pressure[from].Value), Math.Abs(work.Pressure[to].Value))
            );
            if (reach.Of(from) + reach.Of(to) > 0)
            {
                double error =
                    work.Notes.Known[from] && work.Notes.Known[to] ? plan.Links[e].Law.ErrorIn(work, e, noFlow) : 0;
                work.Error[e] = new Real(error);
                worst = Math.Max(worst, error);
            }
        }

        return worst <= NetworkWork<Real>.PressureLimit(new Real(greatest)).Value;
    }
}
