using FuelMath.Bench;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>Which widths count as one line: the longest run within the tolerance, and of runs alike long the straightest.</summary>
public sealed class LinearRangeTests
{
    /// <summary>
    /// Seven widths of 4 mg for each ms beyond the first, of which the last is 6 % short. By hand, the line through all lies
    /// 0.54 x 6 % of it above the last, more than 2 %, and within 1.7 % of all but the last two; without it all lie on a line.
    /// </summary>
    [Fact]
    public void Range_TheLongestWidthOff_EndsBeforeIt()
    {
        PulseCharacterization found = Of([
            .. Enumerable.Range(12, 7).Select(w => (w, 4.0 * (w - 1) * (w == 18 ? 0.94 : 1))),
        ]);

        Close.Within(1e-12, 12, found.LinearFrom.Milliseconds);
        Close.Within(1e-12, 17, found.LinearTo.Milliseconds);
        Close.WithinOf(1, 1e-12, 0, found.LargestDeviation.DecimalFractions);
        Close.Within(1e-9, 1, found.DeadTime.Milliseconds);
    }

    /// <summary>Three widths on one line, three near another: the straight ones count, whichever come first.</summary>
    [Theory]
    [InlineData(new[] { 10.0, 20, 30, 31, 35, 39.3 }, 2, 4)]
    [InlineData(new[] { 10.0, 14, 18.3, 30, 40, 50 }, 5, 7)]
    public void Range_OfTwoAlikeLong_IsTheStraightest(double[] masses, double from, double to)
    {
        PulseCharacterization found = Of([.. masses.Select((m, i) => (i + 2, m))]);

        Close.Within(1e-12, from, found.LinearFrom.Milliseconds);
        Close.Within(1e-12, to, found.LinearTo.Milliseconds);
        Close.WithinOf(1, 1e-12, 0, found.LargestDeviation.DecimalFractions);
        Close.Within(1e-9, 10, found.StaticMassFlow.GramsPerSecond);
    }

    /// <summary>Repeats count by their mean: 3 % to either side of a line lie on it.</summary>
    [Fact]
    public void Range_OfRepeats_IsThatOfTheirMeans()
    {
        PulseCharacterization found = Of([
            .. new[] { 3, 5, 8, 12 }.SelectMany(w => new[] { 0.97, 1, 1.03 }.Select(s => (w, 4 * (w - 1.2) * s))),
        ]);

        Assert.Equal(12, found.LinearReadings.Length);
        Close.WithinOf(1, 1e-12, 0, found.LargestDeviation.DecimalFractions);
    }

    /// <summary>One width that was read twice is enough to tell scatter from a bend.</summary>
    [Fact]
    public void LinearityTest_OfOneRepeat_IsMade()
    {
        PulseCharacterization found = Of([(3, 7.2), (5, 15.2), (5, 15.3), (8, 27.2), (12, 43.2)]);

        Assert.Equal((2, 1), (found.LinearityTest!.DegreesOfFreedom, found.LinearityTest.ErrorDegreesOfFreedom));
    }

    /// <summary>
    /// A pulse that delivers although the line says that it could not: it is named, and not part of the correction.
    /// </summary>
    [Fact]
    public void Characterization_DeliveryInsideTheDeadTime_IsANote()
    {
        PulseCharacterization found = Of([(1, 0.4), (3, 7.2), (5, 15.2), (8, 27.2), (12, 43.2)]);

        Finding finding = Assert.Single(found.Findings);
        Assert.Equal((FindingCode.DeliveryInsideDeadTime, Severity.Note), (finding.Code, finding.Severity));
        Assert.Equal(("1 ms", "longer than the dead time of 1.2 ms"), (finding.Value, finding.Limit));
        Assert.Same(ShortPulseCorrection.None, found.Correction);
    }

    /// <summary>The dead time of a table is as uncertain as the line says.</summary>
    [Fact]
    public void ToDeadTimeReading_OfALine_CarriesItsStandardError()
    {
        PulseCharacterization found = Of([(3, 7.25), (5, 15.15), (8, 27.16), (12, 43.24)]);
        DeadTimeReading reading = found.ToDeadTimeReading();

        Assert.True(found.DeadTimeStandardError.Microseconds > 1);
        Close.Within(1e-12, found.DeadTimeStandardError.Microseconds, reading.Resolution.Microseconds);
        Close.Within(1e-12, found.DeadTime.Milliseconds, reading.DeadTime.Milliseconds);
    }

