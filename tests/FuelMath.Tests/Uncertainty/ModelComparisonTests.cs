using FuelMath.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Tests.Uncertainty;

/// <summary>Which model the readings support, against published values.</summary>
public sealed class ModelComparisonTests
{
    /// <summary>
    /// Critical values of chi-square, upper and lower, printed to three decimals: half a unit of the last moves the probability by
    /// less than 0.5 x 10^-3 x density / probability, up to 5e-4 of it.
    /// </summary>
    [Theory]
    [Trait("Source", "NIST-Handbook")]
    [InlineData(1, 0.10, 2.706)]
    [InlineData(1, 0.05, 3.841)]
    [InlineData(1, 0.01, 6.635)]
    [InlineData(2, 0.10, 4.605)]
    [InlineData(2, 0.05, 5.991)]
    [InlineData(2, 0.01, 9.210)]
    [InlineData(3, 0.10, 6.251)]
    [InlineData(3, 0.05, 7.815)]
    [InlineData(3, 0.01, 11.345)]
    [InlineData(4, 0.10, 7.779)]
    [InlineData(4, 0.05, 9.488)]
    [InlineData(5, 0.05, 11.070)]
    [InlineData(7, 0.05, 14.067)]
    [InlineData(10, 0.05, 18.307)]
    [InlineData(12, 0.01, 26.217)]
    [InlineData(10, 0.90, 4.865)]
    [InlineData(20, 0.90, 12.443)]
    [InlineData(20, 0.975, 9.591)]
    public void Probability_CriticalValue_IsThatOfTheTable(int degrees, double probability, double chiSquared) =>
        Close.Within(5e-4, probability, ModelComparison.Probability(chiSquared, degrees));

    /// <summary>Criteria of 100, 102 and 110: the second is 0.368 times as probable as the first, the third 0.007 times.</summary>
    [Theory]
    [Trait("Source", "Burnham-Anderson-2004")]
    [InlineData(1, 0.368)]
    [InlineData(2, 0.007)]
    public void Weights_ThreeCriteria_StandInThePublishedRatio(int model, double expected)
    {
        double[] weights = ModelComparison.Weights([100, 102, 110]);

        Assert.Equal(expected, weights[model] / weights[0], 5e-4);
        Close.Within(1e-15, 1, weights.Sum());
    }

    /// <summary>Columns of a Hadamard matrix stand at right angles to each other, and lie inside themselves.</summary>
    [Fact]
    [Trait("Source", "SciPy")]
    public void ConditionIndex_HadamardColumns_IsOneAndInfinite()
    {
        Matrix<double> h = Matrix<double>.Build.DenseOfArray(
            new double[,]
            {
                { 1, 1, 1, 1 },
                { 1, -1, 1, -1 },
                { 1, 1, -1, -1 },
                { 1, -1, -1, 1 },
            }
        );
        Matrix<double> left = h.SubMatrix(0, 4, 0, 2);

        Close.Within(1e-7, 1, ModelComparison.ConditionIndex(left, h.SubMatrix(0, 4, 2, 2)));
        Assert.True(ModelComparison.ConditionIndex(left, left) > 1e12);
    }

    /// <summary>Two unit columns with cosine c have singular values sqrt(1 ± c): their ratio is the index.</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.9)]
    [InlineData(0.999)]
    public void ConditionIndex_TwoColumns_IsTheRatioOfTheirSingularValues(double cosine)
    {
        double[] one = [1, 0, 0];
        double[] two = [3 * cosine, 3 * Math.Sqrt(1 - (cosine * cosine)), 0];
        Matrix<double> a = Matrix<double>.Build.DenseOfColumnArrays(one);
        Matrix<double> b = Matrix<double>.Build.DenseOfColumnArrays(two);
        double[] values = ModelComparison.ScaledSingularValues(Matrix<double>.Build.DenseOfColumnArrays(one, two));

        Close.Within(1e-12, Math.Sqrt(1 + cosine), values[0]);
        Close.Within(1e-12, Math.Sqrt(1 - cosine), values[1]);
        Close.Within(1e-9, values[0] / values[1], ModelComparison.ConditionIndex(a, b));
    }

    [Fact]
    public void NormalFactor_95Percent_IsThatOfTheTable() =>
        Assert.Equal(1.960, ModelComparison.NormalFactor(0.95), 5e-4);

    [Fact]
    public void Criterion_Parameters_CostTwoEach() => Assert.Equal(9, ModelComparison.Criterion(5, 2));
}
