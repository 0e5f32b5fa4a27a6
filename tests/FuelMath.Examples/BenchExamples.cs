using FuelMath.Bench;
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

        MassFlow flow = found.StaticMassFlow; // 3.963 g/s
        Duration deadTime = found.DeadTime; // 1.165 ms
        (Duration low, Duration high) = (found.DeadTimeLow, found.DeadTimeHigh); // 0.57 and 1.67 ms
        Duration linearFrom = found.LinearFrom; // 3 ms
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
            VolumeFlow.FromCubicCentimetersPerMinute(1000),
            conditions.DifferentialPressure,
            conditions.Fluid,
            conditions.FluidTemperature,
            new DataSource("Workshop-class", "label of the injectors")
        );

        var report = new SetReport(
            rating,
            [
                BenchedInjector.FromCleaning("A", [Read(290)], [Read(320), Read(320)]),
                new BenchedInjector("B", [Read(370), Read(370)]),
                new BenchedInjector("C", [Read(465), Read(465)]),
            ],
            AcceptanceLimits.CommonPractice,
            Ratio.FromPercent(95)
        );

        bool accepted = report.IsAccepted; // false
        Ratio spread = report.Spread; // 37.66 %
        Ratio weakest = report.Members[0].FromRating; // -36 %
        #endregion

        Assert.False(accepted);
        Assert.Equal(37.66, spread.Percent, 0.005);
        Assert.Equal(-36, weakest.Percent, 1e-9);
    }

    [Fact]
    public void MeasureAnExponent()
    {
        #region Exponent
        var label = new DataSource("Workshop-class", "bench report, injector A at several pressures");
        StaticFlowReading Read(double bar, double cubicCentimeters) =>
            new(
                CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(1)),
                Duration.FromSeconds(30),
                new BenchConditions(
                    Pressure.FromBars(bar),
                    StandardFuels.NHeptane,
                    Temperature.FromDegreesCelsius(21),
                    label
                )
            );
        var fit = new PressureExponentFit(
            [Read(2, 391), Read(3, 490), Read(4, 576), Read(5, 653), Read(6, 722)],
            Ratio.FromPercent(95)
        );

        bool notTheRoot = fit.IsRootRejected; // true
        Ratio exponent = fit.Exponent; // 0.56
        FlowRating rating = fit.ToRating(Pressure.FromBars(3), OutsideRange.Refuse);
        VolumeFlow rated = rating.StaticVolumeFlow; // 981 cm³/min
        #endregion

        Assert.True(notTheRoot);
        // By hand from the two ends alone: ln(722 / 391) / ln 3.
        Assert.Equal(Math.Log(722.0 / 391) / Math.Log(3), exponent.DecimalFractions, 0.005);
        Assert.Equal(980, rated.CubicCentimetersPerMinute, 2.0);
    }

    [Fact]
    public void CompareSlots()
    {
        #region Slots
        var conditions = new BenchConditions(
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(21),
            new DataSource("Workshop-class", "bench report, three injectors in three slots")
        );
        SlotComparison.SlotReading Read(string injector, string slot, double cubicCentimeters) =>
            new(
                injector,
                slot,
                new StaticFlowReading(
                    CollectedFuel.FromVolume(
                        Volume.FromCubicCentimeters(cubicCentimeters),
                        Volume.FromCubicCentimeters(1)
                    ),
                    Duration.FromSeconds(30),
                    conditions
                )
            );
        SlotComparison.SlotReading[] readings =
        [
            Read("A", "1", 275),
            Read("A", "2", 281),
            Read("B", "2", 276),
            Read("B", "3", 270),
            Read("C", "3", 262),
            Read("C", "1", 263),
        ];
        var found = new SlotComparison(readings, readings[0].Reading.ToRating(), Ratio.FromPercent(95));

        Ratio slotTwo = found.SlotFactor("2"); // 1.015
        Ratio standardError = found.SlotFactorStandardError("2"); // 0.0009
        VolumeFlow injectorA = found.InjectorFlow("A"); // 554 cm³/min
        #endregion

        Assert.True(slotTwo.DecimalFractions > 1.01);
        Assert.True(standardError.DecimalFractions > 0);
        Assert.Equal(275 * 2, injectorA.CubicCentimetersPerMinute, 8.0);
    }

    [Fact]
    public void PlaceInjectors()
    {
        #region Placement
        var source = new DataSource("Workshop-class", "bench report of eight injectors");
        DeadTimeTable deadTime = DeadTimeTable.FromVoltage(
            [ElectricPotential.FromVolts(10), ElectricPotential.FromVolts(16)],
            Pressure.FromBars(3),
            [Duration.FromMilliseconds(1.6), Duration.FromMilliseconds(0.8)],
            OutsideRange.Refuse,
            source
        );
        Placement.Candidate Candidate(string name, double cubicCentimetersPerMinute, int stage) =>
            new(
                new Injector(
                    name,
                    FlowRating.FromVolume(
                        VolumeFlow.FromCubicCentimetersPerMinute(cubicCentimetersPerMinute),
                        Pressure.FromBars(3),
                        StandardFuels.NHeptane,
                        Temperature.FromDegreesCelsius(21),
                        source
                    ),
                    deadTime,
                    ShortPulseCorrection.None,
                    Duration.Zero,
                    Duration.Zero,
                    ElectricResistance.FromOhms(12.5)
                ),
                [stage]
            );
        Placement found = Placement.FromCandidates(
            [
                Candidate("P1", 553, 1),
                Candidate("S1", 1002, 2),
                Candidate("P2", 545, 1),
                Candidate("S2", 992, 2),
                Candidate("P3", 501, 1),
                Candidate("S3", 1009, 2),
                Candidate("P4", 549, 1),
                Candidate("S4", 996, 2),
            ],
            Enumerable.Repeat(Ratio.FromPercent(25), 4),
            [
                new Placement.Point(
                    "peak power",
                    [Duration.FromMilliseconds(11), Duration.FromMilliseconds(9)],
                    Duration.FromMilliseconds(17),
                    Pressure.FromBars(3),
                    Density.FromKilogramsPerCubicMeter(740),
                    ElectricPotential.FromVolts(13.5)
                ),
            ],
            2_000_000
        );

        string besideP3 = Enumerable
            .Range(1, 4)
            .Where(c => found.At(c, 1).Name == "P3")
            .Select(c => found.At(c, 2).Name)
            .Single(); // S3: the weakest primary goes with the strongest secondary
        (Ratio before, Ratio after) = (found.AsGiven!.Value, found.Imbalance); // 3.5 % and 2.9 %
        bool proven = found.IsProvenBest; // true
        #endregion

        // The weakest primary goes with the strongest secondary.
        Assert.Equal("S3", besideP3);
        Assert.True(proven);
        Assert.True(after < before);
    }
}
