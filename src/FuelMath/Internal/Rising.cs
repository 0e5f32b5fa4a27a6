namespace FuelMath;

/// <summary>The root of a rising function, to the last bit, by bisection.</summary>
internal static class Rising
{
    /// <summary>Where a rising function takes a value, between two places where it lies on either side.</summary>
    internal static double Root(Func<double, double> function, double value, double low, double high)
    {
        double middle = 0.5 * (low + high);
        while (middle > low && middle < high)
        {
            if (function(middle) < value)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }

            middle = 0.5 * (low + high);
        }

        return high;
    }
}
