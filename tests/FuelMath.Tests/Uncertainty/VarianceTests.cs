using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Statistics;

namespace FuelMath.Tests.Uncertainty;

/// <summary>Fisher's ratio, and the test for lack of fit that uses it.</summary>
public sealed class VarianceTests
{
    private static readonly double[] Consumption =
    [
        21.0,
        21.0,
        22.8,
        21.4,
        18.7,
        18.1,
        14.3,
        24.4,
        22.8,
        19.2,
        17.8,
        16.4,
        17.3,
        15.2,
        10.4,
        10.4,
        14.7,
        32.4,
        30.4,
        33.9,
        21.5,
        15.5,
        15.2,
        13.3,
        19.2,
        27.3,
        26.0,
        30.4,
        15.8,
        19.7,
        15.0,
        21.4,
    ];

    private static readonly double[] Displacement =
    [
        160,
        160,
        108,
        258,
        360,
        225,
        360,
        146.7,
        140.8,
        167.6,
        167.6,
        275.8,
        275.8,
        275.8,
        472,
        460,
        440,
        78.7,
        75.7,
        71.1,
        120.1,
        318,
        304,
        350,
        400,
        79,
        120.3,
        95.1,
        351,
        145,
        301,
        121,
    ];

    private static readonly double[] Power =
    [
        110,
        110,
        93,
        110,
        175,
        105,
        245,
        62,
        95,
        123,
        123,
        180,
        180,
        180,
        205,
        215,
        230,
        66,
        52,
        65,
        97,
        150,
        150,
        245,
        175,
        66,
        91,
        113,
        264,
        175,
        335,
        109,
    ];

    private static readonly double[] Cylinders =
    [
        6,
        6,
        4,
        6,
        8,
        6,
        8,
        4,
        4,
        6,
        6,
        8,
        8,
        8,
        8,
        8,
        8,
        4,
        4,
        4,
        4,
        8,
        8,
        8,
        8,
        4,
        4,
        4,
        8,
        6,
        8,
        4,
    ];

    /// <summary>
    /// Upper critical values as printed: the share above the last printed digit less a half is more than the level, and above
    /// the digit plus a half less.
    /// </summary>
    [Theory]
    [Trait("Source", "NIST-Handbook")]
    [InlineData(1, 1, 0.05, 161.4476)]
    [InlineData(2, 1, 0.05, 199.5)]
    [InlineData(5, 2, 0.05, 19.2964)]
    [InlineData(3, 3, 0.05, 9.2766)]
    [InlineData(10, 3, 0.05, 8.7855)]
    [InlineData(1, 3, 0.10, 5.5383)]
    [InlineData(1, 2, 0.01, 98.5025)]
    [InlineData(4, 1, 0.025, 899.5833)]
    [InlineData(100, 3, 0.05, 8.5539)]
    public void UpperTail_AtACriticalValue_IsTheLevel(int upper, int lower, double level, double critical)
    {
        Assert.True(FTest.UpperTail(critical - 5e-5, upper, lower) > level);
        Assert.True(FTest.UpperTail(critical + 5e-5, upper, lower) < level);
    }

    /// <summary>Table G.2: half a unit of the last printed digit to either side.</summary>
    [Theory]
    [Trait("Source", "JCGM-100")]
    [InlineData(1, 12.71, 0.05)]
    [InlineData(5, 2.57, 0.05)]
    [InlineData(10, 2.23, 0.05)]
    [InlineData(16, 2.92, 0.01)]
    public void TwoSidedPValue_AtATabulatedFactor_IsTheLevel(int degrees, double factor, double level)
    {
        Assert.True(Student.TwoSidedPValue(factor - 0.005, degrees).DecimalFractions > level);
        Assert.True(Student.TwoSidedPValue(-factor - 0.005, degrees).DecimalFractions < level);
    }

    /// <summary>Thirty-two cars: sums of squares as the tests of a public library print them, half of their last digit.</summary>
    [Theory]
    [Trait("Source", "Henderson-Velleman-1981")]
    [InlineData("displacement", 304.28, 25, 12.88, 5)]
    [InlineData("power", 430.32, 20, 17.36, 10)]
    [InlineData("cylinders", 7.07, 1, 301.26, 29)]
    public void LackOfFit_OfCars_GivesThePublishedSums(string over, double lack, int degrees, double pure, int error)
    {
        double[] x =
            over == "displacement" ? Displacement
            : over == "power" ? Power
            : Cylinders;
        FTest test = FittedLine.FromPoints(x, Consumption).LackOfFitTest();

        Assert.Equal(degrees, test.DegreesOfFreedom);
        Assert.Equal(error, test.ErrorDegreesOfFreedom);
        Close.WithinOf(1, 0.005, pure, test.ErrorSumOfSquares);
        Close.WithinOf(1, 0.005, lack, test.SumOfSquares);
    }

