using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Uncertainty;

public sealed class StudentizedRangeTests
{
    private static readonly Ratio NinetyFive = Ratio.FromPercent(95);

    /// <summary>Printed upper 5 % points: value from memory, to the last digit given.</summary>
    [Theory]
    [Trait("Source", "Harter-1960")]
    [InlineData(4, 20, 3.96)]
    [InlineData(8, 20, 4.77)]
    [InlineData(10, 30, 4.82)]
    [InlineData(5, 60, 3.98)]
    [InlineData(10, int.MaxValue, 4.47)]
    public void Quantile_AtFivePercent_IsThePrinted(int count, int degreesOfFreedom, double printed) =>
        Close.WithinOf(1, 0.00501, printed, StudentizedRange.Quantile(count, degreesOfFreedom, NinetyFive));

    /// <summary>Upper 5 % points by a general numerics library, to its four decimals.</summary>
    [Theory]
    [Trait("Source", "SciPy")]
    [InlineData(3, 1, 26.9755)]
    [InlineData(16, 1, 56.3202)]
    [InlineData(2, 2, 6.0849)]
    [InlineData(8, 2, 13.0273)]
    [InlineData(15, 2, 15.6503)]
    [InlineData(8, 3, 8.8525)]
    [InlineData(4, 4, 5.7571)]
    [InlineData(16, 5, 7.828)]
    [InlineData(8, 6, 6.1222)]
    [InlineData(9, 8, 5.7673)]
    [InlineData(8, 10, 5.3042)]
    [InlineData(3, 12, 3.7729)]
    [InlineData(16, 12, 5.9531)]
    [InlineData(8, 14, 4.9903)]
    public void Quantile_AtFivePercent_IsThatOfAnotherProgram(int count, int degreesOfFreedom, double expected) =>
        Close.WithinOf(1, 1.01e-4, expected, StudentizedRange.Quantile(count, degreesOfFreedom, NinetyFive));

    /// <summary>By hand: two normal numbers differ by sqrt 2 standard deviations, so that a pair's range is sqrt 2 of Student's t.</summary>
    [Property]
    public Property Quantile_OfAPair_IsStudents() =>
        Prop.ForAll(
            Gen.Choose(1, 200).ToArbitrary(),
            Gen.Choose(5000, 9999).ToArbitrary(),
            (degrees, parts) =>
            {
                var confidence = Ratio.FromDecimalFractions(parts / 10000.0);
                double range = Math.Sqrt(2) * Student.TwoSided(degrees, confidence);
                Close.Within(1e-12, range, StudentizedRange.Quantile(2, degrees, confidence));
                // By the double integral in place of Student's distribution.
                Close.WithinOf(
                    1,
                    1e-8,
                    1 - (parts / 10000.0),
                    StudentizedRange.PValue(range, 2, degrees).DecimalFractions
                );
            }
        );

    /// <summary>The quantile is where the tail is what was asked; more means, and fewer degrees of freedom, lie farther apart.</summary>
    [Property]
    public Property Quantile_OfAny_IsWhereTheTailIs() =>
        Prop.ForAll(
            Gen.Choose(3, 100).ToArbitrary(),
            Gen.Choose(1, 300).ToArbitrary(),
            Gen.Choose(5000, 9999).ToArbitrary(),
            (count, degrees, parts) =>
            {
                var confidence = Ratio.FromDecimalFractions(parts / 10000.0);
                double q = StudentizedRange.Quantile(count, degrees, confidence);
                double tail = 1 - (parts / 10000.0);
                Close.WithinOf(tail, 1e-6, tail, StudentizedRange.PValue(q, count, degrees).DecimalFractions);
                Assert.True(q < StudentizedRange.Quantile(count + 1, degrees, confidence));
                Assert.True(StudentizedRange.Quantile(count, degrees + 1, confidence) < q);
            }
        );

    [Fact]
    public void PValue_OfNoRange_IsOne() => Close.Within(1e-12, 1, StudentizedRange.PValue(0, 5, 7).DecimalFractions);

    [Fact]
    public void Quantile_OneMean_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "count",
            "2, 1000, 1",
            () => StudentizedRange.Quantile(1, 5, NinetyFive)
        );

    [Fact]
    public void PValue_NegativeRange_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>("range", () => StudentizedRange.PValue(-1, 3, 5));
}
