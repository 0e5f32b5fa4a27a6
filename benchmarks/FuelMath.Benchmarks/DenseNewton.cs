using FuelMath.Formulas;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Benchmarks;

/// <summary>
/// What one would write first: Newton's method on all pressures and flows at once, with a dense matrix of MathNet.Numerics.
/// Laws, derivatives and start are the library's own, so that only the method differs.
/// </summary>
internal sealed class DenseNewton
{
    private const int MostIterations = 60;

    private readonly NetworkPlan plan;
    private readonly NetworkWork<Real> work;
    private readonly double[] flow;

    internal DenseNewton(NetworkPlan plan)
    {
        this.plan = plan;
        work = plan.Rent<Real>();
        flow = new double[plan.Links.Length];
    }

    internal void Solve()
    {
        int unknown = plan.Unknown;
        int links = plan.Links.Length;
        work.Start(warm: false);
        Matrix<double> jacobian = Matrix<double>.Build.Dense(unknown + links, unknown + links);
        Vector<double> residual = Vector<double>.Build.Dense(unknown + links);
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            _ = work.Linearize(Real.Less(new Real(1), new Real(0)));
            jacobian.Clear();
            for (int i = 0; i < unknown; i++)
            {
                residual[i] = -work.Draw[i].Value;
            }

            // A link: flow - fromUp x change upstream + toDown x change downstream = free; a node: flows balance.
            for (int e = 0; e < links; e++)
            {
                int row = unknown + e;
                jacobian[row, row] = 1;
                residual[row] = work.Free[e].Value;
                if (plan.From[e] < unknown)
                {
                    jacobian[row, plan.From[e]] = -work.FromUp[e].Value;
                    jacobian[plan.From[e], row] = 1;
                }

                if (plan.To[e] < unknown)
                {
                    jacobian[row, plan.To[e]] = work.ToDown[e].Value;
                    jacobian[plan.To[e], row] = -1;
                }
            }

            Vector<double> next = jacobian.Solve(residual);
            double change = 0;
            double scale = 0;
            for (int i = 0; i < unknown; i++)
            {
                work.Pressure[i] += new Real(next[i]);
            }

            for (int e = 0; e < links; e++)
            {
                double now = next[unknown + e];
                change = Math.Max(change, Math.Abs(now - work.Flow[e].Value));
                scale = Math.Max(scale, Math.Abs(now));
                work.Flow[e] = new Real(now);
            }

            if (change < 1e-7 * scale)
            {
                break;
            }
        }

        for (int e = 0; e < links; e++)
        {
            flow[e] = work.Flow[e].Value;
        }
    }

    /// <summary>Both must have found the same, or the times say nothing.</summary>
    internal void Compare(NetworkWork<Real> solved)
    {
        double scale = flow.Max(Math.Abs);
        for (int e = 0; e < flow.Length; e++)
        {
            if (!(Math.Abs(flow[e] - solved.Flow[e].Value) <= 1e-6 * scale))
            {
                throw new InvalidOperationException($"'{plan.Links[e].Name}': {flow[e]} and {solved.Flow[e].Value}.");
            }
        }
    }
}
