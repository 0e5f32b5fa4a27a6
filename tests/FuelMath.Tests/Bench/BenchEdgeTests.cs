using FuelMath.Bench;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What a characterization says just at the edges of its parts.</summary>
public sealed class BenchEdgeTests
{
    /// <summary>
    /// A line through the origin, in numbers that a binary fraction holds: its dead time is zero to the last bit, which is no
    /// negative one.
    /// </summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(0.125, true)]
    public void DeadTimeNegative_BeginsBelowZero(double early, bool isFound)
    {
        PulseCharacterization found = new(
            new[] { 1.0, 2, 4, 5 }.Select(k => Reading(k / 512, (k + early) / 1024)),
            Ratio.FromPercent(2),
            TestBench.NinetyFive
        );

        Close.WithinOf(1, 1e-15, -early / 512, found.DeadTime.Seconds);
        Assert.Equal(isFound, found.Findings.Any(f => f.Code == FindingCode.DeadTimeNegative));
    }

    /// <summary>A pulse of just the dead time has no effective width that a correction could be given for.</summary>
    [Fact]
    public void ShortPulses_OfJustTheDeadTime_GiveNoCorrection()
    {
        FittedLine line = new([3.0 / 512, 5.0 / 512, 9.0 / 512], [2, 4, 8], [1.0, 1, 1]);
        DynamicFlowReading within = Reading(line.ZeroCrossing(), 0.001);

        Assert.Same(ShortPulseCorrection.None, ShortPulses.Of([within], 3.0 / 512, line, TestBench.Source));
    }

    [Fact]
    public void LinearityTolerance_AboveAHalf_IsRefused() =>
        Assert.Equal(
            "linearityTolerance",
            Assert
                .Throws<ArgumentOutOfRangeException>(() =>
                    new PulseCharacterization(
                        new[] { 1.0, 2, 4, 5 }.Select(k => Reading(k / 512, k / 1024)),
                        Ratio.FromPercent(51),
                        TestBench.NinetyFive
                    )
                )
                .ParamName
        );

    private static DynamicFlowReading Reading(double seconds, double kilograms) =>
        new(
            Duration.FromSeconds(seconds),
            Duration.FromMilliseconds(62.5),
            1024,
            CollectedFuel.FromMass(Mass.FromKilograms(kilograms), Mass.FromMilligrams(1)),
            ElectricPotential.FromVolts(13.5),
            TestBench.Conditions
        );
}
