namespace FuelMath.Bench;

/// <summary>Kernel: depth-first branch and bound over chambers, each filled with one injector for every stage.</summary>
/// <remarks>
/// The bound of a beginning: the fuel per air of the chambers still empty has a mean that lies between what the least and
/// what the most generous of the injectors left could give, and no range is smaller than one that holds the filled
/// chambers and that mean. Chambers of equal air are filled in one order only. Source: [Land-Doig-1960].
/// </remarks>
internal sealed class PlacementSearch
{
    internal const int MostSteps = 2_000_000;
    private const double Rounding = 1e-12;

    private readonly double[,,] mass;
    private readonly double[] air;
    private readonly int[,][] rising;
    private readonly bool equalAir;
    private readonly bool[] used;
    private readonly int[] seats;
    private double open = double.PositiveInfinity;

    /// <summary>Mass by point, stage and injector; air of each chamber with mean one; the seats to begin with.</summary>
    internal PlacementSearch(double[,,] mass, double[] air, bool equalAir)
    {
        (this.mass, this.air, this.equalAir) = (mass, air, equalAir);
        used = new bool[Injectors];
        seats = new int[Chambers * Stages];
        rising = new int[Points, Stages][];
        for (int k = 0; k < Points; k++)
        {
            for (int s = 0; s < Stages; s++)
            {
                (int point, int stage) = (k, s);
                rising[k, s] = [.. Enumerable.Range(0, Injectors).OrderBy(i => mass[point, stage, i])];
            }
        }

        Best = [.. Enumerable.Range(0, seats.Length)];
        BestValue = Value(Best);
    }

    /// <summary>The injector of each seat, chamber by chamber and stage by stage.</summary>
    internal int[] Best { get; private set; }

    internal double BestValue { get; private set; }

    internal int Steps { get; private set; }

    /// <summary>What no placement can be better than.</summary>
    internal double LowerBound => Math.Min(open, BestValue);

    private int Points => mass.GetLength(0);

    private int Stages => mass.GetLength(1);

    private int Injectors => mass.GetLength(2);

    private int Chambers => air.Length;

    internal void Run() => Fill(0, -1);

    /// <summary>The worst over the points of (largest - smallest) / mean of fuel over air.</summary>
    internal double Value(int[] placed)
    {
        double worst = 0;
        for (int k = 0; k < Points; k++)
        {
            (double low, double high, double sum) = Filled(placed, k, Chambers);
            worst = Math.Max(worst, (high - low) / (sum / Chambers));
        }

        return worst;
    }

    private void Fill(int chamber, int last)
    {
        if (chamber == Chambers)
        {
            double value = Value(seats);
            if (value < BestValue)
            {
                (BestValue, Best) = (value, [.. seats]);
            }

            return;
        }

        var children = new List<(double Bound, int[] Placed)>();
        Children(chamber, 0, last, children);
        foreach ((double bound, int[] placed) in children.OrderBy(c => c.Bound))
        {
            if (bound >= BestValue * (1 - Rounding))
            {
                return;
            }

            if (Steps >= MostSteps)
            {
                open = Math.Min(open, bound);
                return;
            }

            placed.CopyTo(seats, chamber * Stages);
            Mark(placed, true);
            Fill(chamber + 1, placed.Min());
            Mark(placed, false);
        }
    }

    private void Children(int chamber, int stage, int last, List<(double, int[])> children)
    {
        if (stage == Stages)
        {
            int[] placed = seats[(chamber * Stages)..((chamber + 1) * Stages)];
            // Chambers of equal air are alike: let each one's first injector come after that of the one before.
            if (equalAir && placed.Min() < last)
            {
                return;
            }

            Steps++;
            double bound = Bound(chamber + 1);
            if (bound < BestValue * (1 - Rounding))
            {
                children.Add((bound, placed));
            }

            return;
        }

        for (int i = 0; i < Injectors; i++)
        {
            if (!used[i])
            {
                used[i] = true;
                seats[(chamber * Stages) + stage] = i;
                Children(chamber, stage + 1, last, children);
                used[i] = false;
            }
        }
    }

    private double Bound(int filled)
    {
        double worst = 0;
        int left = Chambers - filled;
        double airLeft = air.AsSpan(filled).ToArray().Sum();
        for (int k = 0; k < Points; k++)
        {
            (double low, double high, double sum) = Filled(seats, k, filled);
            (double least, double most) = (0, 0);
            for (int s = 0; s < Stages; s++)
            {
                least += Take(rising[k, s], left, k, s, false);
                most += Take(rising[k, s], left, k, s, true);
            }

            if (left > 0)
            {
                (high, low) = (Math.Max(high, least / airLeft), Math.Min(low, most / airLeft));
            }

            worst = Math.Max(worst, (high - low) / ((sum + most) / Chambers));
        }

        return worst;
    }

    private (double Low, double High, double Sum) Filled(int[] placed, int point, int filled)
    {
        (double low, double high, double sum) = (double.PositiveInfinity, double.NegativeInfinity, 0);
        for (int c = 0; c < filled; c++)
        {
            double fuel = 0;
            for (int s = 0; s < Stages; s++)
            {
                fuel += mass[point, s, placed[(c * Stages) + s]];
            }

            sum += fuel;
            (low, high) = (Math.Min(low, fuel / air[c]), Math.Max(high, fuel / air[c]));
        }

        return (low, high, sum);
    }

    private double Take(int[] order, int count, int point, int stage, bool most)
    {
        double sum = 0;
        for (int j = 0; j < order.Length && count > 0; j++)
        {
            int i = order[most ? order.Length - 1 - j : j];
            if (!used[i])
            {
                sum += mass[point, stage, i];
                count--;
            }
        }

        return sum;
    }

    private void Mark(int[] placed, bool value)
    {
        foreach (int i in placed)
        {
            used[i] = value;
        }
    }
}
