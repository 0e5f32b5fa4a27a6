using FuelMath.Bench;
using UnitsNet;
using Xunit.Abstractions;

namespace FuelMath.Tests.Bench;

public sealed class PulseCharacterizationTests(ITestOutputHelper output)
{
    private static readonly double[] Widths = [3, 5, 8, 12];

    /// <summary>
    /// The straight line of the standard's words, Qd = m (PW - X), Y = -m X: with m 4 g/s and X 1.2 ms the offset is -4.8 mg.
    /// </summary>
    [Fact]
    [Trait("Source", "SAE-J1832")]
    public void Characterization_OfAnExactLine_GivesSlopeOffsetAndDeadTime()
    {
        PulseCharacterization found = Of(Widths.Select(w => TestBench.Pulse(w, 4 * (w - 1.2))));

        Close.Within(1e-12, 4, found.StaticMassFlow.GramsPerSecond);
        Close.Within(1e-12, -4.8, found.FlowOffset.Milligrams);
        Close.Within(1e-12, 1.2, found.DeadTime.Milliseconds);
        Close.Within(1e-12, 3, found.LinearFrom.Milliseconds);
        Close.Within(1e-12, 12, found.LinearTo.Milliseconds);
        Assert.Same(ShortPulseCorrection.None, found.Correction);
        Assert.Empty(found.Findings);
    }