    /// <summary>
    /// By hand: y = 1, 3 at 0; 4, 4 at 1; 3, 5 at 2. Means 2, 4, 4, line 7/3 + x; the means lie -1/3, 2/3, -1/3 off, each
    /// twice: lack 4/3 with 1 degree of freedom, pure error 2 + 0 + 2 with 3, F = 1.
    /// </summary>
    [Fact]
    public void LackOfFit_ThreeWidthsTwice_IsAsByHand()
    {
        FTest test = FittedLine.FromPoints([0, 0, 1, 1, 2, 2], [1, 3, 4, 4, 3, 5]).LackOfFitTest();

        Close.Within(1e-14, 4.0 / 3, test.SumOfSquares);
        Close.Within(1e-14, 4, test.ErrorSumOfSquares);
        Close.Within(1e-13, 1, test.F);
        // With one and three degrees of freedom the share above 1 has the closed form 1 - 2/pi (atan(1/sqrt 3) + sqrt(3)/4).
        double closed = 1 - (2 / Math.PI * (Math.Atan(1 / Math.Sqrt(3)) + (Math.Sqrt(3) / 4)));
        Close.Within(1e-12, closed, test.PValue.DecimalFractions);
    }

    /// <summary>A reading of weight two is the same as two readings that agree, but for the degrees of freedom.</summary>
    [Fact]
    public void LackOfFit_Weights_CountAsRepeats()
    {
        var weighted = new FittedLine([0, 1, 1, 2], [1, 3, 5, 4], [2, 1, 2, 1]);
        var repeated = FittedLine.FromPoints([0, 0, 1, 1, 1, 2], [1, 1, 3, 5, 5, 4]);

        Close.Within(1e-13, repeated.LackOfFitTest().SumOfSquares, weighted.LackOfFitTest().SumOfSquares);
        Close.Within(1e-13, repeated.LackOfFitTest().ErrorSumOfSquares, weighted.LackOfFitTest().ErrorSumOfSquares);
    }

    [Fact]
    public void LackOfFit_NoRepeats_IsRefused() =>
        Refused("It needs 3 or more different abscissas", FittedLine.FromPoints([0, 1, 2, 3], [0, 1, 2, 4]));

    [Fact]
    public void LackOfFit_TwoAbscissas_IsRefused() =>
        Refused("It needs 3 or more different abscissas", FittedLine.FromPoints([0, 0, 1, 1], [0, 1, 2, 4]));

    [Fact]
    public void LackOfFit_RepeatsAgree_IsRefused() =>
        Refused("Repeats agree to the last digit", FittedLine.FromPoints([0, 0, 1, 2], [1, 1, 2, 4]));

    [Fact]
    public void SlopePValue_AllOnTheLine_IsRefused() =>
        Assert.Contains(
            "All readings lie on the line",
            Assert
                .Throws<NoSolutionException>(() => FittedLine.FromPoints([0, 1, 2], [0, 1, 2]).SlopePValue(0.5))
                .Message,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(-1, 1, 1, "ratio", "Must be from 0 to Infinity; it was -1.")]
    [InlineData(double.NaN, 1, 1, "ratio", "Must be from 0 to Infinity; it was NaN.")]
    [InlineData(1, 0, 1, "degreesOfFreedom", "Must be from 1 to 2147483647; it was 0.")]
    [InlineData(1, 1, 0, "errorDegreesOfFreedom", "Must be from 1 to 2147483647; it was 0.")]
    public void UpperTail_Impossible_IsRefused(double ratio, int upper, int lower, string name, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(name, words, () => FTest.UpperTail(ratio, upper, lower));

    /// <summary>A slope at the end of its interval is missed as often as the interval does not hold the truth.</summary>
    [Property(Arbitrary = [typeof(UncertaintyArbitraries)])]
    public bool SlopePValue_AtTheEndOfTheInterval_IsTheRest(Scatter scatter)
    {
        FittedLine line = scatter.ToLine();
        return line.SlopeStandardError < 1e-9
            || Math.Abs(
                line.SlopePValue(line.SlopeInterval(UnitsNet.Ratio.FromPercent(95)).High).DecimalFractions - 0.05
            ) < 1e-9;
    }

    private static void Refused(string words, FittedLine line) =>
        Assert.Contains(
            words,
            Assert.Throws<NoSolutionException>(() => line.LackOfFitTest()).Message,
            StringComparison.Ordinal
        );
}
