namespace FuelMath.Bench;

/// <summary>
/// Kernel: an initial placement for a search: the given order where it is allowed, else any allowed one.
/// </summary>
internal static class PlacementStart
{
    /// <summary>Which injector may go to which stage; all to all without restrictions.</summary>
    internal static bool[,] Allowed(int stages, int count, Placement.Candidate[]? restricted, string paramName)
    {
        var allowed = new bool[stages, count];
        for (int i = 0; i < count; i++)
        {
            foreach (int stage in restricted?[i].Stages ?? [.. Enumerable.Range(1, stages)])
            {
                if (stage > stages)
                {
                    throw new RefusedArgumentException(
                        RefusalCode.OutOfRange,
                        $"A stage must be from {1:least} to {stages:most}; one of '{restricted![i].Injector.Name:part}' was {stage:value}.",
                        paramName
                    );
                }

                allowed[stage - 1, i] = true;
            }
        }

        return allowed;
    }

    /// <summary>The injector of each seat, or null when too few may go to some stage.</summary>
    internal static int[]? Find(bool[,] allowed, int chambers)
    {
        (int stages, int injectors) = (allowed.GetLength(0), allowed.GetLength(1));
        int[] seats = [.. Enumerable.Repeat(-1, chambers * stages)];
        int[] seatOf = [.. Enumerable.Repeat(-1, injectors)];
        for (int seat = 0; seat < seats.Length; seat++)
        {
            if (!Seat(seat, new bool[injectors]))
            {
                return null;
            }
        }

        return seats;

        // A placed injector moves to another seat if it can: an augmenting path. The seat's own number is tried first,
        // so that an allowed order is kept.
        bool Seat(int seat, bool[] tried)
        {
            foreach (int i in Enumerable.Range(0, injectors).OrderBy(i => i == seat ? 0 : 1))
            {
                if (!allowed[seat % stages, i] || tried[i])
                {
                    continue;
                }

                tried[i] = true;
                if (seatOf[i] < 0 || Seat(seatOf[i], tried))
                {
                    (seats[seat], seatOf[i]) = (i, seat);
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>Whether the first injectors may go to the first chamber, stage by stage, and so on.</summary>
    internal static bool IsGivenAllowed(bool[,] allowed, int chambers)
    {
        int stages = allowed.GetLength(0);
        return Enumerable.Range(0, chambers * stages).All(seat => allowed[seat % stages, seat]);
    }

    /// <summary>Swaps two injectors, spare ones included, as long as that improves the placement.</summary>
    internal static void Improve(int[] seats, bool[,] allowed, Func<int[], double> value)
    {
        (int stages, int injectors) = (allowed.GetLength(0), allowed.GetLength(1));
        double best = value(seats);
        bool better = true;
        while (better)
        {
            better = false;
            for (int a = 0; a < seats.Length; a++)
            {
                for (int i = 0; i < injectors; i++)
                {
                    int b = Array.IndexOf(seats, i);
                    int old = seats[a];
                    if (i == old || !allowed[a % stages, i] || (b >= 0 && !allowed[b % stages, old]))
                    {
                        continue;
                    }

                    Exchange(seats, a, b, i, old);
                    double now = value(seats);
                    if (now < best * (1 - 1e-12))
                    {
                        (best, better) = (now, true);
                    }
                    else
                    {
                        Exchange(seats, a, b, old, i);
                    }
                }
            }
        }
    }

    private static void Exchange(int[] seats, int a, int b, int intoA, int intoB)
    {
        seats[a] = intoA;
        if (b >= 0)
        {
            seats[b] = intoB;
        }
    }
}
