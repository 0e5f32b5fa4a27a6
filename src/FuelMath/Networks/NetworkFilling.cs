using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Sets regions without inflow to the pressure level to which the network fills them by itself.</summary>
/// <remarks>
/// Behind a one-way part without flow any pressure above its opening pressure satisfies the equations. Filling ends at
/// the least level at which none of the parts that lead there opens, so the part with the greatest pressure decides.
/// The region is shifted as a whole, because circulating flow keeps its pressure differences. A region that nothing can
/// fill keeps its previous pressure, which a steady state can't determine: it is cut off. Allocates nothing.
/// </remarks>
internal sealed class NetworkFilling(NetworkPlan plan)
{
    /// <summary>
    /// Largest number of passes, as a multiple of the regions: more means levels that raise each other.
    /// </summary>
    private const int MostLooks = 50;

    /// <summary>A negligible change of level, Pa, and as a fraction of the pressure.</summary>
    private const double NoChange = 1e-7;
    private const double NoChangeOfPressure = 1e-13;

    private readonly NetworkReach reach = new(plan);
    private readonly double[] shifts = new double[plan.Nodes.Length + 1];
    private readonly int[] filledFrom = new int[plan.Nodes.Length + 1];
    private readonly int[] queue = new int[plan.Nodes.Length + 1];
    private readonly bool[] waits = new bool[plan.Nodes.Length + 1];

    /// <summary>The regions of the last state.</summary>
    internal NetworkReach Reach => reach;

    /// <summary>
    /// Finds the nodes whose pressure is determined, and fills regions that the network fills by itself.
    /// </summary>
    /// <returns>Whether every affected link satisfies its law afterwards.</returns>
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

        bool settled = Shift(work, noFlow);
        bool holds = JudgeAgain(work, noFlow);
        if (settled && !holds)
        {
            // A region that stood at a huge pressure takes its rounding along; from near its level it is moved exactly.
            settled = Shift(work, noFlow);
            holds = JudgeAgain(work, noFlow);
        }

        return settled && holds;
    }

    /// <summary>Shifts each region that is filled; returns whether the shifts settled.</summary>
    private bool Shift(NetworkWork<Real> work, double noFlow)
    {
        bool settled = FindShifts(work, noFlow);
        for (int r = 1; r < reach.Count; r++)
        {
            if (double.IsFinite(shifts[r]))
            {
                foreach (int node in reach.Members(r))
                {
                    work.Pressure[node] += new Real(shifts[r]);
                    work.Notes.Known[node] = true;
                }
            }
        }

        return settled;
    }

    /// <summary>The shift of each region; minus infinity where nothing fills it.</summary>
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

            // A region filled from here can't fill it further: fuel would circulate.
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

    /// <summary>The shift of a region by the parts that lead to it, and the region from which it is filled.</summary>
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
                    && !work.IsOpen(e, noFlow)
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
    /// Raises cut-off regions so that no pressure is below vacuum. Returns the first part that would then open and
    /// lower it again; -1 if none does.
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
                raise = Math.Max(raise, work.Vacuum.Value - work.PressureAt(node).Value);
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

    /// <summary>
    /// Recomputes the pressure residuals of links at shifted nodes; returns whether they are small enough.
    /// </summary>
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
