using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>
/// How often the interval of a member of a set holds its true flow. The scatter of all repeats is pooled, but for an injector
/// whose repeats are found to scatter more; few repeats do not always show it, and how often is a figure of the page on the
/// bench.
/// </summary>
public sealed class SetIntervalTests
{
    private const int Sets = 600;

    private static readonly BenchConditions Conditions = new(
        Pressure.FromBars(3),
        StandardFuels.NHeptane,
        Temperature.FromDegreesCelsius(21),
        new DataSource("Workshop-class", "simulated sets")
    );

    private static readonly FlowRating Rating = FlowRating.FromVolume(
        VolumeFlow.FromCubicCentimetersPerMinute(1000),
        Conditions.DifferentialPressure,
        Conditions.Fluid,
        Conditions.FluidTemperature,
        Conditions.Source
    );

    // 95 % of 600 has a standard deviation of 0.9 %, 74 % one of 1.8 %: three to either side.
    [Theory]
    [InlineData(2, 1, 0.923, 0.977)]
    [InlineData(3, 1, 0.923, 0.977)]
    [InlineData(2, 3, 0.687, 0.795)]
    [InlineData(3, 3, 0.76, 0.856)]
    [InlineData(5, 3, 0.86, 0.936)]
    [InlineData(10, 3, 0.948, 0.992)]
    public void FlowHalfWidth_OneOfSixScattersMore_HoldsItsFlowLessOften(
        int repeats,
        double times,
        double least,
        double most
    )
    {
        int held = 0;
        for (int seed = 0; seed < Sets; seed++)
        {
            var random = new Random(seed);
            double[] flows = [.. Enumerable.Range(0, 6).Select(_ => 500 * (1 + (0.02 * Normal(random))))];
            SetReport report = new(
                Rating,
                [
                    .. flows.Select(
                        (flow, i) =>
                            new BenchedInjector(
                                $"{i}",
                                [
                                    .. Enumerable
                                        .Range(0, repeats)
                                        .Select(_ => Read(flow + (2.5 * (i == 0 ? times : 1) * Normal(random)))),
                                ]
                            )
                    ),
                ],
                AcceptanceLimits.CommonPractice,
                Ratio.FromPercent(95)
            );
            SetReport.Member first = report.Members.Single(m => m.Name == "0");
            double off = Math.Abs(first.Flow.CubicCentimetersPerMinute - (2 * flows[0]));
            held += off <= first.FlowHalfWidth!.Value.CubicCentimetersPerMinute ? 1 : 0;
        }

        Assert.InRange(held / (double)Sets, least, most);
    }

    private static StaticFlowReading Read(double cubicCentimeters) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(0.01)),
            Duration.FromSeconds(30),
            Conditions
        );

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