    /// <summary>
    /// A line that falls below zero at one of its readings can't weigh them by it: it stays the one that the readings weigh, by
    /// one over their squares.
    /// </summary>
    [Fact]
    public void ProportionalLine_WithoutMassAtAReading_IsWeighedByTheReadings()
    {
        double[] widths = [1, 2, 3, 4];
        double[] masses = [0.5, 0.1, 8, 8];
        FittedLine line = PulseLine.Of(
            [.. widths.Zip(masses, TestBench.Pulse)],
            PulseCharacterization.PulseScatter.Proportional
        );
        FittedLine weighed = new(widths, masses, masses.Select(m => 1 / (m * m)));

        Assert.True(weighed.At(1) > 0 != weighed.At(4) > 0, "The case is meant to cross zero.");
        Close.Within(1e-9, weighed.Slope, line.Slope * 1e3);
        Close.Within(1e-9, weighed.ZeroCrossing(), line.ZeroCrossing() * 1e3);
    }

    /// <summary>Short pulses that were read twice are corrected by what they deliver on average.</summary>
    [Fact]
    public void Correction_OfRepeats_IsTheirMean()
    {
        PulseCharacterization found = Of([(2, 4.0), (2, 4.4), (3, 7.2), (5, 15.2), (8, 27.2), (12, 43.2)]);

        Close.Within(1e-12, 3, found.LinearFrom.Milliseconds);
        // 4.2 mg at 4 g/s are 1.05 ms of pulse, where 2 ms less the dead time of 1.2 are 0.8.
        Close.WithinOf(1, 1e-9, 0.25, found.Correction.At(Duration.FromMilliseconds(0.8)).Milliseconds);
    }

    /// <summary>
    /// Where scatter grows with mass, a reading that is too high must not count as scattering more for it: masses come from the
    /// line. A ladder of errors has a step that one kind of weights suspects and the other does not.
    /// </summary>
    [Fact]
    public void Suspects_OfProportionalScatter_AreWeighedByTheLine()
    {
        double[] widths = [2, 3, 4, 5, 6, 8, 10, 12];
        double[] off = [0.03, -0.02, 0.01, -0.03, 0.02, 0, -0.01, 0.01];
        int apart = 0;
        for (double error = 0.05; error < 0.6; error += 0.025)
        {
            DynamicFlowReading[] readings =
            [
                .. widths.Select((w, i) => TestBench.Pulse(w, 4 * (w - 1.2) * (1 + off[i]) * (i == 4 ? 1 + error : 1))),
            ];
            RobustCharacterization found = new(readings, PulseCharacterization.PulseScatter.Proportional);
            double[] x = [.. readings.Select(r => r.PulseWidth.Milliseconds)];
            double[] y = [.. readings.Select(r => r.MassPerPulse.Milligrams)];
            double[] rounding = [.. readings.Select(r => r.MassPerPulse.Milligrams * 1e-9)];
            int[] By(IEnumerable<double> masses) =>
                MeanShift.Suspects(x, y, [.. masses.Select(m => 1 / (m * m))], rounding, 0.05);
            int[] byLine = By(x.Select(w => found.StaticMassFlow.GramsPerSecond * (w - found.DeadTime.Milliseconds)));

            Assert.Equal(byLine.Select(i => readings[i]), found.Suspects.AsEnumerable());
            apart += byLine.SequenceEqual(By(y)) ? 0 : 1;
        }

        Assert.True(apart > 0, "The ladder is meant to tell the two apart.");
    }

    [Theory]
    [InlineData("constant")]
    [InlineData("proportional")]
    [InlineData("constant and proportional")]
    public void Scatter_Text_NamesItsParts(string expected) =>
        Assert.Equal(
            expected,
            (
                expected switch
                {
                    "constant" => PulseCharacterization.PulseScatter.Constant,
                    "proportional" => PulseCharacterization.PulseScatter.Proportional,
                    _ => PulseCharacterization.PulseScatter.FromParts(Mass.FromMilligrams(0.1), Ratio.FromPercent(1)),
                }
            ).ToString()
        );

    private static PulseCharacterization Of((int Width, double Mass)[] readings) =>
        new(readings.Select(r => TestBench.Pulse(r.Width, r.Mass)), Ratio.FromPercent(2), TestBench.NinetyFive);
}
