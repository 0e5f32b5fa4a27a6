using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>How often intervals for the dead time of a synthetic injector (4 g/s, 1.2 ms) hold the truth.</summary>
internal sealed record Coverage(int Readings, int Seeds, double Fieller, double TwoStandardErrors)
{
    private const double Slope = 4;
    private const double Dead = 1.2;

    internal static Coverage Of(int readings, int seeds, double scatter)
    {
        (int fieller, int two) = (0, 0);
        double noise = scatter * Slope * (7 - Dead);
        for (int seed = 0; seed < seeds; seed++)
        {
            var random = new Random(seed);
            PulseCharacterization found = new(
                Enumerable
                    .Range(0, readings)
                    .Select(i => 3 + (8.0 * i / (readings - 1)))
                    .Select(w => TestBench.Pulse(w, (Slope * (w - Dead)) + (noise * Normal(random)))),
                Ratio.FromPercent(50),
                TestBench.NinetyFive
            );
            double off = Math.Abs(found.DeadTime.Milliseconds - Dead);
            fieller +=
                found.DeadTimeLowByScatter.Milliseconds <= Dead && Dead <= found.DeadTimeHighByScatter.Milliseconds
                    ? 1
                    : 0;
            two += off <= 1.96 * found.DeadTimeStandardError.Milliseconds ? 1 : 0;
        }

        return new(readings, seeds, (double)fieller / seeds, (double)two / seeds);
    }

    /// <summary>Two uniform numbers make a normal one.</summary>
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
