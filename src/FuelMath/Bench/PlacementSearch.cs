namespace FuelMath.Bench;

/// <summary>Kernel: depth-first branch and bound over chambers, each filled with a group of one injector for every stage.</summary>
/// <remarks>
/// <para>
/// It searches for a placement better than a target: first for small targets, which few groups can meet, then for
/// larger ones, up to the best known value. Each target that is exhausted without success is a lower bound.
/// </para>
/// <para>
/// At each step a group is tried only if, at every point, its fuel is within the target of the chambers already filled
/// and of what the empty ones can still reach. The chamber, or the injector that must be placed, with the fewest groups
/// left comes next. Among injectors that deliver the same, and among chambers with equal air, only one order is tried.
/// Source: [Land-Doig-1960].
/// </para>
/// </remarks>
internal sealed class PlacementSearch
{
    private const double Rounding = 1e-12;

    private static readonly double[] Targets = [0.25, 0.5, 0.75, 0.9, 1];

    private readonly PlacementGroups groups;
    private readonly double[] air;
    private readonly PlacementChambers chambers;
    private readonly bool allMustGo;
    private readonly int mostSteps;
    private readonly bool[] used;
    private readonly int[] seats;
    private readonly double[,] low;
    private readonly double[,] high;
    private readonly double[,] sum;
    private double cutoff;
    private double proven;
    private bool stopped;

    /// <summary>
    /// Takes the groups, the air of each chamber with mean one, an allowed initial placement, and the largest number of
    /// groups to try.
    /// </summary>
    internal PlacementSearch(PlacementGroups groups, double[] air, int[] start, int mostSteps)
    {
        (this.groups, this.air, this.mostSteps) = (groups, air, mostSteps);
        chambers = new(air);
        allMustGo = groups.Injectors == air.Length * groups.Stages;
        used = new bool[groups.Injectors];
        seats = new int[air.Length * groups.Stages];
        (low, high) = (new double[air.Length + 1, groups.Points], new double[air.Length + 1, groups.Points]);
        sum = new double[air.Length + 1, groups.Points];
        for (int k = 0; k < groups.Points; k++)
        {
            (low[0, k], high[0, k]) = (double.PositiveInfinity, double.NegativeInfinity);
        }

        int[] best = [.. start];
        PlacementStart.Improve(best, groups.Allowed, Value);
        (Best, BestValue) = (best, Value(best));
    }

    /// <summary>The injector of each seat, chamber by chamber and stage by stage.</summary>
    internal int[] Best { get; private set; }

    internal double BestValue { get; private set; }

    internal int Steps { get; private set; }

    /// <summary>The lower bound of any placement.</summary>
    internal double LowerBound => Math.Min(proven, BestValue);

    internal void Run()
    {
        int[] all = [.. Enumerable.Range(0, groups.Count)];
        double known = BestValue;
        foreach (double share in Targets)
        {
            cutoff = Math.Min(share * known, BestValue);
            Fill(0, all);
            if (stopped)
            {
                return;
            }

            // The last placement found is the best one: the search below it was exhausted.
            proven = cutoff;
            if (proven >= BestValue)
            {
                return;
            }
        }
    }

    /// <summary>The worst over the points of (largest - smallest) / mean of fuel over air.</summary>
    internal double Value(int[] placed)
    {
        double worst = 0;
        for (int k = 0; k < groups.Points; k++)
        {
            (double least, double most, double total) = (double.PositiveInfinity, double.NegativeInfinity, 0);
            for (int c = 0; c < air.Length; c++)
            {
                double fuel = 0;
                for (int s = 0; s < groups.Stages; s++)
                {
                    fuel += groups.Mass(k, s, placed[(c * groups.Stages) + s]);
                }

                total += fuel;
                (least, most) = (Math.Min(least, fuel / air[c]), Math.Max(most, fuel / air[c]));
            }

            worst = Math.Max(worst, (most - least) / (total / air.Length));
        }

        return worst;
    }

    private void Fill(int filled, int[] left)
    {
        if (filled == air.Length)
        {
            double value = Value(seats);
            if (value < cutoff)
            {
                int[] better = [.. seats];
                PlacementStart.Improve(better, groups.Allowed, Value);
                value = Value(better);
                (cutoff, BestValue, Best) = (value, value, better);
            }

            return;
        }

        var reach = new (double From, double To)[groups.Points];
        var widths = new double[groups.Points];
        if (!Reach(filled, reach, widths))
        {
            return;
        }

        var next = new PlacementChoice(groups, chambers, used, allMustGo, reach, widths, left);
        if (!next.IsPossible)
        {
            return;
        }

        foreach ((int chamber, int group) in next.Pick())
        {
            if (stopped || Steps >= mostSteps)
            {
                stopped = true;
                return;
            }

            Steps++;
            Place(filled, chamber, group);
            Fill(filled + 1, next.Left);
            Take(chamber, group);
        }
    }

    /// <summary>
    /// The range in which the fuel over air of the empty chambers must lie at each point; false when their mean can't
    /// lie in it.
    /// </summary>
    private bool Reach(int filled, (double From, double To)[] reach, double[] widths)
    {
        double airLeft = 0;
        for (int c = 0; c < air.Length; c++)
        {
            airLeft += chambers.IsFilled(c) ? 0 : air[c];
        }

        for (int k = 0; k < groups.Points; k++)
        {
            (double least, double most) = groups.Range(k, air.Length - filled, used, allMustGo);
            double width = cutoff * (1 - Rounding) * (sum[filled, k] + most) / air.Length;
            double lowest = Math.Min(low[filled, k], most / airLeft);
            double highest = Math.Max(high[filled, k], least / airLeft);
            // Too few injectors left for a stage make the range infinite.
            if (!(highest - lowest < width))
            {
                return false;
            }

            // The window begins no higher than the lowest known value and ends no lower than the highest.
            reach[k] = (highest - width, lowest + width);
            widths[k] = width;
        }

        return true;
    }

    private void Place(int filled, int chamber, int group)
    {
        for (int k = 0; k < groups.Points; k++)
        {
            double fuel = groups.Fuel(group, k);
            low[filled + 1, k] = Math.Min(low[filled, k], fuel / air[chamber]);
            high[filled + 1, k] = Math.Max(high[filled, k], fuel / air[chamber]);
            sum[filled + 1, k] = sum[filled, k] + fuel;
        }

        groups.Members(group).CopyTo(seats.AsSpan(chamber * groups.Stages));
        Mark(chamber, group, true);
    }

    private void Take(int chamber, int group) => Mark(chamber, group, false);

    private void Mark(int chamber, int group, bool value)
    {
        if (value)
        {
            chambers.Fill(chamber, groups.Least(group));
        }
        else
        {
            chambers.Empty(chamber);
        }

        foreach (int i in groups.Members(group))
        {
            used[i] = value;
        }
    }
}
