using FuelMath.Bench;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class PulseCharacterizationPulseScatterTests
{
    private static readonly double[] Widths = [3, 5, 8, 12];
    private static readonly double[] Masses = [7.3, 15, 27.4, 43];

    /// <summary>
    /// Weights of one over the square of the line are those with which the line comes out again. The line is found here by
    /// another fit, from weights given to it.
    /// </summary>
    [Fact]
    [Trait("Source", "Draper-Smith-1998")]
    public void Proportional_OfReadings_IsTheLineOfItsOwnWeights()
    {
        PulseCharacterization found = Of(PulseCharacterization.PulseScatter.Proportional);
        FittedLine again = new(
            Widths,
            Masses,
            Widths.Select(w => Math.Pow(found.LineAt(Duration.FromMilliseconds(w)).Milligrams, -2))
        );

        Close.Within(1e-10, again.Slope, found.StaticMassFlow.GramsPerSecond);
        Close.Within(1e-10, again.ZeroCrossing(), found.DeadTime.Milliseconds);
        Close.Within(1e-9, again.ZeroStandardError(), found.DeadTimeStandardError.Milliseconds);
        Assert.NotEqual(
            Of(PulseCharacterization.PulseScatter.Constant).DeadTime.Milliseconds,
            found.DeadTime.Milliseconds,
            1e-4
        );
    }

    /// <summary>Where one part outweighs the other by far, both together are that part alone.</summary>
    [Fact]
    public void FromParts_OnePartTiny_IsTheOther()
    {
        Same(
            PulseCharacterization.PulseScatter.Constant,
            PulseCharacterization.PulseScatter.FromParts(Mass.FromMilligrams(1), Ratio.FromPercent(1e-7))
        );
        Same(
            PulseCharacterization.PulseScatter.Proportional,
            PulseCharacterization.PulseScatter.FromParts(Mass.FromMilligrams(1e-9), Ratio.FromPercent(1))
        );
    }

    /// <summary>Only the ratio of the parts counts.</summary>
    [Fact]
    public void FromParts_BothTimesTen_IsTheSame()
    {
        PulseCharacterization one = Of(
            PulseCharacterization.PulseScatter.FromParts(Mass.FromMilligrams(0.1), Ratio.FromPercent(0.5))
        );
        PulseCharacterization ten = Of(
            PulseCharacterization.PulseScatter.FromParts(Mass.FromMilligrams(1), Ratio.FromPercent(5))
        );

        Close.Within(1e-12, one.DeadTime.Milliseconds, ten.DeadTime.Milliseconds);
        Close.Within(1e-9, one.DeadTimeHigh.Milliseconds, ten.DeadTimeHigh.Milliseconds);
    }

    /// <summary>
    /// Readings on a line to the last step: the interval is what the tolerance allows. By hand, widths 1 and 3 about 2 with one
    /// between, masses 1, 2, 3, crossing at 0: pulls 4/3, 1/3 and -2/3, so that 2 % of each mass moves the line at zero by
    /// 0.02 x (4/3 + 2/3 + 2) = 0.08; the longest alone, which pulls itself along by 5/6, by 0.02 x 2/3 x 3 x 6 = 0.24. A ms
    /// away from the data that grows by 0.02 x 1/2 x 3 x 6 = 0.18, and the line by 1: 0.24 / (1 - 0.18). Toward the data the
    /// worst falls: 0.24.
    /// </summary>
    [Fact]
    public void DeadTimeInterval_OfAnExactLine_IsTheTolerance()
    {
        PulseCharacterization found = new(
            new[] { 1.0, 2, 3 }.Select(w => TestBench.Pulse(w, w)),
            Ratio.FromPercent(2),
            Ratio.FromPercent(50)
        );

        // The step of a milligram in a gram scatters by a thousandth of that.
        Close.WithinOf(1, 2e-3, 0, found.DeadTimeLowByScatter.Milliseconds);
        Close.WithinOf(1, 3e-3, -0.24 / 0.82, found.DeadTimeLow.Milliseconds);
        Close.WithinOf(1, 3e-3, 0.24, found.DeadTimeHigh.Milliseconds);
    }

    [Fact]
    public void FromParts_NoConstantPart_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "constant",
            "0 mg",
            () => PulseCharacterization.PulseScatter.FromParts(Mass.FromMilligrams(0), Ratio.FromPercent(1))
        );

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void FromParts_NoProportionalPart_IsRefused(double percent) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "proportional",
            $"{percent} %",
            () => PulseCharacterization.PulseScatter.FromParts(Mass.FromMilligrams(1), Ratio.FromPercent(percent))
        );

    [Fact]
    public void Characterization_NoScatter_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("scatter", () => Of(null!));
        Assert.Throws<ArgumentNullException>("scatter", () => new RobustCharacterization([], null!));
    }

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void LeastDeviation_NoDeviation_IsRefused(double deviation)
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            nameof(deviation),
            () => FittedLine.FromPoints(Widths, Masses).WithLeastDeviation(deviation)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            nameof(deviation),
            () =>
                new AdditiveLayout(["a", "a", "b", "b"], ["c", "d", "c", "d"], [1, 2, 3, 5]).WithLeastDeviation(
                    deviation
                )
        );
    }

    /// <summary>No placement is advised: with one stage and equal air every order is equal.</summary>
    [Fact]
    public void SetNotMatched_Advice_HasNoPlacement()
    {
        SetReport report = SyntheticBench.Set(4, 3, 0.0005, 0.96, new Random(1));

        Finding finding = Assert.Single(report.Findings, f => f.Code == FindingCode.SetNotMatched);
        Assert.Equal("Clean or replace the injectors that stand apart.", finding.Action);
    }

    private static void Same(PulseCharacterization.PulseScatter one, PulseCharacterization.PulseScatter other)
    {
        Close.Within(1e-9, Of(one).DeadTime.Milliseconds, Of(other).DeadTime.Milliseconds);
        Close.Within(1e-8, Of(one).DeadTimeHigh.Milliseconds, Of(other).DeadTimeHigh.Milliseconds);
    }

    private static PulseCharacterization Of(PulseCharacterization.PulseScatter scatter) =>
        new(
            Widths.Select((w, i) => TestBench.Pulse(w, Masses[i])),
            scatter,
            Ratio.FromPercent(5),
            TestBench.NinetyFive
        );
}
