namespace FuelMath.Bench;

/// <summary>Kernel: which groups are left for the chambers still empty, and what to fill next.</summary>
internal readonly struct PlacementChoice
{
    private readonly PlacementGroups groups;
    private readonly double[] air;
    private readonly bool[] isFilled;
    private readonly (double From, double To)[] reach;
    private readonly bool[] used;

    internal PlacementChoice(
        PlacementGroups groups,
        double[] air,
        bool[] isFilled,
        bool[] used,
        (double From, double To)[] reach,
        int[] before
    )
    {
        (this.groups, this.air, this.isFilled, this.used, this.reach) = (groups, air, isFilled, used, reach);
        var left = new List<int>(before.Length);
        foreach (int group in before)
        {
            if (groups.IsFree(group, used) && FitsSome(group))
            {
                left.Add(group);
            }
        }

        Left = [.. left];
    }

    /// <summary>Groups of injectors not yet used that some empty chamber could take.</summary>
    internal int[] Left { get; }

    /// <summary>A chamber, and the groups to try in it, the most usual first; none where something can't be placed any more.</summary>
    internal (int Chamber, int[] Groups) Pick(bool equalAir, bool allMustGo, int filled, int last)
    {
        int rarest = -1;
        if (allMustGo)
        {
            int[] counts = Counts();
            for (int i = 0; i < counts.Length; i++)
            {
                if (!used[i] && counts[i] == 0)
                {
                    return (filled, []);
                }

                if (!used[i] && (rarest < 0 || counts[i] < counts[rarest]))
                {
                    rarest = i;
                }
            }
        }

        // Chambers of equal air are alike: each holds the injector that is rarest, or else one with a number above that of
        // the chamber before.
        return equalAir
            ? (filled, Ordered(filled, rarest >= 0 ? [.. Left.Where(Holds(rarest))] : [.. Left.Where(Above(last))]))
            : Chamber();
    }

    private Func<int, bool> Holds(int injector)
    {
        PlacementGroups all = groups;
        return g => all.Members(g).Contains(injector);
    }

    private Func<int, bool> Above(int last)
    {
        PlacementGroups all = groups;
        return g => all.Least(g) > last;
    }

    /// <summary>The empty chamber with the fewest groups.</summary>
    private (int Chamber, int[] Groups) Chamber()
    {
        (int chamber, int[]? fewest) = (0, null);
        for (int c = 0; c < air.Length; c++)
        {
            if (!isFilled[c])
            {
                var fit = new List<int>();
                foreach (int group in Left)
                {
                    if (Fits(group, c))
                    {
                        fit.Add(group);
                    }
                }

                if (fewest is null || fit.Count < fewest.Length)
                {
                    (chamber, fewest) = (c, [.. fit]);
                }
            }
        }

        return (chamber, Ordered(chamber, fewest ?? []));
    }

    /// <summary>Groups near the middle of all that are left come first.</summary>
    private int[] Ordered(int chamber, int[] some)
    {
        PlacementGroups all = groups;
        double share = air[chamber];
        double middle = Left.Length == 0 ? 0 : Left.Average(g => all.Fuel(g, 0));
        return [.. some.OrderBy(g => Math.Abs((all.Fuel(g, 0) / share) - middle))];
    }

    private int[] Counts()
    {
        var counts = new int[used.Length];
        foreach (int group in Left)
        {
            foreach (int i in groups.Members(group))
            {
                counts[i]++;
            }
        }

        return counts;
    }

    private bool FitsSome(int group)
    {
        for (int c = 0; c < air.Length; c++)
        {
            if (!isFilled[c] && Fits(group, c))
            {
                return true;
            }
        }

        return false;
    }

    private bool Fits(int group, int chamber)
    {
        for (int k = 0; k < reach.Length; k++)
        {
            double value = groups.Fuel(group, k) / air[chamber];
            if (!(value > reach[k].From && value < reach[k].To))
            {
                return false;
            }
        }

        return true;
    }
}
