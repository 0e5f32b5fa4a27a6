using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Finds the adapters that join two ends in the fewest pieces.</summary>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public static partial class AdapterSearch
{
    /// <summary>
    /// Finds all shortest chains of adapters from a list; an adapter of the list may be used more than once.
    /// </summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <param name="available">The adapters to choose from; may be empty.</param>
    /// <param name="mostPaths">Largest number of chains to return; 1 to 1000.</param>
    /// <returns>
    /// The chains, all equally short, in the order of the list; one without adapters where the two ends seal directly;
    /// none where the list can't join them.
    /// </returns>
    /// <exception cref="ArgumentNullException">An end, the list or an adapter is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mostPaths"/> is not from 1 to 1000.</exception>
    /// <remarks>
    /// A breadth-first search from either end. Ends of one form and size are examined once, so a list of ten thousand
    /// adapters takes a fraction of a second. An adapter with two equal ends is used in one direction only.
    /// </remarks>
    public static ImmutableArray<Route> Shortest(
        FittingEnd from,
        FittingEnd to,
        IEnumerable<Adapter> available,
        int mostPaths
    )
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(available);
        Guard.InRange(mostPaths, 1, 1000);
        AdapterSide[] sides = [.. available.SelectMany(AdapterSide.Of)];
        Joint direct = Joint.Between(from, to);
        if (direct.Verdict == Joint.Outcome.Seals)
        {
            return [new([], [direct])];
        }

        var ways = new AdapterWays(sides);
        int[] ahead = ways.Distances(from);
        int[] behind = ways.Distances(to);
        ImmutableArray<ImmutableArray<AdapterSide>> steps = Steps(sides, ahead, behind);
        return steps.IsEmpty ? [] : Chains(from, to, steps, mostPaths);
    }

    /// <summary>The single adapter that would join two ends, whether or not it is made.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <returns>An adapter whose ends are the mates of the two.</returns>
    /// <exception cref="ArgumentNullException">An end is null.</exception>
    public static Adapter Generic(FittingEnd from, FittingEnd to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        return new($"adapter {from.Mate} to {to.Mate}", from.Mate, to.Mate);
    }

    /// <summary>
    /// For each position in the chain, the sides that occur there in some shortest chain, in the order of the list;
    /// empty if none joins. The distance of a side from the far end is that of its reversed adapter.
    /// </summary>
    private static ImmutableArray<ImmutableArray<AdapterSide>> Steps(AdapterSide[] sides, int[] ahead, int[] behind)
    {
        int fewest = int.MaxValue;
        for (int i = 0; i < sides.Length; i++)
        {
            int back = behind[sides[i].TurnedFrom(i)];
            if (ahead[i] != int.MaxValue && back != int.MaxValue)
            {
                fewest = Math.Min(fewest, ahead[i] + back - 1);
            }
        }

        if (fewest == int.MaxValue)
        {
            return [];
        }

        var steps = new ImmutableArray<AdapterSide>.Builder[fewest];
        for (int step = 0; step < fewest; step++)
        {
            steps[step] = ImmutableArray.CreateBuilder<AdapterSide>();
        }

        for (int i = 0; i < sides.Length; i++)
        {
            int back = behind[sides[i].TurnedFrom(i)];
            if (ahead[i] <= fewest && back <= fewest && ahead[i] + back - 1 == fewest)
            {
                steps[ahead[i] - 1].Add(sides[i]);
            }
        }

        return [.. steps.Select(s => s.ToImmutable())];
    }

    /// <summary>
    /// Every chain, in the order of the list, enumerated like the digits of a counter; there are no dead ends, because
    /// every side is in a shortest chain.
    /// </summary>
    private static ImmutableArray<Route> Chains(
        FittingEnd from,
        FittingEnd to,
        ImmutableArray<ImmutableArray<AdapterSide>> steps,
        int mostPaths
    )
    {
        var found = ImmutableArray.CreateBuilder<Route>();
        var chosen = new AdapterSide[steps.Length];
        var next = new int[steps.Length];
        int step = 0;
        while (step >= 0 && found.Count < mostPaths)
        {
            if (next[step] == steps[step].Length)
            {
                next[step--] = 0;
                continue;
            }

            AdapterSide side = steps[step][next[step]++];
            if (!JointRules.Seals(step == 0 ? from : chosen[step - 1].Out, side.In))
            {
                continue;
            }

            chosen[step] = side;
            if (step + 1 < steps.Length)
            {
                step++;
            }
            else
            {
                found.Add(Path(from, chosen, to));
            }
        }

        return found.ToImmutable();
    }

    private static Route Path(FittingEnd from, AdapterSide[] chain, FittingEnd to)
    {
        var joints = ImmutableArray.CreateBuilder<Joint>();
        FittingEnd end = from;
        foreach (AdapterSide piece in chain)
        {
            joints.Add(Joint.Between(end, piece.In));
            end = piece.Out;
        }

        joints.Add(Joint.Between(end, to));
        return new([.. chain.Select(p => p.Adapter)], joints.ToImmutable());
    }
}
