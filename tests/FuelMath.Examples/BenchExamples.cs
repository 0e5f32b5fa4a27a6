using FuelMath.Bench;
using FuelMath.Fuels;
using FuelMath.Injectors;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class BenchExamples
{
    [Fact]
    public void CharacterizeAnInjector()
    {
        #region Characterization
        var conditions = new BenchConditions(
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(21),
            new DataSource("Workshop-class", "bench report, injector A")
        );
        DynamicFlowReading Read(double milliseconds, double grams) =>
            new(
                Duration.FromMilliseconds(milliseconds),
                Duration.FromMilliseconds(20),
                2000,
                CollectedFuel.FromMass(Mass.FromGrams(grams), Mass.FromGrams(0.1)),
                ElectricPotential.FromVolts(14),
                conditions
            );

        var found = new PulseCharacterization(
            [Read(2, 7.9), Read(3, 14.6), Read(5, 30.2), Read(8, 54.4), Read(12, 85.8)],
            Ratio.FromPercent(2),
            Ratio.FromPercent(95)
        );

        MassFlow flow = found.StaticMassFlow;
        Duration deadTime = found.DeadTime;
        (Duration low, Duration high) = (found.DeadTimeLow, found.DeadTimeHigh);
        Duration linearFrom = found.LinearFrom;
        #endregion

        // By hand through the four longer pulses: mean 7 ms and 23.125 mg, Sxx 46, Sxy 182.3; the shortest lies above it.
        Assert.Equal(182.3 / 46, flow.GramsPerSecond, 1e-9);
        Assert.Equal(7 - (23.125 * 46 / 182.3), deadTime.Milliseconds, 1e-9);
        Assert.True(low < deadTime && deadTime < high);
        Assert.Equal(3, linearFrom.Milliseconds, 1e-9);
    }

    [Fact]
    public void ReportOnASet()
    {
        #region Set
        var conditions = new BenchConditions(
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(21),
            new DataSource("Workshop-class", "bench report of the set")
        );
        StaticFlowReading Read(double cubicCentimeters) =>
            new(
                CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(1)),
                Duration.FromSeconds(30),
                conditions
            );
        FlowRating rating = FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(1700),
            conditions.DifferentialPressure,
            conditions.Fluid,
            conditions.FluidTemperature,
            new DataSource("Workshop-class", "label of the injectors")
        );

        var report = new SetReport(
            rating,
            [
                BenchedInjector.FromCleaning("A", [Read(420)], [Read(474), Read(474)]),
                new BenchedInjector("B", [Read(690), Read(690)]),
                new BenchedInjector("C", [Read(700), Read(700)]),
            ],
            AcceptanceLimits.CommonPractice,
            Ratio.FromPercent(95)
        );

        bool accepted = report.IsAccepted;
        Ratio spread = report.Spread;
        Ratio weakest = report.Members[0].FromRating;
        #endregion

        Assert.False(accepted);
        Assert.Equal(36.4, spread.Percent, 0.05);
        Assert.Equal(100 * ((948 / 1700.0) - 1), weakest.Percent, 1e-9);
    }
}