    /// <summary>The injector that comes out delivers what was read: in the linear range by the line, below it by its points.</summary>
    [Theory]
    [InlineData(1.6)]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(12)]
    public void ToInjector_AtEachReading_DeliversWhatWasRead(double width)
    {
        PulseCharacterization[] series = [Bumpy(12, 1.4), Bumpy(13.5, 1.2), Bumpy(15, 1.0)];
        Injector injector = series[1]
            .ToInjector(
                "measured",
                DeadTimeSeries.ToTable(series, OutsideRange.Refuse, TestBench.Source),
                Duration.FromMilliseconds(0.1),
                Duration.Zero,
                ElectricResistance.FromOhms(12.5)
            );

        Close.Within(
            1e-9,
            Mass(width, 1.2),
            injector
                .Deliver(
                    Duration.FromMilliseconds(width),
                    Duration.FromMilliseconds(20),
                    TestBench.Conditions.DifferentialPressure,
                    TestBench.Conditions.FluidDensity,
                    ElectricPotential.FromVolts(13.5)
                )
                .Mass.Milligrams
        );
        Close.Within(1e-9, 3, series[1].LinearFrom.Milliseconds);
    }

    /// <summary>One of six readings is 20 % off: the line of medians keeps the others' line and names it.</summary>
    [Fact]
    [Trait("Source", "Siegel-1982")]
    public void Robust_OneReadingOff_NamesItAndKeepsTheLine()
    {
        double[] widths = [2, 4, 6, 8, 10, 12];
        RobustCharacterization found = new(widths.Select(w => TestBench.Pulse(w, 4 * (w - 1.2) * (w == 8 ? 1.2 : 1))));

        Close.Within(1e-12, 4, found.StaticMassFlow.GramsPerSecond);
        Close.Within(1e-12, 1.2, found.DeadTime.Milliseconds);
        Close.Within(1e-12, 8, Assert.Single(found.Suspects).PulseWidth.Milliseconds);
    }

    [Fact]
    public void Characterization_NegativeDeadTime_IsAFinding()
    {
        Finding finding = Assert.Single(Of(Widths.Select(w => TestBench.Pulse(w, 4 * (w + 0.3)))).Findings);

        Assert.StartsWith("Dead time is negative", finding.What, StringComparison.Ordinal);
        Assert.Equal("-0.3 ms", finding.Value);
    }

    [Fact]
    public void Characterization_OnePulseWidth_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            "3, 1",
            () => Of([TestBench.Pulse(5, 10), TestBench.Pulse(5, 10.1), TestBench.Pulse(5, 9.9)])
        );

    [Fact]
    public void Characterization_TwoVoltages_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            "300 kPa, 21 °C, 12 V, 13.5 V",
            () => Of([TestBench.Pulse(3, 10), TestBench.Pulse(5, 20), TestBench.Pulse(8, 30, 12, TestBench.Conditions)])
        );

    [Fact]
    public void Characterization_NoLine_IsRefused() =>
        Assert.Contains(
            "No three neighboring pulse widths lie on one line within the tolerance.",
            Assert
                .Throws<NoSolutionException>(() =>
                    Of([TestBench.Pulse(3, 10), TestBench.Pulse(5, 40), TestBench.Pulse(8, 12)])
                )
                .Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void ToTable_MissingPair_IsRefused() =>
        Words.Refused<ArgumentException>(
            "series",
            "0, 12 V, 400 kPa",
            () =>
                DeadTimeSeries.ToTable(
                    [
                        Bumpy(12, 1.4),
                        Bumpy(15, 1.0),
                        Of(Widths.Select(w => TestBench.Pulse(w, 5 * (w - 1.1), 15, TestBench.At(400)))),
                    ],
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );

    /// <summary>
    /// How often Fieller's interval, by scatter alone, holds the true dead time, with normal scatter of 3 % of the middle mass. An interval
    /// that holds it 95 times in 100 misses this band, four standard deviations of the binomial law sqrt(0.95 x 0.05 / N),
    /// for fewer than one set of seeds in ten thousand. COVERAGE_SEEDS asks for more seeds.
    /// </summary>
    [Theory]
    [Trait("Source", "Fieller-1954")]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(10)]
    public void DeadTimeInterval_OverManySeeds_HoldsTheTruthAsOftenAsItSays(int readings)
    {
        int seeds = int.TryParse(Environment.GetEnvironmentVariable("COVERAGE_SEEDS"), out int asked) ? asked : 1000;
        var coverage = Coverage.Of(readings, seeds, 0.03);
        output.WriteLine(coverage.ToString());
        double band = 4 * Math.Sqrt(0.95 * 0.05 / seeds);

        Assert.True(Math.Abs(coverage.Fieller - 0.95) <= band, coverage.ToString());
        // Two standard errors for two parameters of few readings: the reason for Student's factor and this interval.
        Assert.True(coverage.TwoStandardErrors < coverage.Fieller, coverage.ToString());
    }

    /// <summary>
    /// The band about a line that four readings of equal weight were fitted to: t s sqrt(1/n + (x - mean)2/Sxx), with a mean of
    /// 7 ms, Sxx of 46 ms2, and t of two degrees of freedom in closed form, 4.30265 at 95 %.
    /// </summary>
    [Theory]
    [Trait("Source", "Draper-Smith-1998")]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(20)]
    public void BandHalfWidthAt_FourReadings_IsTheTextbooks(double at)
    {
        double[] masses = [7.25, 15.15, 27.16, 43.24];
        double mean = masses.Average();
        double slope = Widths.Zip(masses, (x, y) => (x - 7) * (y - mean)).Sum() / 46;
        double squares = Widths.Zip(masses, (x, y) => Math.Pow(y - mean - (slope * (x - 7)), 2)).Sum();
        double t = 0.95 * Math.Sqrt(2 / (1 - (0.95 * 0.95)));

        PulseCharacterization found = Of(Widths.Zip(masses, TestBench.Pulse));

        Assert.Equal(4, found.LinearReadings.Length);
        Close.Within(
            1e-9,
            t * Math.Sqrt(squares / 2 * (0.25 + (Math.Pow(at - 7, 2) / 46))),
            found.BandHalfWidthAt(Duration.FromMilliseconds(at)).Milligrams
        );
        Close.Within(1e-9, mean + (slope * (at - 7)), found.LineAt(Duration.FromMilliseconds(at)).Milligrams);
    }

    private static PulseCharacterization Of(IEnumerable<DynamicFlowReading> readings) =>
        new(readings, Ratio.FromPercent(2), TestBench.NinetyFive);

    /// <summary>Below 3 ms it delivers more than the line.</summary>
    private static double Mass(double width, double dead) => 4 * (width - dead + (width < 3 ? 0.2 : 0));

    private static PulseCharacterization Bumpy(double volts, double dead) =>
        Of(new[] { 1.6, 2, 3, 5, 8, 12 }.Select(w => TestBench.Pulse(w, Mass(w, dead), volts, TestBench.Conditions)));
}
