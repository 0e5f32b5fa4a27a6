using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Injectors;

/// <summary>Points of a short-pulse correction in ms, with or without bumps; the last is zero.</summary>
public sealed record Bumps(double[] Widths, double[] Corrections)
{
    public ShortPulseCorrection ToCorrection() =>
        new(
            Widths.Select(w => Duration.FromMilliseconds(w)),
            Corrections.Select(c => Duration.FromMilliseconds(c)),
            TestInjector.Source
        );

    public override string ToString() =>
        string.Join("  ", Widths.Select((w, i) => $"({w} ms, {Corrections[i]:g4} ms)"));
}

/// <summary>Conditions of a pulse: kPa across the injector, kg/m3, V at the injector.</summary>
public sealed record Conditions(double Kilopascals, double Density, double Volts)
{
    public Pressure Differential => Pressure.FromKilopascals(Kilopascals);

    public Density Fuel => UnitsNet.Density.FromKilogramsPerCubicMeter(Density);

    public ElectricPotential Voltage => ElectricPotential.FromVolts(Volts);
}

/// <summary>A number from 0 to 1.</summary>
public readonly record struct Part(double Value);

public static class InjectorArbitraries
{
    public static Arbitrary<Bumps> Corrections() =>
        (
            from count in Gen.Choose(1, 7)
            from steps in Gen.Choose(2, 40).ArrayOf(count)
            from shares in Gen.Choose(-100, 150).ArrayOf(count)
            let widths = steps.Select((_, i) => steps.Take(i + 1).Sum() / 100.0).ToArray()
            let corrections = widths.Select((w, i) => i == count - 1 ? 0 : w * shares[i] / 100.0).ToArray()
            select new Bumps(widths, corrections)
        ).ToArbitrary();

    public static Arbitrary<Conditions> Around() =>
        (
            from kilopascals in Gen.Choose(100, 600)
            from density in Gen.Choose(650, 820)
            from volts in Gen.Choose(80, 160)
            select new Conditions(kilopascals, density, volts / 10.0)
        ).ToArbitrary();

    public static Arbitrary<Part> Parts() => Gen.Choose(0, 100_000).Select(n => new Part(n / 1e5)).ToArbitrary();
}

/// <summary>An invented injector: 4 g/s of n-heptane at 300 kPa, dead time from 2.4 ms at 8 V to 0.8 ms at 16 V.</summary>
internal static class TestInjector
{
    internal static DataSource Source { get; } = new("Workshop-class", "primary injector of the time-trial car");

    internal static FlowRating Rating { get; } =
        FlowRating.FromMass(
            MassFlow.FromGramsPerSecond(4),
            Pressure.FromKilopascals(300),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(21),
            Source
        );

    internal static DeadTimeTable DeadTime { get; } =
        new(
            [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
            [Pressure.FromKilopascals(100), Pressure.FromKilopascals(600)],
            Milliseconds(
                new[,]
                {
                    { 2.2, 2.6 },
                    { 1.1, 1.3 },
                    { 0.7, 0.9 },
                }
            ),
            OutsideRange.Refuse,
            Source
        );

    internal static Injector With(ShortPulseCorrection correction, double smallest, double closing) =>
        new(
            "primary",
            Rating,
            DeadTime,
            correction,
            Duration.FromMilliseconds(smallest),
            Duration.FromMilliseconds(closing),
            ElectricResistance.FromOhms(12.5)
        );

    internal static Duration[,] Milliseconds(double[,] values)
    {
        var durations = new Duration[values.GetLength(0), values.GetLength(1)];
        for (int i = 0; i < values.GetLength(0); i++)
        {
            for (int j = 0; j < values.GetLength(1); j++)
            {
                durations[i, j] = Duration.FromMilliseconds(values[i, j]);
            }
        }

        return durations;
    }
}
