using FsCheck.Xunit;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Uncertainty;

[Properties(Arbitrary = [typeof(UncertaintyArbitraries)])]
public sealed class FittedLineTests
{
    private static readonly Ratio NinetyFive = Ratio.FromPercent(95);

    // ---- Reference ----------------------------------------------------------------------------------------

    /// <summary>
    /// Certified values of Norris. The certified digits are 15; the data are decimal fractions that doubles round in the
    /// 16th, and slope errors grow with the reach of x over the scatter, so that 11 digits of the intercept are asked for
    /// (it is 1/4000 of the readings) and 12 of the rest.
    /// </summary>
    [Theory]
    [Trait("Source", "NIST-StRD")]
    [InlineData("slope", 1.00211681802045, 1e-12)]
    [InlineData("slope error", 0.429796848199937e-3, 1e-12)]
    [InlineData("intercept", -0.262323073774029, 1e-11)]
    [InlineData("intercept error", 0.232818234301152, 1e-12)]
    [InlineData("R2", 0.999993745883712, 1e-14)]
    [InlineData("residual squares", 26.6173985294224, 1e-12)]
    [InlineData("residual mean square", 0.782864662630069, 1e-12)]
    public void Fit_Norris_GivesTheCertifiedValues(string what, double certified, double tolerance) =>
        Close.Within(tolerance, certified, Read(Norris(), what));

    [Theory]
    [Trait("Source", "NIST-StRD")]
    [InlineData("slope", 2.07438016528926)]
    [InlineData("slope error", 0.165289256198347e-1)]
    [InlineData("R2", 0.999365492298663)]
    [InlineData("residual squares", 127.272727272727)]
    [InlineData("residual mean square", 12.7272727272727)]
    public void Fit_NoInt1_GivesTheCertifiedValues(string what, double certified) =>
        Close.Within(1e-13, certified, Read(NoInt1(), what));

    [Theory]
    [Trait("Source", "NIST-StRD")]
    [InlineData("slope", 0.727272727272727)]
    [InlineData("slope error", 0.420827318078432e-1)]
    [InlineData("R2", 0.993348115299335)]
    [InlineData("residual squares", 0.272727272727273)]
    [InlineData("residual mean square", 0.136363636363636)]
    public void Fit_NoInt2_GivesTheCertifiedValues(string what, double certified) =>
        Close.Within(1e-12, certified, Read(FittedLine.FromOrigin([4, 5, 6], [3, 4, 4]), what));

    /// <summary>Example H.3, a thermometer's correction about 20 degrees Celsius; half a unit of the last printed digit.</summary>
    [Theory]
    [Trait("Source", "JCGM-100")]
    [InlineData("intercept", -0.1712, 0.00005)]
    [InlineData("intercept error", 0.0029, 0.00005)]
    [InlineData("slope", 0.00218, 0.000005)]
    [InlineData("slope error", 0.00067, 0.000005)]
    [InlineData("correlation", -0.930, 0.0005)]
    [InlineData("scatter", 0.0035, 0.00005)]
    [InlineData("at 30", -0.1494, 0.00005)]
    [InlineData("error at 30", 0.0041, 0.00005)]
    public void Fit_CalibrationOfAThermometer_GivesThePublishedValues(string what, double published, double half) =>
        Assert.InRange(Read(Thermometer(), what), published - half, published + half);

    // ---- Closed forms -------------------------------------------------------------------------------------

    /// <summary>
    /// By hand: x 0, 1, 2, y 0, 2, 1. Mean 1 and 1, Sxx 2, Sxy 1, slope 0.5, intercept 0.5; residuals -0.5, 1, -0.5, their
    /// squares 1.5, one degree of freedom.
    /// </summary>
    [Fact]
    public void Fit_ThreePoints_MatchesTheHandCalculation()
    {
        FittedLine line = FittedLine.FromPoints([0, 1, 2], [0, 2, 1]);

        Close.Within(1e-15, 0.5, line.Slope);
        Close.Within(1e-15, 0.5, line.Intercept);
        Close.Within(1e-15, 1.5, line.ResidualSumOfSquares);
        Close.Within(1e-15, Math.Sqrt(1.5 / 2), line.SlopeStandardError);
        Close.Within(1e-15, Math.Sqrt(1.5 * ((1 / 3.0) + (1 / 2.0))), line.InterceptStandardError);
        Close.Within(1e-15, 0.25, line.RSquared);
        Assert.Equal(1, line.DegreesOfFreedom);
    }

