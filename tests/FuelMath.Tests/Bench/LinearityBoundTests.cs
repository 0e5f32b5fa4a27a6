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
