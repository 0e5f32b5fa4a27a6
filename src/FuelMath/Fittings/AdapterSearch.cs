using System.Collections.Immutable;
using FuelMath.Internal;

namespace FuelMath.Fittings;

/// <summary>Finds the adapters that join two ends in the fewest pieces.</summary>
public static class AdapterSearch
{
    /// <summary>Finds every chain of fewest pieces out of a list; a piece of the list may be used more than once.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <param name="available">The adapters to choose from; may be none.</param>
    /// <param name="mostPaths">How many chains of that length to give at most; 1 to 1000.</param>
    /// <returns>
    /// The chains, all equally short, in the order of the list; one without adapters where the two ends seal by themselves;
    /// none where the list does not join them.
    /// </returns>
    /// <exception cref="ArgumentNullException">An end, the list or an adapter is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mostPaths"/> is outside what is allowed.</exception>
    /// <remarks>A search in breadth: all chains of one piece, then of two, until some join.</remarks>
    public static ImmutableArray<AdapterPath> Shortest(
        FittingEnd from,
        FittingEnd to,
        IEnumerable<Adapter> available,
        int mostPaths
    )
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(available);
        Guard.InRange(mostPaths, 1, 1000, nameof(mostPaths));
        ImmutableArray<Piece> pieces = [.. available.SelectMany(Sides)];
        Joint direct = Joint.Between(from, to);
        if (direct.Verdict == JointVerdict.Seals)
        {
            return [new([], [direct])];
        }

        int[] distance = Distances(from, pieces);
        int fewest = int.MaxValue;
        for (int i = 0; i < pieces.Length; i++)
        {
            if (distance[i] < fewest && Seals(pieces[i].Out, to))
            {
                fewest = distance[i];
            }
        }

        if (fewest == int.MaxValue)
        {
            return [];
        }

        var found = ImmutableArray.CreateBuilder<AdapterPath>();
        Walk([], from);
        return found.ToImmutable();

        void Walk(ImmutableArray<Piece> chain, FittingEnd end)
        {
            if (chain.Length == fewest && Seals(end, to))
            {
                found.Add(Path(from, chain, to));
            }

            for (int i = 0; i < pieces.Length && chain.Length < fewest && found.Count < mostPaths; i++)
            {
                // A chain is as short as can be only if each piece is reached as early as can be.
                if (distance[i] == chain.Length + 1 && Seals(end, pieces[i].In))
                {
                    Walk(chain.Add(pieces[i]), pieces[i].Out);
                }
            }
        }
    }

    /// <summary>The one adapter that would join two ends, whether or not anybody makes it.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <returns>An adapter whose ends are those that the two are made for.</returns>
    /// <exception cref="ArgumentNullException">An end is null.</exception>
    public static Adapter Generic(FittingEnd from, FittingEnd to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        return new($"adapter {from.Mate} to {to.Mate}", from.Mate, to.Mate);
    }

    private static IEnumerable<Piece> Sides(Adapter adapter)
    {
        ArgumentNullException.ThrowIfNull(adapter, "available");
        return [new(adapter, adapter.First, adapter.Second), new(adapter, adapter.Second, adapter.First)];
    }

    /// <summary>By piece, how many pieces a chain from the start to it has, itself counted; the greatest number if none.</summary>
    private static int[] Distances(FittingEnd from, ImmutableArray<Piece> pieces)
    {
        var distance = new int[pieces.Length];
        Array.Fill(distance, int.MaxValue);
        Queue<int> open = new();
        Reach(from, 1);
        while (open.TryDequeue(out int next))
        {
            Reach(pieces[next].Out, distance[next] + 1);
        }

        return distance;

        void Reach(FittingEnd end, int pieceCount)
        {
            for (int i = 0; i < pieces.Length; i++)
            {
                if (distance[i] == int.MaxValue && Seals(end, pieces[i].In))
                {
                    distance[i] = pieceCount;
                    open.Enqueue(i);
                }
            }
        }
    }

    private static AdapterPath Path(FittingEnd from, ImmutableArray<Piece> chain, FittingEnd to)
    {
        var joints = ImmutableArray.CreateBuilder<Joint>();
        FittingEnd end = from;
        foreach (Piece piece in chain)
        {
            joints.Add(Joint.Between(end, piece.In));
            end = piece.Out;
        }

        joints.Add(Joint.Between(end, to));
        return new([.. chain.Select(p => p.Adapter)], joints.ToImmutable());
    }

    private static bool Seals(FittingEnd a, FittingEnd b) => Joint.Between(a, b).Verdict == JointVerdict.Seals;

    private readonly record struct Piece(Adapter Adapter, FittingEnd In, FittingEnd Out);
}
