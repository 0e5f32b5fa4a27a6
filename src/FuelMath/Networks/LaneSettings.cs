using FuelMath.Scalars;
using FuelMath.Tables;

namespace FuelMath.Networks;

/// <summary>Settings that differ from number to number within a lane.</summary>
internal static class LaneSettings
{
    /// <summary>Sets a tabulated pump's curves of pressure rise (Pa) over flow (m3/s), one for each number of a lane.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="link">The pump.</param>
    /// <param name="curves">Each with as many pieces as the pump has, or fewer; the last one serves further numbers.</param>
    internal static void SetPump<T>(this NetworkWork<T> work, int link, ReadOnlySpan<Piece[]> curves)
        where T : struct, ILane<T> => work.SetPump(link, curves, static pieces => pieces);

    /// <summary>The same, of whatever holds the curves' pieces.</summary>
    internal static void SetPump<T, TCurve>(
        this NetworkWork<T> work,
        int link,
        ReadOnlySpan<TCurve> curves,
        Func<TCurve, ReadOnlySpan<Piece>> piecesOf
    )
        where T : struct, ILane<T>
    {
        ref PumpTableLaw<T> law = ref work.Law<PumpTableLaw<T>>(link);
        Span<double> numbers = stackalloc double[5 * T.Count];
        for (int i = 0; i < law.Count; i++)
        {
            for (int n = 0; n < T.Count; n++)
            {
                Piece p = law.PieceOf(piecesOf(curves[Math.Min(n, curves.Length - 1)]), i);
                numbers[n] = p.X0;
                numbers[T.Count + n] = p.C0;
                numbers[(2 * T.Count) + n] = p.C1;
                numbers[(3 * T.Count) + n] = p.C2;
                numbers[(4 * T.Count) + n] = p.C3;
            }

            law.Set(
                i,
                T.Load(numbers),
                T.Load(numbers[T.Count..]),
                T.Load(numbers[(2 * T.Count)..]),
                T.Load(numbers[(3 * T.Count)..]),
                T.Load(numbers[(4 * T.Count)..])
            );
        }

        law.Finish();
        work.Touch();
    }

    /// <summary>Takes over one number of a lane with all that a verdict looks at.</summary>
    internal static void Take<T>(this NetworkWork<Real> one, NetworkWork<T> work, int number)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        Take(work.Pressure, one.Pressure, numbers, number);
        Take(work.Flow, one.Flow, numbers, number);
        Take(work.Memory, one.Memory, numbers, number);
        Take(work.FromUp, one.FromUp, numbers, number);
        Take(work.ToDown, one.ToDown, numbers, number);
        Take(work.Error, one.Error, numbers, number);
        T.Store(work.Iterations, numbers);
        double iterations = numbers[number];
        T.Store(work.StartScale, numbers);
        one.TakeOver(new Real(iterations), new Real(numbers[number]));
    }

    /// <summary>Puts one number of a lane in the place of another, so that a warm start begins there as it does at the first.</summary>
    internal static void Repeat<T>(this NetworkWork<T> work, int number, int inPlaceOf)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        foreach (T[] all in (ReadOnlySpan<T[]>)[work.Pressure, work.Flow, work.Memory])
        {
            for (int i = 0; i < all.Length; i++)
            {
                T.Store(all[i], numbers);
                numbers[inPlaceOf] = numbers[number];
                all[i] = T.Load(numbers);
            }
        }
    }

    private static void Take<T>(T[] from, Real[] to, Span<double> numbers, int number)
        where T : struct, ILane<T>
    {
        for (int i = 0; i < to.Length; i++)
        {
            T.Store(from[i], numbers);
            to[i] = new Real(numbers[number]);
        }
    }
}
