using FuelMath.Tables;

namespace FuelMath.Injectors;

/// <summary>
/// The part above the last bump of t(w) = w + c(w), where c is a piecewise cubic that ends at zero, and t has slope one
/// from there on.
/// </summary>
internal static class RisingBranch
{
    /// <summary>The width from which t rises throughout; zero when it never falls.</summary>
    internal static double Start(Curve correction)
    {
        for (int i = correction.Knots.Length - 1; i > 0; i--)
        {
            (double x0, double x1) = (correction.Knots[i - 1], correction.Knots[i]);
            double h = x1 - x0;
            double rise = h + correction.Values[i] - correction.Values[i - 1];
            double start = h * (1 + correction.Slope(x0));
            double end = h * (1 + correction.Slope(x1));
            if (end <= 0)
            {
                return x1;
            }

            if (LastZero(start, end, rise) is { } u)
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

    /// <summary>
    /// The last zero in [0, 1) of the derivative of a cubic with these end slopes and this rise; none when it stays
    /// above zero. The slope at the end is greater than zero.
    /// </summary>
    private static double? LastZero(double start, double end, double rise)
    {
        // p'(u) = a u² + b u + start.
        double a = 3 * (start + end - (2 * rise));
        double b = 2 * ((3 * rise) - (2 * start) - end);
        double discriminant = (b * b) - (4 * a * start);
        if (discriminant < 0)
        {
            return null;
        }

        double q = -0.5 * (b + Math.CopySign(Math.Sqrt(discriminant), b));
        double last = double.NegativeInfinity;
        foreach (double root in (ReadOnlySpan<double>)[q / a, start / q])
        {
            last = root >= 0 && root < 1 && root > last ? root : last;
        }

        return double.IsNegativeInfinity(last) ? null : last;
    }
}
