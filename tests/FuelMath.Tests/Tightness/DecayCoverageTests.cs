using FuelMath.ShopTests;
using UnitsNet;
using Xunit.Abstractions;

namespace FuelMath.Tests.Tightness;

/// <summary>How often a verdict is wrong when every input is off by what was stated of it.</summary>
public sealed class DecayCoverageTests(ITestOutputHelper output)
{
    private const double GaugeKilopascals = 1.5;
    private const double Kelvins = 0.08;
    private const double VolumeShare = 0.05;
    private const double ModulusShare = 0.1;
    private const double SwellingShare = 0.2;
    private const double FuelShare = 0.05;
    private const double WallShare = 0.4;
    private const double GasCubicCentimeters = 0.05;
    private const double Minutes = 10;

    /// <summary>
    /// Lines that leak exactly the limit pass, and fail, in no more than the 2.5 % that two standard uncertainties leave on
    /// each side; tight ones are no test in no more than that.
    /// </summary>
    [Fact]
    public void Judge_InputsOffAsStated_IsWrongAsRarelyAsSaid()
    {
        var random = new Random(Seed);
        int trials = DrawnCasesAttribute.Cases ?? 2000;
        (int passes, int fails, int noTest) = (0, 0, 0);
        VolumeFlow limit = VolumeFlow.FromCubicMillimetersPerSecond(40 / 60.0);
        for (int i = 0; i < trials; i++)
        {
            DecayTest.Outcome leaking = Judged(random, leakCubicMillimetersPerMinute: 40, limit);
            passes += leaking == DecayTest.Outcome.Passes ? 1 : 0;
            fails += leaking == DecayTest.Outcome.Fails ? 1 : 0;
            noTest += Judged(random, leakCubicMillimetersPerMinute: 0, limit) == DecayTest.Outcome.NotATest ? 1 : 0;
        }

        output.WriteLine(
            FormattableString.Invariant(
                $"{trials} trials: at the limit {100.0 * passes / trials:0.0} % pass and {100.0 * fails / trials:0.0} % fail; of tight ones {100.0 * noTest / trials:0.0} % are no test"
            )
        );

        // 2.3 % beyond two standard deviations, and five of the count's own.
        double most = (0.023 * trials) + (5 * Math.Sqrt(0.023 * trials));
        Assert.InRange(passes, 0, most);
        Assert.InRange(fails, 0, most);
        Assert.InRange(noTest, 0, most);
    }

    private static int Seed =>
        DrawnCasesAttribute.Seed is { } seed ? (int)(seed % (ulong)int.MaxValue) : Environment.TickCount;

    /// <summary>A line as it is, its readings, and what is believed of it.</summary>
    private static DecayTest.Outcome Judged(Random random, double leakCubicMillimetersPerMinute, VolumeFlow limit)
    {
        double drift = 0.3 * Normal(random);
        double liters = 0.5;
        double modulus = ClosedLine.Hot.BulkModulus.BulkModulusAt(Temperature.FromDegreesCelsius(20)).Pascals;
        double swelling = 20e-10;
        double fuel = Expansion();
        const double walls = 2e-4;
        const double gas = 0.5e-6;

        // The truth: each input off by as much as was stated of it. Pressure after: what leaves is what leaks, by bisection.
        double trueLiters = liters * (1 + (VolumeShare * Normal(random)));
        double trueModulus = modulus * (1 + (ModulusShare * Normal(random)));
        double trueSwelling = swelling * (1 + (SwellingShare * Normal(random)));
        double trueFuel = fuel * (1 + (FuelShare * Normal(random)));
        double trueWalls = walls * (1 + (WallShare * Normal(random)));
        double trueGas = gas + (GasCubicCentimeters * 1e-6 * Normal(random));
        double leaked = leakCubicMillimetersPerMinute * Minutes * 1e-9;
        const double first = 5e5;
        (double low, double high) = (1.2e5, 4e6);
        for (int i = 0; i < 60; i++)
        {
            double after = 0.5 * (low + high);
            double left =
                (trueLiters * 1e-3 * ((1 / trueModulus) + trueSwelling) * (first - after))
                + (trueLiters * 1e-3 * (trueFuel - trueWalls) * drift)
                + (trueGas * 1e5 * (((293.15 + drift) / (293.15 * after)) - (1 / first)));
            (low, high) = left > leaked ? (after, high) : (low, after);
        }

        double Gauge(double absolute) => ((absolute - 1e5) / 1e3) + (GaugeKilopascals * Normal(random));
        var line = new ClosedLine(liters, 20, 0.5, 4, 60) { WallExpansion = walls };
        DecayTest test = new(
            line.Volume,
            ClosedLine.Reading(0, new GaugePressure(Pressure.FromKilopascals(Gauge(first)))),
            ClosedLine.Reading(
                Minutes,
                new GaugePressure(Pressure.FromKilopascals(Gauge(low))),
                20 + drift + (Math.Sqrt(2) * Kelvins * Normal(random))
            ),
            new DecayTest.Uncertainty(
                Pressure.FromKilopascals(GaugeKilopascals),
                TemperatureDelta.FromKelvins(Kelvins),
                default,
                new ClosedVolume.Uncertainty(
                    Ratio.FromDecimalFractions(VolumeShare),
                    Ratio.FromDecimalFractions(ModulusShare),
                    Ratio.FromDecimalFractions(SwellingShare),
                    Ratio.FromDecimalFractions(FuelShare),
                    Ratio.FromDecimalFractions(WallShare),
                    Volume.FromCubicCentimeters(GasCubicCentimeters)
                )
            )
        );
        return test.Judge(limit);
    }

    /// <summary>From densities a kelvin apart.</summary>
    private static double Expansion()
    {
        double Density(double c) => ClosedLine.Hot.DensityAt(Temperature.FromDegreesCelsius(c)).KilogramsPerCubicMeter;
        return (Density(19.5) - Density(20.5)) / Density(20);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
