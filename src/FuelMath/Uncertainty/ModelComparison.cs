using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace FuelMath.Statistics;

/// <summary>Kernel: which of several models the readings support, and which they can't distinguish.</summary>
internal static class ModelComparison
{
    /// <summary>
    /// The probability of a sum of squares as large or larger when the model and the uncertainties are right.
    /// Source: [NIST-Handbook] section 1.3.6.6.6 (chi-square distribution).
    /// </summary>
    internal static double Probability(double chiSquared, int degreesOfFreedom) =>
        SpecialFunctions.GammaUpperRegularized(degreesOfFreedom / 2.0, chiSquared / 2);

    /// <summary>
    /// Akaike's criterion for readings whose uncertainties are known: sum of squares + 2 x parameters, up to a constant.
    /// Source: [Akaike-1974].
    /// </summary>
    internal static double Criterion(double chiSquared, int parameters) => chiSquared + (2 * parameters);

    /// <summary>
    /// The same with a prior weight for the model: minus twice its logarithm, so that a group of many models gains
    /// nothing by their number. Source: [Burnham-Anderson-2004] for prior weights.
    /// </summary>
    internal static double Criterion(double chiSquared, int parameters, double prior) =>
        Criterion(chiSquared, parameters) - (2 * Math.Log(prior));

    /// <summary>The weight of each model: exp(-difference from the least / 2), made to sum to one. Source: [Burnham-Anderson-2004].</summary>
    internal static double[] Weights(double[] criteria)
    {
        double least = criteria.Min();
        double[] raw = [.. criteria.Select(c => Math.Exp((least - c) / 2))];
        double sum = raw.Sum();
        return [.. raw.Select(w => w / sum)];
    }

    /// <summary>The singular values of a design whose columns are scaled to unit length, the largest first.</summary>
    internal static double[] ScaledSingularValues(Matrix<double> design)
    {
        Matrix<double> scaled = design.Clone();
        for (int j = 0; j < scaled.ColumnCount; j++)
        {
            double length = scaled.Column(j).L2Norm();
            if (length > 0)
            {
                scaled.SetColumn(j, scaled.Column(j) / length);
            }
        }

        return [.. scaled.Svd(false).S.OrderDescending()];
    }

    /// <summary>
    /// How nearly one set of columns lies in the space of another: (1 + cos) / sin of the largest principal angle. For
    /// two single columns it is their scaled condition index; infinite when the smaller set lies inside the larger.
    /// Source: [Belsley-1980] chapter 3 (scaled condition index); [Knyazev-Argentati-2002] the sine of the angle.
    /// </summary>
    internal static double ConditionIndex(Matrix<double> one, Matrix<double> other)
    {
        (Matrix<double> few, Matrix<double> many) = one.ColumnCount <= other.ColumnCount ? (one, other) : (other, one);
        Matrix<double> a = Basis(few);
        Matrix<double> b = Basis(many);
        double sine = Math.Min((a - (b * b.TransposeThisAndMultiply(a))).Svd(false).S.Max(), 1);
        return sine == 0 ? double.PositiveInfinity : (1 + Math.Sqrt(1 - (sine * sine))) / sine;
    }

    /// <summary>The number of standard errors to either side of an interval when uncertainties are known.</summary>
    internal static double NormalFactor(double confidence) => Normal.InvCDF(0, 1, (1 + confidence) / 2);

    private static Matrix<double> Basis(Matrix<double> columns) => columns.QR(QRMethod.Thin).Q;
}
