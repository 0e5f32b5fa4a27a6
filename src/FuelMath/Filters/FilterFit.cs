namespace FuelMath;

/// <summary>Kernel: non-negative least squares of y = p x + q x² in two unknowns.</summary>
/// <remarks>
/// Columns and values are scaled to order one, and the two columns are made orthogonal before solving, so that nearly
/// equal flows lose as little accuracy as possible. The problem is convex: when the unconstrained optimum has a
/// negative coefficient, the constrained one has a zero coefficient. Source: [Lawson-1974] chapter 23, for two
/// unknowns.
/// </remarks>
internal static class FilterFit
{
    /// <summary>The two coefficients, neither negative. The caller has checked the points.</summary>
    internal static (double Linear, double Quadratic) Solve(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        (double xScale, double yScale) = (x[^1], y[^1]);
        (double x2, double x3, double x4, double xy, double x2y) = (0, 0, 0, 0, 0);
        for (int i = 0; i < x.Length; i++)
        {
            (double u, double v) = (x[i] / xScale, y[i] / yScale);
            x2 += u * u;
            x3 += u * u * u;
            x4 += u * u * u * u;
            xy += u * v;
            x2y += u * u * v;
        }

        // The part of the column x² that is orthogonal to the column x.
        double lean = x3 / x2;
        (double top, double bottom) = (0, 0);
        for (int i = 0; i < x.Length; i++)
        {
            double u = x[i] / xScale;
            double rest = (u * u) - (lean * u);
            top += rest * (y[i] / yScale);
            bottom += rest * rest;
        }

        double quadratic = top / bottom;
        double linear = (xy / x2) - (lean * quadratic);
        if (linear < 0 || quadratic < 0)
        {
            // The reduction of the sum of squares by each column alone.
            (linear, quadratic) = xy * xy / x2 >= x2y * x2y / x4 ? (xy / x2, 0) : (0.0, x2y / x4);
        }

        return (linear * yScale / xScale, quadratic * yScale / (xScale * xScale));
    }
}
