namespace FuelMath.Bench;

/// <summary>Kernel: the groups left for the empty chambers, and what to fill next.</summary>
/// <remarks>
/// At each point the fuel over air of all chambers lies in one window, whose lower end is only known to lie between two
/// bounds. The range that each empty chamber, and each injector that must be placed, can still reach narrows these
/// bounds, and the bounds exclude groups, in turn, until little changes. Source: [Land-Doig-1960] for the search; the
/// narrowing is interval arithmetic.
/// </remarks>
internal sealed class PlacementChoice
{
    /// <summary>Largest number of narrowing rounds; more would be correct but slower.</summary>
    private const int MostRounds = 4;

    private readonly PlacementGroups groups;
    private readonly PlacementChambers chambers;
    private readonly bool[] used;
    private readonly bool allMustGo;
    private readonly (double From, double To)[] reach;
    private readonly double[] widths;
    private readonly int[] chamberCounts;
    private readonly int[] injectorCounts;

    /// <summary>Narrows the groups left from the step before.</summary>
    /// <param name="groups">All groups.</param>
    /// <param name="chambers">The chambers.</param>
    /// <param name="used">Which injectors are placed.</param>
    /// <param name="allMustGo">Whether every injector must be placed.</param>
    /// <param name="reach">The range of fuel over air for the empty chambers at each point; narrowed here.</param>
    /// <param name="widths">The allowed width of the window of all chambers at each point.</param>
    /// <param name="before">The groups that were left a step before.</param>
    internal PlacementChoice(
        PlacementGroups groups,
        PlacementChambers chambers,
        bool[] used,
        bool allMustGo,
        (double From, double To)[] reach,
        double[] widths,
        int[] before
    )
    {
        (this.groups, this.chambers, this.used, this.allMustGo) = (groups, chambers, used, allMustGo);
        (this.reach, this.widths) = (reach, widths);
        (chamberCounts, injectorCounts) = (new int[chambers.Count], new int[used.Length]);
        Left = Array.FindAll(before, g => groups.IsFree(g, used));
        for (int round = 0; round < MostRounds && IsPossible; round++)
        {
            Keep();
            if (!Narrow())
            {
                break;
            }
        }
    }

    /// <summary>Groups of unused injectors that some empty chamber could take.</summary>
    internal int[] Left { get; private set; }

    /// <summary>Whether every empty chamber, and every injector that must be placed, still has a group.</summary>
    internal bool IsPossible { get; private set; } = true;

    /// <summary>
    /// Chambers with the groups to try in them: all groups of one chamber, or all groups with one injector, whichever
    /// are fewest.
    /// </summary>
    internal List<(int Chamber, int Group)> Pick()
    {
        (int chamber, int fewest) = (-1, int.MaxValue);
        for (int c = 0; c < chambers.Count; c++)
        {
            // Chambers with equal air count as one. Where all injectors must be placed, an injector decides between
            // them.
            if (chambers.IsFirstAlike(c) && !(allMustGo && chambers.HasAlike(c)) && chamberCounts[c] < fewest)
            {
                (chamber, fewest) = (c, chamberCounts[c]);
            }
        }

        int injector = -1;
        for (int i = 0; allMustGo && i < used.Length; i++)
        {
            if (!used[i] && injectorCounts[i] < fewest)
            {
                (injector, fewest) = (i, injectorCounts[i]);
            }
        }

        var all = new List<(int Chamber, int Group)>();
        for (int c = 0; c < chambers.Count; c++)
        {
            if (!chambers.IsFirstAlike(c) || (injector < 0 && c != chamber))
            {
                continue;
            }

            foreach (int group in Left)
            {
                if (
                    Fits(group, c)
                    && (injector < 0 || groups.Holds(group, injector))
                    && (allMustGo || groups.Least(group) > chambers.LastAlike(c))
                    && !groups.HasTwinBefore(group, used)
                )
                {
                    all.Add((c, group));
                }
            }
        }

        // Groups near the middle of the range come first.
        double middle = (reach[0].From + reach[0].To) / 2;
        return [.. all.OrderBy(p => Math.Abs((groups.Fuel(p.Group, 0) / chambers.Air(p.Chamber)) - middle))];
    }

    private void Keep()
    {
        Array.Clear(chamberCounts);
        Array.Clear(injectorCounts);
        var left = new List<int>(Left.Length);
        foreach (int group in Left)
        {
            int places = 0;
            for (int c = 0; c < chambers.Count; c++)
            {
                if (!chambers.IsFilled(c) && Fits(group, c))
                {
                    chamberCounts[c]++;
                    places += chambers.IsFirstAlike(c) ? 1 : 0;
                }
            }

            if (places > 0)
            {
                left.Add(group);
                foreach (int i in groups.Members(group))
                {
                    injectorCounts[i] += places;
                }
            }
        }

        Left = [.. left];
        for (int c = 0; c < chambers.Count; c++)
        {
            IsPossible &= chambers.IsFilled(c) || chamberCounts[c] > 0;
        }

        for (int i = 0; allMustGo && i < used.Length; i++)
        {
            IsPossible &= used[i] || injectorCounts[i] > 0;
        }
    }

    /// <summary>Narrows the range at each point; true when that may exclude more groups.</summary>
    private bool Narrow()
    {
        bool narrower = false;
        for (int k = 0; k < reach.Length && IsPossible; k++)
        {
            (double from, double to) = reach[k];
            (double least, double most) = Ends(k);
            // The window must begin no higher than the smallest of the upper ends of all ranges, and end no lower than
            // the largest of their lower ends.
            double begin = Math.Max(from, most - widths[k]);
            double end = Math.Min(to, least + widths[k]);
            if (!(end - begin >= 0) || !(begin <= least) || !(end >= most))
            {
                IsPossible = false;
                return false;
            }

            narrower |= begin > from || end < to;
            reach[k] = (begin, end);
        }

        return narrower;
    }

    /// <summary>The smallest upper end and the largest lower end of the ranges of all chambers and injectors.</summary>
    private (double Least, double Most) Ends(int point)
    {
        Span<double> lows = stackalloc double[chambers.Count + used.Length];
        Span<double> highs = stackalloc double[chambers.Count + used.Length];
        lows.Fill(double.PositiveInfinity);
        highs.Fill(double.NegativeInfinity);
        foreach (int group in Left)
        {
            for (int c = 0; c < chambers.Count; c++)
            {
                if (chambers.IsFilled(c) || !Fits(group, c))
                {
                    continue;
                }

                double value = groups.Fuel(group, point) / chambers.Air(c);
                (lows[c], highs[c]) = (Math.Min(lows[c], value), Math.Max(highs[c], value));
                foreach (int i in groups.Members(group))
                {
                    ref double low = ref lows[chambers.Count + i];
                    ref double high = ref highs[chambers.Count + i];
                    (low, high) = (Math.Min(low, value), Math.Max(high, value));
                }
            }
        }

        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        int counted = allMustGo ? lows.Length : chambers.Count;
        for (int j = 0; j < counted; j++)
        {
            bool placed = j < chambers.Count ? chambers.IsFilled(j) : used[j - chambers.Count];
            if (!placed)
            {
                (least, most) = (Math.Min(least, highs[j]), Math.Max(most, lows[j]));
            }
        }

        return (least, most);
    }

    private bool Fits(int group, int chamber)
    {
        for (int k = 0; k < reach.Length; k++)
        {
            double value = groups.Fuel(group, k) / chambers.Air(chamber);
            if (!(value >= reach[k].From && value <= reach[k].To))
            {
                return false;
            }
        }

        return true;
    }
}
