using FuelMath.Scalars;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Uncertainty;

/// <summary>Kernel: the parameters of least weighted squares of any model, with exact slopes.</summary>
/// <remarks>
/// Newton's method with halved steps; slopes and curvatures are those of <see cref="Dual{T}"/>. Where the curvature does not
/// lead down, a step of Gauss and Newton. The uncertainties of the readings are taken as known.
/// Source: [Draper-Smith-1998] chapter 24 (nonlinear estimation).
/// </remarks>
internal sealed class CurveFit
{
    private const int MostSteps = 200;
    private const int MostHalvings = 50;

    /// <summary>A step that promises no more than this share of the sum of squares is the last.</summary>
    private const double Settled = 1e-13;

    /// <summary>So is one that promises no more than this, where the model goes through all readings.</summary>
    private const double Nothing = 1e-20;

    /// <summary>Where rounding hides the promise, no step has to make good on it: a share of the sum of squares.</summary>
    private const double Rounding = 1e-9;

    private CurveFit(double[] parameters, double chiSquared, Matrix<double> design, int steps)
    {
        (Parameters, ChiSquared, Design, Steps) = (parameters, chiSquared, design, steps);
        Covariance = parameters.Length == 0 ? null : design.TransposeThisAndMultiply(design).Inverse();
    }

    /// <summary>The parameters.</summary>
    internal double[] Parameters { get; }

    /// <summary>The sum of squares of what is left over, each in units of its uncertainty.</summary>
    internal double ChiSquared { get; }

    /// <summary>The slope of each reading, in units of its uncertainty, by each parameter.</summary>
    internal Matrix<double> Design { get; }

    /// <summary>The covariance of the parameters; null when there are none.</summary>
    internal Matrix<double>? Covariance { get; }

    internal int Steps { get; }

    internal double StandardError(int parameter) => Math.Sqrt(Covariance![parameter, parameter]);

    /// <summary>The fit, from a start at which the model is defined.</summary>
    /// <exception cref="NoSolutionException">It does not settle.</exception>
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
            double promise = design.TransposeThisAndMultiply(left) * move;
            if (promise <= Math.Max(Settled * sum, Nothing))
            {
                double[] last = [.. at.Select((p, j) => p + move[j])];
                double end = model.IsDefined(last) ? SumOf(model, readings, uncertainties, last) : sum;
                return end < sum
                    ? new(last, end, DesignOf(model, uncertainties, last), step + 1)
                    : new(at, sum, design, step + 1);
            }

            if (!TryMove(model, readings, uncertainties, move, ref at, ref sum))
            {
                return promise <= Rounding * sum ? new(at, sum, design, step + 1) : throw Unsettled(sum, step + 1);
            }
        }

        throw Unsettled(sum, MostSteps);
    }

    /// <summary>The step to where the sum of squares, taken as a parabola, is least.</summary>
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
            // Not positive: the parabola has no least.
        }

        return design.QR().Solve(left);
    }

    private static bool TryMove<TModel>(
        TModel model,
        double[] readings,
        double[] uncertainties,
        Vector<double> move,
        ref double[] at,
        ref double sum
    )
        where TModel : IFitModel
    {
        double share = 1;
        for (int halving = 0; halving < MostHalvings; halving++, share /= 2)
        {
            double[] next = [.. at.Select((p, j) => p + (share * move[j]))];
            if (model.IsDefined(next) && SumOf(model, readings, uncertainties, next) is var less && less < sum)
            {
                (at, sum) = (next, less);
                return true;
            }
        }

        return false;
    }

    private static Matrix<double> DesignOf<TModel>(TModel model, double[] uncertainties, double[] at)
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
        new("the least squares of a model", "No step makes the sum of squares less.", "the sum of squares", sum, steps);
}
