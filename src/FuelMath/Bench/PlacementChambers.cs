namespace FuelMath.Bench;

/// <summary>Kernel: the chambers of a search: their air, and which are filled or have equal air.</summary>
internal sealed class PlacementChambers
{
    private readonly double[] air;
    private readonly bool[] filled;
    private readonly int[] last;

    /// <summary>Empty chambers with their air, mean one.</summary>
    internal PlacementChambers(double[] air) =>
        (this.air, filled, last) = (air, new bool[air.Length], new int[air.Length]);

    internal int Count => air.Length;

    internal double Air(int chamber) => air[chamber];

    internal bool IsFilled(int chamber) => filled[chamber];

    /// <summary>Fills a chamber with a group whose first injector has this number.</summary>
    internal void Fill(int chamber, int least) => (filled[chamber], last[chamber]) = (true, least);

    internal void Empty(int chamber) => filled[chamber] = false;

    /// <summary>Whether it is empty and the first empty chamber with its air.</summary>
    internal bool IsFirstAlike(int chamber)
    {
        for (int c = 0; c < chamber; c++)
        {
            if (!filled[c] && air[c] == air[chamber])
            {
                return false;
            }
        }

        return !filled[chamber];
    }

    /// <summary>Whether another empty chamber has the same air.</summary>
    internal bool HasAlike(int chamber)
    {
        for (int c = 0; c < air.Length; c++)
        {
            if (c != chamber && !filled[c] && air[c] == air[chamber])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// The number of the first injector in the last filled chamber before it with the same air; -1 without one.
    /// </summary>
    internal int LastAlike(int chamber)
    {
        for (int c = chamber - 1; c >= 0; c--)
        {
            if (air[c] == air[chamber])
            {
                return last[c];
            }
        }

        return -1;
    }
}
