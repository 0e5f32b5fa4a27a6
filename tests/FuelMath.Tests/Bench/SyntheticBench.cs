using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>An injector that is known, 4 g/s and 1.2 ms, pulsed from 3 to 11 ms with scatter of a stated kind.</summary>
internal static class SyntheticBench
{
    internal const double Slope = 4;
    internal const double Dead = 1.2;

    /// <summary>0.3 % of the middle mass, and 0.5 % of the reading.</summary>
    internal const double Constant = 0.003 * Slope * (7 - Dead);
    internal const double Share = 0.005;

    /// <summary>A kind of scatter: how far the reading of a mass is off, mg, and what short pulses give beyond the line.</summary>
    internal static readonly Dictionary<string, (Func<double, double> Deviation, double Bump, double Outlier)> Kinds =
        new()
        {
            ["constant"] = (_ => Constant, 0, 0),
            ["relative"] = (m => Share * m, 0, 0),
            ["both"] = (m => Math.Sqrt((Constant * Constant) + (Share * m * Share * m)), 0, 0),
            ["bump"] = (_ => Constant, 0.02, 0),
            ["outlier"] = (_ => Constant, 0, 10 * Constant),
        };

    /// <summary>The weights that fit a kind.</summary>
    internal static PulseCharacterization.PulseScatter Fitting(string kind) =>
        kind switch
        {
            "relative" => PulseCharacterization.PulseScatter.Proportional,
            "both" => PulseCharacterization.PulseScatter.FromParts(
                Mass.FromMilligrams(Constant),
                Ratio.FromDecimalFractions(Share)
            ),
            _ => PulseCharacterization.PulseScatter.Constant,
        };

    /// <summary>Readings at evenly spaced widths.</summary>
    internal static DynamicFlowReading[] Readings(string kind, int count, Random random) =>
        Readings(kind, [.. Enumerable.Range(0, count).Select(i => 3 + (8.0 * i / (count - 1)))], random);

    /// <summary>Readings. A bump is 2 % more at 3 ms, and 1/e of that each millisecond on.</summary>
    internal static DynamicFlowReading[] Readings(string kind, double[] widths, Random random)
    {
        (Func<double, double> deviation, double bump, double outlier) = Kinds[kind];
        int off = outlier > 0 ? random.Next(widths.Length) : -1;
        return
        [
            .. widths.Select(
                (width, i) =>
                {
                    double mass = Slope * (width - Dead) * (1 + (bump * Math.Exp(3 - width)));
                    double read = mass + (deviation(mass) * Normal(random)) + (i == off ? outlier : 0);
                    return TestBench.Pulse(width, read);
                }
            ),
        ];
    }

    /// <summary>A set of injectors that flow exactly 1000 cm3/min, each read so often, with scatter as a share.</summary>
    internal static SetReport Set(int injectors, int repeats, double scatter, double weakest, Random random) =>
        new(
            Flow(1000).ToRating(),
            Enumerable
                .Range(0, injectors)
                .Select(i => new BenchedInjector(
                    $"injector {i}",
                    Enumerable
                        .Range(0, repeats)
                        .Select(_ => Flow((i == 0 ? weakest : 1) * 1000 * (1 + (scatter * Normal(random)))))
                )),
            AcceptanceLimits.CommonPractice,
            TestBench.NinetyFive
        );

    internal static int Seeds(int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable("COVERAGE_SEEDS"), out int asked) ? asked : otherwise;

    /// <summary>Two uniform numbers make a normal one.</summary>
    internal static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static StaticFlowReading Flow(double cubicCentimeters) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromMicroliters(1)),
            Duration.FromMinutes(1),
            TestBench.Conditions
        );
}
