namespace FuelMath.Statistics;

/// <summary>Kernel: weighted least squares of a straight line, about the center of the readings.</summary>
/// <remarks>
/// About the center, slope and height are uncorrelated, so each standard error is the root of a sum of squares. Through
/// the origin the center is the origin, whose height is known exactly.
/// </remarks>
internal readonly struct LineFit
{
    private LineFit(
        double centerX,
        double centerY,
        double slope,
        double sxx,
        double totalWeight,
        double centerVariance,
        double deviation,
        double rSquared
    )
    {
        (CenterX, CenterY, Slope, Sxx) = (centerX, centerY, slope, sxx);
        (TotalWeight, CenterVariance, Deviation, RSquared) = (totalWeight, centerVariance, deviation, rSquared);
    }

    internal double CenterX { get; }

    internal double CenterY { get; }

    internal double Slope { get; }

    /// <summary>Sum of weight times squared distance from the center.</summary>
    internal double Sxx { get; }

    internal double TotalWeight { get; }

    /// <summary>Variance of the height of the center, in units of the squared deviation.</summary>
    internal double CenterVariance { get; }

    internal double Deviation { get; }

    internal double RSquared { get; }

    /// <summary>The fit. The caller has checked the readings.</summary>
    internal static LineFit Of(
        ReadOnlySpan<double> x,
        ReadOnlySpan<double> y,
        ReadOnlySpan<double> weights,
        bool origin
    )
    {
        double total = 0;
        foreach (double weight in weights)
        {
            total += weight;
        }

        double centerX = origin ? 0 : Averages.Mean(x, weights);
        double centerY = origin ? 0 : Averages.Mean(y, weights);
        (double scaleX, double scaleY) = (Reach(x, centerX), Reach(y, centerY));
        (double sxx, double sxy, double syy) = (0, 0, 0);
        for (int i = 0; i < x.Length; i++)
        {
            (double u, double v) = ((x[i] - centerX) / scaleX, (y[i] - centerY) / scaleY);
            double share = weights[i] / total;
            sxx += share * u * u;
            sxy += share * u * v;
            syy += share * v * v;
        }

        double slope = sxy / sxx;
        double left = 0;
        for (int i = 0; i < x.Length; i++)
        {
            double rest = ((y[i] - centerY) / scaleY) - (slope * ((x[i] - centerX) / scaleX));
            left += weights[i] / total * rest * rest;
        }

        int degrees = x.Length - (origin ? 1 : 2);
        return new(
            centerX,
            centerY,
            slope * (scaleY / scaleX),
            sxx * total * scaleX * scaleX,
            total,
            origin ? 0 : 1 / total,
            scaleY * Math.Sqrt(left * total / degrees),
            syy == 0 ? 1 : 1 - (left / syy)
        );
    }

    /// <summary>The largest distance from a center; one if it is zero, so that it can be a divisor.</summary>
    private static double Reach(ReadOnlySpan<double> values, double center)
    {
        double reach = 0;
        foreach (double value in values)
        {
            reach = Math.Max(reach, Math.Abs(value - center));
        }

        return reach > 0 ? reach : 1;
    }
}