    /// <summary>Twice the weight is the same line as the reading taken twice.</summary>
    [Fact]
    public void Fit_DoubleWeight_IsTheLineOfTheReadingTwice()
    {
        var weighted = new FittedLine([1, 2, 4, 7], [2, 3, 9, 12], [1, 2, 1, 1]);
        FittedLine twice = FittedLine.FromPoints([1, 2, 2, 4, 7], [2, 3, 3, 9, 12]);

        Close.Within(1e-14, twice.Slope, weighted.Slope);
        // The intercept is small against the readings, of which the largest is 12.
        Close.WithinOf(12, 1e-14, twice.Intercept, weighted.Intercept);
        Close.Within(1e-14, twice.ResidualSumOfSquares, weighted.ResidualSumOfSquares);
        Assert.Equal(2, weighted.DegreesOfFreedom);
    }

    /// <summary>An offset of 1e9 on x takes 9 of 16 digits of the data themselves; the textbook sums would lose twice that.</summary>
    [Fact]
    public void Fit_FarFromZero_KeepsTheSlope()
    {
        FittedLine line = FittedLine.FromPoints([1e9, 1e9 + 1, 1e9 + 2, 1e9 + 3], [1, 3, 5.5, 7]);

        Close.Within(1e-13, FittedLine.FromPoints([0, 1, 2, 3], [1, 3, 5.5, 7]).Slope, line.Slope);
    }

    [Fact]
    public void RSquared_OfALevelLine_IsOne() => Assert.Equal(1, FittedLine.FromPoints([1, 2, 3], [4, 4, 4]).RSquared);

    // ---- Laws ---------------------------------------------------------------------------------------------

    /// <summary>
    /// Fieller's ends are where the confidence band meets zero: |line| = t x its standard error. Rounding enters through
    /// the center's height, so the scale is the largest reading.
    /// </summary>
    [Property]
    public bool ZeroInterval_Ends_AreWhereTheBandMeetsZero(Scatter scatter)
    {
        FittedLine line = scatter.ToLine();
        double t = Student.TwoSided(line.DegreesOfFreedom, NinetyFive);
        if (Math.Abs(line.Slope) < 1.01 * t * line.SlopeStandardError)
        {
            return IsRefused(line) || Math.Abs(line.Slope) > t * line.SlopeStandardError;
        }

        Interval interval = line.ZeroInterval(NinetyFive);
        double slack = 1e-9 * (line.Y.Max(Math.Abs) + Math.Abs(line.Intercept) + Math.Abs(line.Slope * interval.Low));
        return Meets(line, t, interval.Low, slack)
            && Meets(line, t, interval.High, 1e-9 * (slack + Math.Abs(line.Slope * interval.High)) + slack)
            && interval.Contains(line.ZeroCrossing());
    }

    /// <summary>A change of units changes slope and errors by their own factor, and nothing else.</summary>
    [Property]
    public void Fit_OtherUnits_ScalesAlong(Scatter scatter)
    {
        FittedLine line = scatter.ToLine();
        FittedLine other = FittedLine.FromPoints(scatter.X.Select(v => v * 1e-3), scatter.Y.Select(v => v * 1e-6));

        Close.WithinOf(Math.Abs(line.Slope) + line.SlopeStandardError, 1e-11, line.Slope, other.Slope * 1e3);
        Close.WithinOf(
            line.SlopeStandardError + Math.Abs(line.Slope),
            1e-9,
            line.SlopeStandardError,
            other.SlopeStandardError * 1e3
        );
        Close.Within(1e-11, line.Correlation, other.Correlation);
    }

