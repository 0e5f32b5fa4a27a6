using System.Globalization;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath;

/// <summary>
/// Voltages at loads of constant power: U = U0 - R (P/U), the solution connected to zero power. Newton's method from
/// above converges to it monotonically if it exists; if not, the available power is found by continuation.
/// </summary>
internal sealed class PowerLoads(WiringMesh.Load[] loads, double[] open, double[,] resistance)
{
    private const int MostSteps = 60;
    private const double Settled = 1e-13;
    private const double LeastStride = 1e-6;

    private readonly Matrix<double> r = Matrix<double>.Build.DenseOfArray(resistance);

    internal int Iterations { get; private set; }

    internal RefusalText Why { get; private set; } = "";

    internal double[]? Solve()
    {
        for (int k = 0; k < loads.Length; k++)
        {
            if (!(open[k] > 0))
            {
                Why = $"load '{loads[k].Name:load}' would have {Amount.Volts(open[k]):value} before it draws anything.";
                return null;
            }
        }

        Vector<double> volts = Vector<double>.Build.DenseOfArray(open);
        double reached = 0;
        double stride = 1;
        while (reached < 1)
        {
            double next = Math.Min(1, reached + stride);
            if (At(volts, next) is { } solved)
            {
                (volts, reached) = (solved, next);
            }
            else
            {
                stride /= 2;
                if (stride < LeastStride)
                {
                    Why = Refusal(reached);
                    return null;
                }
            }
        }

        return [.. volts];
    }

    /// <summary>
    /// The voltages at a fraction of the power, from those at a smaller fraction; null when there is no solution.
    /// </summary>
    private Vector<double>? At(Vector<double> start, double share)
    {
        Vector<double> volts = start.Clone();
        for (int step = 0; step < MostSteps; step++)
        {
            Iterations++;
            Vector<double> current = Each(volts, (load, v) => share * load.Amount / v);
            Vector<double> miss = volts - Vector<double>.Build.DenseOfArray(open) + (r * current);
            Matrix<double> slope = Matrix<double>.Build.DenseIdentity(loads.Length);
            for (int k = 0; k < loads.Length; k++)
            {
                double perVolt = current[k] / volts[k];
                for (int l = 0; l < loads.Length; l++)
                {
                    slope[l, k] -= r[l, k] * perVolt;
                }
            }

            var factors = slope.LU();
            if (!(factors.Determinant > 0) || slope.Diagonal().Minimum() <= 0)
            {
                return null;
            }

            Vector<double> change = factors.Solve(miss);
            volts -= change;
            if (!(volts.Minimum() > 0))
            {
                return null;
            }

            if (change.InfinityNorm() <= Settled * volts.InfinityNorm())
            {
                return volts;
            }
        }

        return null;
    }

    private Vector<double> Each(Vector<double> volts, Func<WiringMesh.Load, double, double> value) =>
        Vector<double>.Build.Dense(loads.Length, k => value(loads[k], volts[k]));

    private RefusalText Refusal(double reached)
    {
        int worst = Enumerable.Range(0, loads.Length).MaxBy(k => loads[k].Amount / Most(k));
        return $"the loads of constant power can have at most {Amount.Percent(reached):share} of what they ask for; '{loads[worst].Name:load}' asks for {new Amount(loads[worst].Amount, "W"):value} and, alone, could have at most {new Amount(Most(worst), "W"):most}: {Amount.Volts(open[worst]):voltage} behind {new Amount(1000 * r[worst, worst], "mΩ"):resistance}.";
    }

    /// <summary>
    /// The greatest power of one load alone: at half of the voltage. Source: [Cartwright-2008] maximum power transfer.
    /// </summary>
    private double Most(int k) => open[k] * open[k] / (4 * r[k, k]);
}
