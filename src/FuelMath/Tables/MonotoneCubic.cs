namespace FuelMath;

/// <summary>Slopes and pieces of a shape-preserving cubic, and its inverse. Scale-free: no absolute tolerance.</summary>
/// <remarks>
/// Source: [Fritsch-Butland-1984] (inside), [Moler-2004] section 3.4 (ends).
/// </remarks>
internal static class MonotoneCubic
{
    /// <summary>Slopes at both ends of a piece up to this many times its chord's never make it turn.</summary>
    internal const double Steepest = 3;

    private const int MaximumSteps = 200;

    /// <summary>Up to this many points the slopes are kept on the stack.</summary>
    private const int OnStack = 64;

    /// <summary>One straight piece before the first point, a cubic for each interval, one straight piece after the last.</summary>
    internal static Piece[] Pieces(double[] x, double[] y)
    {
        var pieces = new Piece[x.Length + 1];
        Fill(x, y, pieces);
        return pieces;
    }

    /// <summary>The same, into a span with one piece more than points.</summary>
    internal static void Fill(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Span<Piece> pieces)
    {
        int n = x.Length;
        Span<double> slope = n <= OnStack ? stackalloc double[n] : new double[n];
        Slopes(x, y, slope);
        Fill(x, y, slope, pieces);
    }

    /// <summary>The same with given slopes at the points: a cubic that has them reproduces itself.</summary>
    internal static void Fill(
        ReadOnlySpan<double> x,
        ReadOnlySpan<double> y,
        ReadOnlySpan<double> slope,
        Span<Piece> pieces
    )
    {
        int n = x.Length;
        pieces[0] = new Piece(x[0], y[0], slope[0], 0, 0);
        pieces[n] = new Piece(x[n - 1], y[n - 1], slope[n - 1], 0, 0);
        for (int i = 1; i < n; i++)
        {
            double h = x[i] - x[i - 1];
            double chord = (y[i] - y[i - 1]) / h;
            double c2 = ((3 * chord) - (2 * slope[i - 1]) - slope[i]) / h;
            double c3 = (slope[i - 1] + slope[i] - (2 * chord)) / h / h;
            pieces[i] = new Piece(x[i - 1], y[i - 1], slope[i - 1], c2, c3);
        }
    }

    /// <summary>
    /// Brings given slopes nearer to zero where the cubic between two points would turn. The points rise or fall
    /// throughout, and so do the slopes. Source: [Fritsch-Carlson-1980] section 2.
    /// </summary>
    internal static void KeepDirection(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Span<double> slope)
    {
        int i = 1;
        while (i < x.Length)
        {
            double chord = (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
            bool changes =
                !KeepsDirection(slope[i - 1] / chord, slope[i] / chord)
                && (Lower(ref slope[i - 1], chord) | Lower(ref slope[i], chord));

            // A lower slope at its end can make the piece before turn: that one is looked at again. A piece whose slopes are both
            // at most three times its chord's never turns, however they are lowered, so that each is changed only once.
            i = changes ? Math.Max(1, i - 1) : i + 1;
        }
    }

    private static bool Lower(ref double slope, double chord)
    {
        bool steep = slope / chord > Steepest;
        slope = steep ? Steepest * chord : slope;
        return steep;
    }

    /// <summary>From the slopes at both ends over that of the chord, neither below zero.</summary>
    private static bool KeepsDirection(double first, double last)
    {
        double lean = (2 * first) + last - 3;
        return lean <= 0
            || first + (2 * last) <= 3
            || first - (lean * lean / (3 * (first + last - 2))) >= -Guard.EdgeTolerance;
    }

    /// <summary>The piece that holds <paramref name="at"/>; an inner point belongs to the piece on its right.</summary>
    internal static int PieceAt(ReadOnlySpan<double> x, double at)
    {
        if (at == x[^1])
        {
            return x.Length;
        }

        int found = x.BinarySearch(at);
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>The piece that takes a value, 0 and n being the ones beyond the ends.</summary>
    internal static int PieceOfValue(double[] y, double target, bool rising)
    {
        int sign = rising ? 1 : -1;
        if (sign * target < sign * y[0])
        {
            return 0;
        }

        for (int i = 1; i < y.Length; i++)
        {
            if (sign * target <= sign * y[i])
            {
                return i;
            }
        }

        return y.Length;
    }

    /// <summary>
    /// Where a piece takes a value, by Newton's method with a bracket. A width of NaN marks a straight outer piece.
    /// </summary>
    internal static double Solve(in Piece piece, double target, double width)
    {
        if (double.IsNaN(width))
        {
            return piece.X0 + ((target - piece.C0) / piece.C1);
        }

        (double low, double high) = (piece.X0, piece.X0 + width);
        bool rising = piece.At(high) > piece.C0;
        double x = low + (width * ((target - piece.C0) / (piece.At(high) - piece.C0)));
        for (int i = 0; i < MaximumSteps; i++)
        {
            double miss = piece.At(x) - target;
            if (miss == 0)
            {
                return x;
            }

            if (miss > 0 == rising)
            {
                high = x;
            }
            else
            {
                low = x;
            }

            double next = x - (miss / piece.Slope(x));
            if (!(next > low && next < high))
            {
                next = low + ((high - low) / 2);
            }

            if (next == x || next == low || next == high)
            {
                return next;
            }

            x = next;
        }

        return x;
    }

    private static void Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Span<double> slope)
    {
        int n = x.Length;
        double hBefore = x[1] - x[0];
        double before = (y[1] - y[0]) / hBefore;
        slope.Fill(before);
        for (int i = 1; i < n - 1; i++)
        {
            double h = x[i + 1] - x[i];
            double chord = (y[i + 1] - y[i]) / h;
            slope[i] = Inside(hBefore, h, before, chord);
            if (i == 1)
            {
                slope[0] = End(hBefore, h, before, chord);
            }

            if (i == n - 2)
            {
                slope[n - 1] = End(h, hBefore, chord, before);
            }

            (hBefore, before) = (h, chord);
        }
    }

    private static double Inside(double hBefore, double hAfter, double before, double after)
    {
        if (before == 0 || after == 0 || before > 0 != after > 0)
        {
            return 0;
        }

        double weightBefore = (2 * hAfter) + hBefore;
        double weightAfter = hAfter + (2 * hBefore);
        return (weightBefore + weightAfter) / ((weightBefore / before) + (weightAfter / after));
    }

    private static double End(double hNear, double hFar, double near, double far)
    {
        double slope = ((((2 * hNear) + hFar) * near) - (hNear * far)) / (hNear + hFar);
        return SignOf(slope) != SignOf(near) ? 0
            : SignOf(near) != SignOf(far) && Math.Abs(slope) > Steepest * Math.Abs(near) ? Steepest * near
            : slope;
    }

    /// <summary>The sign; zero for what is not a number, which the check of the pieces refuses.</summary>
    private static int SignOf(double number) =>
        number > 0 ? 1
        : number < 0 ? -1
        : 0;
}
