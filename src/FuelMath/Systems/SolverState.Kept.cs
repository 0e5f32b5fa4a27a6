using System.Runtime.CompilerServices;

namespace FuelMath;

/// <content>What a result keeps of the rounds: enough to begin the same state again and report on it.</content>
internal sealed partial class SolverState
{
    /// <summary>What is not computed from the point and the path alone, beside three numbers.</summary>
    private KeptArrays KeptRows
    {
        get
        {
            KeptArrays rows = default;
            (rows[0], rows[1], rows[2], rows[3]) = (DifferentialPressures, SeatPressures, PumpRises, PumpAmperes);
            (rows[4], rows[5], rows[6], rows[7]) = (FeedVolts, lastVolts, FeedAmperes, Widths.All);
            return rows;
        }
    }

    /// <summary>The numbers that a result keeps, copied.</summary>
    internal double[] Keep()
    {
        KeptArrays rows = KeptRows;
        int count = 3;
        foreach (double[] row in rows)
        {
            count += row.Length;
        }

        double[] kept = new double[count];
        (kept[0], kept[1], kept[2]) = (InjectorVolts, SourceVolts, InjectorConductance);
        int at = 3;
        foreach (double[] row in rows)
        {
            row.CopyTo(kept, at);
            at += row.Length;
        }

        return kept;
    }

    /// <summary>Begins the point of a result again and puts it where its rounds ended.</summary>
    /// <param name="solve">The result.</param>
    internal void Restore(KeptSolve solve)
    {
        Begin(solve.Point, solve.Shifts);
        ReadOnlySpan<double> kept = solve.Numbers;
        (InjectorVolts, SourceVolts, InjectorConductance) = (kept[0], kept[1], kept[2]);
        (Rounds, Iterations) = (solve.Rounds, solve.Iterations);
        int at = 3;
        KeptArrays rows = KeptRows;
        foreach (double[] row in rows)
        {
            kept.Slice(at, row.Length).CopyTo(row);
            at += row.Length;
        }

        for (int seat = 0; seat < TrueDifferences.Length; seat++)
        {
            TrueDifferences[seat] = SeatPressures[seat] - DischargePressures[seat];
        }

        for (int line = 0; line < Path.Lines; line++)
        {
            // The pumps stand as in the last round, whose voltages differ from those that followed by what counts as settled.
            Readings[line]?.Set(InputsOf(line) with { PumpVolts = lastVolts[Path.Feeds[line]] });
        }
    }

    [InlineArray(8)]
    private struct KeptArrays
    {
        private double[] first;
    }
}
