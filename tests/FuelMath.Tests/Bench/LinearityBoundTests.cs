using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What the tolerance of linearity may hide, by hand.</summary>
public sealed class LinearityBoundTests
{
    /// <summary>
    /// Widths 1, 2 and 3 ms of masses 1, 2 and 3 mg: each mass pulls the slope by -1/2, 0 and 1/2 for each ms, so that 2 % of
    /// all of them move it by 0.02 x (1/2 + 3/2) = 0.04; the longest alone, which pulls itself along by 5/6, by 0.02 x 3/2 x 6
    /// = 0.18 g/s. At 50 % Student's factor of one degree of freedom is tan 45°, which is 1.
    /// </summary>
    [Fact]
    public void StaticMassFlow_OfAnExactLine_IsBoundedByTheTolerance()
    {
        PulseCharacterization found = new(
            new[] { 1.0, 2, 3 }.Select(w => TestBench.Pulse(w, w)),
            Ratio.FromPercent(2),
            Ratio.FromPercent(50)
        );
        double scatter = found.StaticMassFlowStandardError.GramsPerSecond;

        Close.Within(1e-9, 1 + scatter + 0.18, found.StaticMassFlowHigh.GramsPerSecond);
        Close.Within(1e-9, 1 - scatter - 0.18, found.StaticMassFlowLow.GramsPerSecond);
    }

    /// <summary>
    /// The same of each width read twice: both readings of a width are off together, so that nothing changes. What scatter adds
    /// is the same at 1 and 2 %, so that the difference is half of 0.18.
    /// </summary>
    [Fact]
    public void StaticMassFlow_OfRepeats_IsBoundedAlike()
    {
        PulseCharacterization[] both =
        [
            .. new[] { 1.0, 2 }.Select(percent => new PulseCharacterization(
                new[] { 1.0, 1, 2, 2, 3, 3 }.Select(w => TestBench.Pulse(w, w)),
                Ratio.FromPercent(percent),
                TestBench.NinetyFive
            )),
        ];

        Close.Within(1e-9, 0.09, both[1].StaticMassFlowHigh.GramsPerSecond - both[0].StaticMassFlowHigh.GramsPerSecond);
    }

    /// <summary>
    /// Away from the data the bound of three widths grows by nine times the tolerance for each millisecond (see
    /// DeadTimeInterval_OfAnExactLine_IsTheTolerance). At 6 % that is more than half of what the line falls by: it counts as half,
    /// so that the end is 12 x 6 % / 0.5 away and not without end.
    /// </summary>
    [Theory]
    [InlineData(5, 0.6 / 0.55)]
    [InlineData(6, 0.72 / 0.5)]
    [InlineData(12, 1.44 / 0.5)]
    public void DeadTimeLow_OfACoarseTolerance_IsBoundedByHalfTheSlope(double percent, double below)
    {
        PulseCharacterization found = new(
            new[] { 1.0, 2, 3 }.Select(w => TestBench.Pulse(w, w)),
            Ratio.FromPercent(percent),
            Ratio.FromPercent(50)
        );

        // The step of a milligram in a gram moves the end of the scatter by two thousandths, and what grows from there.
        Close.WithinOf(1, 6e-3, -below, found.DeadTimeLow.Milliseconds);
    }

    /// <summary>The same of ten widths: all together move it more than the one that pulls the most.</summary>
    [Fact]
    public void StaticMassFlow_OfManyWidths_IsBoundedByTheirSum()
    {
        double[] widths = [.. Enumerable.Range(1, 10).Select(w => (double)w)];
        PulseCharacterization found = new(
            widths.Select(w => TestBench.Pulse(w, w)),
            Ratio.FromPercent(2),
            TestBench.NinetyFive
        );
        PulseCharacterization tight = new(
            widths.Select(w => TestBench.Pulse(w, w)),
            Ratio.FromPercent(1),
            TestBench.NinetyFive
        );
        // The mean is 5.5, and the squares about it sum to 82.5.
        double sum = 0.02 * widths.Sum(w => Math.Abs(w - 5.5) / 82.5 * w);

        // What scatter adds is the same to both.
        Close.Within(1e-9, sum / 2, found.StaticMassFlowHigh.GramsPerSecond - tight.StaticMassFlowHigh.GramsPerSecond);
        Close.Within(1e-9, sum / 2, tight.StaticMassFlowLow.GramsPerSecond - found.StaticMassFlowLow.GramsPerSecond);
    }

    /// <summary>Mass that falls with width has no static flow, whichever line is fitted.</summary>
    [Fact]
    public void Line_OfFallingMass_IsRefused()
    {
        DynamicFlowReading[] falling = [.. new[] { 2.0, 3, 4, 5 }.Select(w => TestBench.Pulse(w, 20 - w))];

        Falls(() => new PulseCharacterization(falling, Ratio.FromPercent(2), TestBench.NinetyFive));
        Falls(() => new RobustCharacterization(falling));
        DynamicFlowReading[] level = [.. new[] { 2.0, 3, 4, 5 }.Select(w => TestBench.Pulse(w, 20))];
        Falls(() => new PulseCharacterization(level, Ratio.FromPercent(2), TestBench.NinetyFive));
        Falls(() => new RobustCharacterization(level));
    }

    private static void Falls(Func<object> fit) =>
        Assert.Equal(RefusalCode.MustRise, Refusal.Of(Assert.Throws<NoSolutionException>(fit))!.Code);
}
