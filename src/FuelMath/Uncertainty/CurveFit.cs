using FuelMath.Formulas;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Statistics;

/// <summary>Kernel: weighted least squares of any model, with exact derivatives.</summary>
/// <remarks>
/// Newton's method with halved steps; slopes and curvatures are those of <see cref="Dual{T}"/>. Where the Hessian gives
/// no descent, a Gauss-Newton step. The uncertainties of the readings are assumed known. Source: [Draper-Smith-1998]
/// chapter 24 (nonlinear estimation).
/// </remarks>
internal sealed class CurveFit
{
    private const int MostSteps = 200;
    private const int MostHalvings = 50;

    /// <summary>Convergence: the predicted decrease is below this fraction of the sum of squares.</summary>
    private const double Settled = 1e-13;

    /// <summary>Convergence where the model fits all readings exactly: the predicted decrease is below this.</summary>
    private const double Nothing = 1e-20;

    /// <summary>
    /// Where the predicted decrease is below this fraction of the sum of squares, rounding hides it and it need not be
    /// achieved.
    /// </summary>
    private const double Rounding = 1e-9;

    /// <summary>
    /// The fraction of the decrease predicted by the slope that a step must achieve. Source: [Armijo-1966].
    /// </summary>
    private const double Sufficient = 0.1;

    /// <summary>A parameter of order one with a larger standard error is not determined.</summary>
    private const double Open = 1e6;

    private CurveFit(double[] parameters, double chiSquared, Matrix<double> design, int steps)
    {
        (Parameters, ChiSquared, Design, Steps) = (parameters, chiSquared, design, steps);
        Covariance = parameters.Length == 0 ? null : design.TransposeThisAndMultiply(design).Inverse();
    }

    /// <summary>The parameters.</summary>
    internal double[] Parameters { get; }

    /// <summary>The sum of squared residuals, each in units of its uncertainty.</summary>
    internal double ChiSquared { get; }

    /// <summary>The slope of each reading, in units of its uncertainty, by each parameter.</summary>
    internal Matrix<double> Design { get; }

    /// <summary>The covariance of the parameters; null when there are none.</summary>
    internal Matrix<double>? Covariance { get; }

    internal int Steps { get; }

    /// <summary>Whether the readings determine all parameters: each has a standard error where the fit ended.</summary>
    internal bool HasStandardErrors =>
        Enumerable.Range(0, Parameters.Length).All(j => double.IsFinite(StandardError(j)) && StandardError(j) < Open);

    internal double StandardError(int parameter) => Math.Sqrt(Covariance![parameter, parameter]);

    /// <summary>Fits the model from a start at which it is defined.</summary>
    /// <exception cref="NoSolutionException">It does not converge.</exception>
    internal static CurveFit Of<TModel>(TModel model, double[] readings, double[] uncertainties, double[] start)
        where TModel : IFitModel
    {
        double[] at = [.. start];
        double sum = SumOf(model, readings, uncertainties, at);
        for (int step = 0; step < MostSteps; step++)
        {
            Matrix<double> design = DesignOf(model, uncertainties, at);
            if (at.Length == 0)
            {
                return new(at, sum, design, step);
            }

            Vector<double> left = Vector<double>.Build.Dense(
                readings.Length,
                i => (readings[i] - Value(model, at, i)) / uncertainties[i]
            );
            Vector<double> move = Step(model, uncertainties, at, design, left);
            HoldAtEnds(model, at, design, left, move);
            double promise = design.TransposeThisAndMultiply(left) * move;
            if (promise <= Math.Max(Settled * sum, Nothing))
            {
                double[] last = Moved(model, at, move, 1);
                double end = model.IsDefined(last) ? SumOf(model, readings, uncertainties, last) : sum;
                return end < sum
                    ? new(last, end, DesignOf(model, uncertainties, last), step + 1)
                    : new(at, sum, design, step + 1);
            }

            if (
                !TryMove(model, readings, uncertainties, move, promise, ref at, ref sum)
                && !(model.HasCorners && TryEach(model, readings, uncertainties, design, left, ref at, ref sum))
            )
            {
                // At a corner no step decreases the sum, though the one-sided slope predicts so.
                return promise <= Rounding * sum || model.HasCorners
                    ? new(at, sum, design, step + 1)
                    : throw Unsettled(sum, step + 1);
            }
        }

        throw Unsettled(sum, MostSteps);
    }

