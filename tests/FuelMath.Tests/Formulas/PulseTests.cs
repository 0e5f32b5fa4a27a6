using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class PulseTests
{
    /// <summary>The straight line of the standard: mass is slope times width less offset. 6 g/s, 2.5 ms, 0.9 ms.</summary>
    [Fact]
    [Trait("Source", "SAE-J1832")]
    public void Mass_StraightLine_IsSlopeTimesWidthLessOffset() =>
        Close.Within(1e-15, 6e-3 * 1.6e-3, Mass(6e-3, Width(2.5e-3, 0.9e-3), 0));

    [Theory]
    [InlineData(0.5e-3)]
    [InlineData(0.9e-3)]
    public void EffectiveWidth_NoLongerThanDeadTime_IsZero(double width) => Assert.Equal(0, Width(width, 0.9e-3));

    [Fact]
    public void Mass_CorrectionGreaterThanWidth_IsZeroNotNegative() => Assert.Equal(0, Mass(6e-3, 0.1e-3, -0.2e-3));

    [Fact]
    public void Mass_LongerWidth_IsNeverLess() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
                Assert.True(
                    Mass(6e-3, 0.02 * Math.Min(u[0], u[1]), 1e-3 * (u[2] - 0.5))
                        <= Mass(6e-3, 0.02 * Math.Max(u[0], u[1]), 1e-3 * (u[2] - 0.5))
                )
        );

    [Fact]
    public void MeanMassFlow_HeldOpenAllPeriod_IsStaticFlow() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                (double flow, double period) = (1e-3 + (0.05 * u[0]), 5e-3 + (0.1 * u[1]));
                double mean = Pulse.MeanMassFlow(new Real(Mass(flow, period, 0)), new Real(1 / period)).Value;
                Close.Within(1e-15 * 4, flow, mean);
            }
        );

    [Fact]
    public void DutyCycle_HalfThePeriod_IsHalf() =>
        Assert.Equal(0.5, Pulse.DutyCycle(new Real(0.01), new Real(0.02)).Value);

    /// <summary>
    /// Against counting: at a thousand moments of a period, how many of n staggered pulses are open. The duty is a whole
    /// number of moments, so that the count is exact.
    /// </summary>
    [Theory]
    [InlineData(1, 250)]
    [InlineData(2, 300)]
    [InlineData(2, 700)]
    [InlineData(4, 100)]
    [InlineData(4, 250)]
    [InlineData(4, 610)]
    [InlineData(5, 1000)]
    [InlineData(8, 345)]
    public void QuadraticLossFactor_StaggeredPulses_IsWhatCountingGives(int injectors, int momentsOpen)
    {
        const int moments = 1000;
        double sum = 0;
        double sumOfSquares = 0;
        double sumOfCubes = 0;
        for (int t = 0; t < moments * injectors; t++)
        {
            int open = Enumerable
                .Range(0, injectors)
                .Count(i => (t + (i * moments)) % (moments * injectors) < momentsOpen * injectors);
            sum += open;
            sumOfSquares += open * open;
            sumOfCubes += open * open * open;
        }

        double n = moments * injectors;
        double expected = sumOfSquares / n / (sum / n * (sum / n));
        double factor = Pulse.QuadraticLossFactor(injectors, new Real(momentsOpen / (double)moments)).Value;
        Close.Within(1e-12, expected, factor);
        double mean = sum / n;
        Close.Within(
            1e-12,
            sumOfCubes / n / (mean * mean * mean),
            Pulse.FlowWeightedLossFactor(injectors, new Real(momentsOpen / (double)moments)).Value
        );
    }

    /// <summary>Four at once for 0.3 of the time: 1/0.3 and 1/0.09, whatever their number; common practice, no source.</summary>
    [Fact]
    public void LossFactors_AllAtOnce_AreThoseOfOne()
    {
        Close.Within(1e-12, 1 / 0.3, Pulse.QuadraticLossFactor(1, new Real(0.3)).Value);
        Close.Within(1e-12, 1 / 0.09, Pulse.FlowWeightedLossFactor(1, new Real(0.3)).Value);
    }

    private static double Width(double width, double deadTime) =>
        Pulse.EffectiveWidth(new Real(width), new Real(deadTime)).Value;

    private static double Mass(double flow, double width, double correction) =>
        Pulse.Mass(new Real(flow), new Real(width), new Real(correction)).Value;
}
