namespace FuelMath;

/// <summary>A pump's curve of rise (Pa) over flow (m³/s) by its pieces, each of which is monotonic.</summary>
internal sealed class HumpCurve(Piece[] pieces)
{
    private readonly Piece[] pieces = pieces;

    /// <summary>The flow of the last point.</summary>
    internal double End => pieces[^1].X0;

    /// <summary>The rise at a flow that is not negative.</summary>
    internal double At(double flow)
    {
        int i = 0;
        while (i + 1 < pieces.Length && pieces[i + 1].X0 <= flow)
        {
            i++;
        }

        return pieces[i].At(flow);
    }

    /// <summary>
    /// The range of the curve between two flows: its least and greatest rise, and whether it falls throughout.
    /// </summary>
    internal (double Least, double Greatest, bool Falls) Between(double from, double to)
    {
        double last = At(from);
        (double least, double greatest, bool falls) = (last, last, true);
        for (int i = 1; i <= pieces.Length; i++)
        {
            // The points between, and the far end; the first two pieces begin at one point.
            if (i < pieces.Length && !(pieces[i].X0 > from && pieces[i].X0 < to))
            {
                continue;
            }

            double next = i < pieces.Length ? pieces[i].C0 : At(to);
            falls &= next < last;
            (least, greatest, last) = (Math.Min(least, next), Math.Max(greatest, next), next);
        }

        return (least, greatest, falls || !(to > from));
    }
}
