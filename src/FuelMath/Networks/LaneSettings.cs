using FuelMath.Scalars;
using FuelMath.Tables;

namespace FuelMath.Networks;

/// <summary>Settings that differ from number to number within a lane.</summary>
internal static class LaneSettings
{
    /// <summary>Sets a tabulated pump's curves of pressure rise (Pa) over flow (m3/s), one for each number of a lane.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="link">The pump.</param>
    /// <param name="curves">As many as the lane holds numbers, each with as many points as the pump has.</param>
    internal static void SetPump<T>(this NetworkWork<T> work, int link, ReadOnlySpan<Curve> curves)
        where T : struct, ILane<T>
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(curves.Length, T.Count);
        ref PumpTableLaw<T> law = ref work.Law<PumpTableLaw<T>>(link);
        Span<double> numbers = stackalloc double[5 * T.Count];
        for (int i = 0; i < law.Count; i++)
        {
            for (int n = 0; n < T.Count; n++)
            {
                ReadOnlySpan<Piece> pieces = curves[n].Pieces;
                ArgumentOutOfRangeException.ThrowIfGreaterThan(pieces.Length, law.Count);
                Piece p = pieces[Math.Min(i, pieces.Length - 1)];
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
}
