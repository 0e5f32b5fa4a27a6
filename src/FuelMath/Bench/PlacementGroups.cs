namespace FuelMath.Bench;

/// <summary>Kernel: every group of injectors that may fill a chamber, one for each stage, with its fuel at each point.</summary>
internal sealed class PlacementGroups
{
    private const int Most = 2_000_000;

    private readonly double[,,] mass;
    private readonly int[][] members;
    private readonly double[,] fuel;
    private readonly int[,][] rising;
    private readonly int[] twinBefore;
    private readonly int[][] byDifference;

    /// <summary>Mass by point, stage and injector; which injector may go to which stage.</summary>
    internal PlacementGroups(double[,,] mass, bool[,] allowed, string paramName)
    {
        (this.mass, Allowed) = (mass, allowed);
        double count = Enumerable.Range(0, Stages).Aggregate(1.0, (n, s) => n * (Injectors - s));
        if (count > Most)
        {
            throw new RefusedArgumentException(
                RefusalCode.TooManyCombinations,
                $"Must be so few that at most {Most:most} groups can fill a chamber; {Injectors:injectors} injectors in {Stages:stages} stages make {count:value}.",
                paramName
            );
        }

        byDifference =
            Stages == 2 && allowed.Cast<bool>().All(a => a)
                ? [.. Enumerable.Range(0, Points).Select(ByDifference)]
                : [];
        twinBefore = [.. Enumerable.Range(0, Injectors).Select(TwinBefore)];
        var all = new List<int[]>();
        Build([], all);
        members = [.. all];
        fuel = new double[members.Length, Points];
        rising = new int[Points, Stages][];
        for (int k = 0; k < Points; k++)
        {
            for (int g = 0; g < members.Length; g++)
            {
                for (int s = 0; s < Stages; s++)
                {
                    fuel[g, k] += mass[k, s, members[g][s]];
                }
            }

            for (int s = 0; s < Stages; s++)
            {
                (int point, int stage) = (k, s);
                rising[k, s] =
                [
                    .. Enumerable.Range(0, Injectors).Where(i => allowed[stage, i]).OrderBy(i => mass[point, stage, i]),
                ];
            }
        }
    }

    internal bool[,] Allowed { get; }

    internal int Points => mass.GetLength(0);

    internal int Stages => mass.GetLength(1);

    internal int Injectors => mass.GetLength(2);

    internal int Count => members.Length;

    internal double Mass(int point, int stage, int injector) => mass[point, stage, injector];

    internal ReadOnlySpan<int> Members(int group) => members[group];

    /// <summary>The first injector of a group, by its number.</summary>
    internal int Least(int group) => members[group].Min();

    internal bool Holds(int group, int injector) => Array.IndexOf(members[group], injector) >= 0;

    /// <summary>
    /// Whether an earlier group gives the same fuel: one with an unused injector of lower number that delivers the
    /// same, or with two such injectors exchanged.
    /// </summary>
    internal bool HasTwinBefore(int group, bool[] used)
    {
        int[] all = members[group];
        for (int s = 0; s < all.Length; s++)
        {
            for (int twin = twinBefore[all[s]]; twin >= 0; twin = twinBefore[twin])
            {
                int at = Array.IndexOf(all, twin);
                if (at > s || (at < 0 && !used[twin]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    internal double Fuel(int group, int point) => fuel[group, point];

    internal bool IsFree(int group, bool[] used)
    {
        foreach (int i in members[group])
        {
            if (used[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// The least and the most fuel that this number of chambers could get from the injectors left; infinite when too
    /// few may go to a stage.
    /// </summary>
    internal (double Least, double Most) Range(int point, int chambers, bool[] used, bool allMustGo)
    {
        (double least, double most) = (0, 0);
        if (allMustGo && byDifference.Length > 0)
        {
            return (Split(point, chambers, used, false), Split(point, chambers, used, true));
        }

        for (int s = 0; s < Stages; s++)
        {
            int[] order = rising[point, s];
            least += Sum(order, chambers, point, s, used, false);
            most += Sum(order, chambers, point, s, used, true);
        }

        return (least, most);
    }

    /// <summary>Injectors sorted by their mass in the first stage minus that in the second.</summary>
    private int[] ByDifference(int point) =>
        [.. Enumerable.Range(0, Injectors).OrderBy(i => mass[point, 0, i] - mass[point, 1, i])];

    /// <summary>
    /// The fuel of all injectors left when those with the largest, or the smallest, such difference go to the first
    /// stage.
    /// </summary>
    private double Split(int point, int chambers, bool[] used, bool most)
    {
        (double sum, int count) = (0, chambers);
        int[] order = byDifference[point];
        for (int j = 0; j < order.Length; j++)
        {
            int i = order[most ? order.Length - 1 - j : j];
            if (!used[i])
            {
                sum += mass[point, count > 0 ? 0 : 1, i];
                count--;
            }
        }

        return sum;
    }

    private double Sum(int[] order, int count, int point, int stage, bool[] used, bool fromTheTop)
    {
        double sum = 0;
        for (int j = 0; j < order.Length && count > 0; j++)
        {
            int i = order[fromTheTop ? order.Length - 1 - j : j];
            if (!used[i])
            {
                sum += mass[point, stage, i];
                count--;
            }
        }

        return count > 0 ? double.PositiveInfinity : sum;
    }

    /// <summary>The injector before this one that delivers the same everywhere and may go to the same stages; -1 without one.</summary>
    private int TwinBefore(int injector)
    {
        for (int other = injector - 1; other >= 0; other--)
        {
            bool same = true;
            for (int s = 0; s < Stages; s++)
            {
                same &= Allowed[s, other] == Allowed[s, injector];
                for (int k = 0; k < Points; k++)
                {
                    same &= mass[k, s, other] == mass[k, s, injector];
                }
            }

            if (same)
            {
                return other;
            }
        }

        return -1;
    }

    private void Build(int[] begun, List<int[]> all)
    {
        if (begun.Length == Stages)
        {
            all.Add(begun);
            return;
        }

        for (int i = 0; i < Injectors; i++)
        {
            if (Allowed[begun.Length, i] && !begun.Contains(i))
            {
                Build([.. begun, i], all);
            }
        }
    }
}