    /// <summary>The order of the readings is of no consequence but rounding.</summary>
    [Property]
    public void Fit_OtherOrder_IsTheSameLine(Scatter scatter)
    {
        FittedLine line = scatter.ToLine();
        FittedLine other = FittedLine.FromPoints(scatter.X.Reverse(), scatter.Y.Reverse());

        Close.WithinOf(Math.Abs(line.Slope) + line.SlopeStandardError, 1e-11, line.Slope, other.Slope);
        Close.WithinOf(line.Y.Max(Math.Abs) + Math.Abs(line.Intercept), 1e-11, line.Intercept, other.Intercept);
    }

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Fact]
    public void Fit_TwoReadings_IsRefused() =>
        Words.Refused<ArgumentException>("x", "3, 2", () => FittedLine.FromPoints([1, 2], [1, 2]));

    [Fact]
    public void Fit_TheSameAbscissa_IsRefused() =>
        Words.Refused<ArgumentException>("x", "2", () => FittedLine.FromPoints([2, 2, 2], [1, 2, 3]));

    [Fact]
    public void Fit_AnotherCount_IsRefused() =>
        Words.Refused<ArgumentException>("y", "3, 2", () => FittedLine.FromPoints([1, 2, 3], [1, 2]));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Fit_BadWeight_IsRefused(double weight) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "weights",
            () => _ = new FittedLine([1, 2, 3], [1, 2, 3], [1, weight, 1])
        );

    [Fact]
    public void Fit_NotANumber_IsRefused() =>
        Words.Refused<ArgumentException>("y", "1", () => FittedLine.FromPoints([1, 2, 3], [1, double.NaN, 3]));

    [Fact]
    public void ZeroInterval_SlopeLostInScatter_IsRefused() =>
        Assert.Contains(
            "Its slope does not differ from zero at this confidence",
            Assert
                .Throws<NoSolutionException>(() =>
                    FittedLine.FromPoints([1, 2, 3, 4], [5, 1, 6, 2.5]).ZeroInterval(NinetyFive)
                )
                .Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void ZeroCrossing_ThroughTheOrigin_IsRefused() =>
        Assert.Contains(
            "made to pass through the origin",
            Assert.Throws<NoSolutionException>(() => NoInt1().ZeroCrossing()).Message,
            StringComparison.Ordinal
        );

    private static bool IsRefused(FittedLine line)
    {
        try
        {
            _ = line.ZeroInterval(NinetyFive);
            return false;
        }
        catch (NoSolutionException)
        {
            return true;
        }
    }

    private static bool Meets(FittedLine line, double t, double x, double slack) =>
        Math.Abs(Math.Abs(line.At(x)) - (t * line.StandardErrorAt(x))) <= slack;

    private static FittedLine Norris()
    {
        IReadOnlyList<Dictionary<string, string>> rows = CsvRows.Read("Uncertainty/Data/norris.csv");
        return FittedLine.FromPoints(rows.Select(r => r.Number("x")), rows.Select(r => r.Number("y")));
    }

    private static FittedLine NoInt1() =>
        FittedLine.FromOrigin(
            Enumerable.Range(60, 11).Select(i => (double)i),
            Enumerable.Range(130, 11).Select(i => (double)i)
        );

    private static FittedLine Thermometer() =>
        FittedLine.FromPoints(
            new[] { 21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511 }.Select(t =>
                t - 20
            ),
            [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160]
        );

    private static double Read(FittedLine line, string what) =>
        what switch
        {
            "slope" => line.Slope,
            "slope error" => line.SlopeStandardError,
            "intercept" => line.Intercept,
            "intercept error" => line.InterceptStandardError,
            "correlation" => line.Correlation,
            "R2" => line.RSquared,
            "residual squares" => line.ResidualSumOfSquares,
            "residual mean square" => line.ResidualStandardDeviation * line.ResidualStandardDeviation,
            "scatter" => line.ResidualStandardDeviation,
            "at 30" => line.At(10),
            "error at 30" => line.StandardErrorAt(10),
            _ => throw new ArgumentOutOfRangeException(nameof(what), what, null),
        };
}