    /// <summary>The step to the minimum of the quadratic approximation of the sum of squares.</summary>
    private static Vector<double> Step<TModel>(
        TModel model,
        double[] uncertainties,
        double[] at,
        Matrix<double> design,
        Vector<double> left
    )
        where TModel : IFitModel
    {
        Matrix<double> curvature = design.TransposeThisAndMultiply(design);
        for (int j = 0; j < at.Length; j++)
        {
            for (int k = 0; k < at.Length; k++)
            {
                Dual<Dual<Real>>[] dual =
                [
                    .. at.Select(
                        (p, i) =>
                            new Dual<Dual<Real>>(
                                new Dual<Real>(new Real(p), new Real(i == j ? 1 : 0)),
                                Dual<Real>.Of(i == k ? 1 : 0)
                            )
                    ),
                ];
                for (int i = 0; i < left.Count; i++)
                {
                    curvature[j, k] -= left[i] / uncertainties[i] * model.At(dual, i).Slope.Slope.Value;
                }
            }
        }

        Vector<double> slope = design.TransposeThisAndMultiply(left);
        try
        {
            Vector<double> newton = curvature.Cholesky().Solve(slope);
            if (newton.All(double.IsFinite))
            {
                return newton;
            }
        }
        catch (ArgumentException)
        {
            // Not positive definite: the quadratic has no minimum.
        }

        return design.QR().Solve(left);
    }

    /// <summary>At a corner of one parameter a step in another one alone may still decrease the sum.</summary>
    private static bool TryEach<TModel>(
        TModel model,
        double[] readings,
        double[] uncertainties,
        Matrix<double> design,
        Vector<double> left,
        ref double[] at,
        ref double sum
    )
        where TModel : IFitModel
    {
        bool moved = false;
        double before = sum;
        for (int j = 0; at.Length > 1 && j < at.Length; j++)
        {
            Vector<double> column = design.Column(j);
            Vector<double> move = Vector<double>.Build.Dense(at.Length);
            move[j] = column * left / (column * column);
            moved |= TryMove(model, readings, uncertainties, move, move[j] * (column * left), ref at, ref sum);
        }

        return moved && before - sum > Settled * before;
    }

    private static bool TryMove<TModel>(
        TModel model,
        double[] readings,
        double[] uncertainties,
        Vector<double> move,
        double promise,
        ref double[] at,
        ref double sum
    )
        where TModel : IFitModel
    {
        // Across a corner a step may gain almost nothing: there it must achieve a larger fraction of the predicted
        // decrease.
        double wanted = model.HasCorners ? 2 * Sufficient * promise : 0;
        double share = 1;
        for (int halving = 0; halving < MostHalvings; halving++, share /= 2)
        {
            double[] next = Moved(model, at, move, share);
            if (
                model.IsDefined(next)
                && SumOf(model, readings, uncertainties, next) is var less
                && less < sum - (share * wanted)
            )
            {
                (at, sum) = (next, less);
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// A parameter at its bound stays there when the step would lead beyond; the others then take the Gauss-Newton step
    /// without it.
    /// </summary>
    private static void HoldAtEnds<TModel>(
        TModel model,
        double[] at,
        Matrix<double> design,
        Vector<double> left,
        Vector<double> move
    )
        where TModel : IFitModel
    {
        bool[] held =
        [
            .. at.Select((p, j) => (p <= model.Lowest(j) && move[j] < 0) || (p >= model.Highest(j) && move[j] > 0)),
        ];
        if (!held.Contains(true))
        {
            return;
        }

        int[] free = [.. Enumerable.Range(0, at.Length).Where(j => !held[j])];
        move.Clear();
        if (free.Length > 0)
        {
            Vector<double> rest = Matrix<double>.Build.DenseOfColumns(free.Select(design.Column)).QR().Solve(left);
            for (int k = 0; k < free.Length; k++)
            {
                move[free[k]] = rest[k];
            }
        }
    }

    private static double[] Moved<TModel>(TModel model, double[] at, Vector<double> move, double share)
        where TModel : IFitModel =>
        [.. at.Select((p, j) => Math.Clamp(p + (share * move[j]), model.Lowest(j), model.Highest(j)))];

    /// <summary>The slope of each reading, in units of its uncertainty, by each parameter.</summary>
    internal static Matrix<double> DesignOf<TModel>(TModel model, double[] uncertainties, double[] at)
        where TModel : IFitModel =>
        Matrix<double>.Build.Dense(
            uncertainties.Length,
            at.Length,
            (i, j) =>
            {
                Dual<Real>[] dual = [.. at.Select((p, k) => new Dual<Real>(new Real(p), new Real(k == j ? 1 : 0)))];
                return model.At(dual, i).Slope.Value / uncertainties[i];
            }
        );

    private static double SumOf<TModel>(TModel model, double[] readings, double[] uncertainties, double[] at)
        where TModel : IFitModel
    {
        double sum = 0;
        for (int i = 0; i < readings.Length; i++)
        {
            double left = (readings[i] - Value(model, at, i)) / uncertainties[i];
            sum += left * left;
        }

        return sum;
    }

    private static double Value<TModel>(TModel model, double[] at, int reading)
        where TModel : IFitModel => model.At(Array.ConvertAll(at, p => new Real(p)), reading).Value;

    private static NoSolutionException Unsettled(double sum, int steps) =>
        new(
            RefusalCode.NotConverged,
            "the least squares of a model",
            "No step makes the sum of squares less.",
            "the sum of squares",
            sum,
            steps
        );
}
