namespace FuelMath;

/// <summary>
/// The part of t(w) = w + c(w) above its last falling part, where c is a piecewise cubic that ends at zero, and t has
/// slope one from there on.
/// </summary>
internal static class RisingBranch
{
    /// <summary>Slopes are of order one with rounding of 1e-16; a smaller slope counts as level.</summary>
    private const double Level = 1e-13;

    /// <summary>The width from which t rises throughout; zero when it never falls.</summary>
    internal static double Start(Curve correction)
    {
        for (int i = correction.Knots.Length - 1; i > 0; i--)
        {
            (double x0, double x1) = (correction.Knots[i - 1], correction.Knots[i]);
            double h = x1 - x0;
            double mean = Slope((correction.Values[i] - correction.Values[i - 1]) / h);
            if (LastFall(Slope(correction.Slope(x0)), Slope(correction.Slope(x1)), mean) is { } u)
            {
                return x0 + (u * h);
            }
        }

        return 0;
    }

    /// <summary>Where t takes a value, between the start of the rising branch and the start of the linear range.</summary>
    internal static double Find(Curve correction, double low, double high, double value)
    {
        if (value <= low + correction.At(low))
        {
            return low;
        }

        while (true)
        {
            double middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                return high;
            }

            if (middle + correction.At(middle) < value)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }
    }

    private static double Slope(double ofCorrection) => Math.Abs(1 + ofCorrection) <= Level ? 0 : 1 + ofCorrection;

    /// <summary>
    /// Where in (0, 1] a cubic with these end slopes and this mean slope falls, or is level, for the last time; null
    /// when it rises throughout, even if level at a point. A fall before 0 belongs to the piece before.
    /// </summary>
    private static double? LastFall(double start, double end, double mean)
    {
        // p'(u) = a u² + b u + start.
        double a = 3 * (start + end - (2 * mean));
        if (end < 0 || (end == 0 && (start < a || (start == 0 && a == 0))))
        {
            return 1;
        }

        if (end == 0)
        {
            // p'(u) = (1 - u) (start - a u).
            return start < 0 ? start / a : null;
        }

        double b = 2 * ((3 * mean) - (2 * start) - end);
        double discriminant = (b * b) - (4 * a * start);
        if (discriminant < 0)
        {
            return null;
        }

        double q = -0.5 * (b + Math.CopySign(Math.Sqrt(discriminant), b));
        double last = double.NegativeInfinity;
        foreach (double root in (ReadOnlySpan<double>)[q / a, start / q])
        {
            last = root > 0 && root < 1 && root > last ? root : last;
        }

        return double.IsNegativeInfinity(last) ? null : last;
    }
}
