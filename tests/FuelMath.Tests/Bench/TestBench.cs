using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>An invented bench: n-heptane at 300 kPa and 21 degrees Celsius, 1000 pulses of a period of 20 ms.</summary>
internal static class TestBench
{
    internal static readonly Ratio NinetyFive = Ratio.FromPercent(95);

    internal static DataSource Source { get; } = new("Workshop-class", "bench report");

    internal static BenchConditions Conditions { get; } = At(300);

    internal static BenchConditions At(double kilopascals) =>
        new(Pressure.FromKilopascals(kilopascals), StandardFuels.NHeptane, Temperature.FromDegreesCelsius(21), Source);

    internal static DynamicFlowReading Pulse(double milliseconds, double milligrams) =>
        Pulse(milliseconds, milligrams, 13.5, Conditions);

    internal static DynamicFlowReading Pulse(
        double milliseconds,
        double milligrams,
        double volts,
        BenchConditions conditions
    ) =>
        new(
            Duration.FromMilliseconds(milliseconds),
            Duration.FromMilliseconds(20),
            1000,
            CollectedFuel.FromMass(Mass.FromGrams(milligrams), Mass.FromMilligrams(1)),
            ElectricPotential.FromVolts(volts),
            conditions
        );
}
