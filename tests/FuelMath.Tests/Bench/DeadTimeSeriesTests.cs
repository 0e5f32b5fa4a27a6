using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>Dead times over voltage and pressure, all read or some of them estimated.</summary>
public sealed class DeadTimeSeriesTests
{
    private static readonly double[] Volts = [10, 12, 14];
    private static readonly double[] Kilopascals = [200, 300, 400];

    /// <summary>Two repeats count by their mean; the rest as read.</summary>
    [Fact]
    public void FromReadings_Repeats_CountByTheirMean()
    {
        DeadTimeTable table = DeadTimeSeries.FromReadings(
            [Read(10, 300, 1.8), Read(10, 300, 1.82), Read(14, 300, 1.0)],
            OutsideRange.Refuse,
            TestBench.Source
        );

        Close.Within(1e-12, 1.81, table.ValueAt(0, 0).Milliseconds);
        Assert.False(table.HoldsEstimates);
        Assert.False(table.DependsOnPressure);
    }

    /// <summary>
    /// Readings that add: 1.8, 1.3, 1.0 ms by voltage and 0, 0.1, 0.25 by pressure. Whichever pair is missing is found again.
    /// </summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 2)]
    [InlineData(2, 1)]
    public void Fill_ReadingsThatAdd_FindsTheMissingPair(int volt, int pressure)
    {
        double[] byVoltage = [1.8, 1.3, 1.0];
        double[] byPressure = [0, 0.1, 0.25];
        FilledDeadTimes filled = Fill(
            FilledDeadTimes.FillPattern.Additive,
            (i, j) => (i, j) == (volt, pressure) ? null : byVoltage[i] + byPressure[j]
        );

        Close.Within(1e-10, byVoltage[volt] + byPressure[pressure], filled.Table.ValueAt(volt, pressure).Milliseconds);
        Assert.Equal(1, filled.Estimates);
        // They follow the pattern exactly and are known to their step.
        Close.Within(1e-9, 0.001 / Math.Sqrt(12), filled.Scatter!.Value.Milliseconds);
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                Assert.Equal((i, j) == (volt, pressure), filled.Table.IsEstimated(i, j));
            }
        }
    }

    /// <summary>Readings that multiply: 1.8, 1.3, 1.0 ms times 1, 1.1, 1.25. An L of five readings has four pairs missing.</summary>
    [Fact]
    public void Fill_ReadingsThatMultiply_FindsFourMissingPairs()
    {
        double[] byVoltage = [1.8, 1.3, 1.0];
        double[] byPressure = [1, 1.1, 1.25];
        FilledDeadTimes filled = Fill(
            FilledDeadTimes.FillPattern.Proportional,
            (i, j) => i > 0 && j > 0 ? null : byVoltage[i] * byPressure[j]
        );

        Assert.Equal(4, filled.Estimates);
        Assert.Null(filled.Scatter);
        Close.Within(1e-10, 1.0 * 1.25, filled.Table.ValueAt(2, 2).Milliseconds);
        Close.Within(1e-10, 1.3 * 1.1, filled.Table.ValueAt(1, 1).Milliseconds);
    }

    /// <summary>
    /// Of readings that multiply, the step of each counts as a share of it: they are off by its root mean square over sqrt 12,
    /// and of the geometric mean that is a time.
    /// </summary>
    [Fact]
    public void Fill_ReadingsThatMultiply_ScatterByTheirSteps()
    {
        double[] byVoltage = [1.8, 1.3, 1.0];
        double[] byPressure = [1, 1.1, 1.25];
        FilledDeadTimes filled = Fill(
            FilledDeadTimes.FillPattern.Proportional,
            (i, j) => (i, j) == (2, 2) ? null : byVoltage[i] * byPressure[j]
        );
        double[] all = [.. byVoltage.SelectMany(v => byPressure.Select(p => v * p))];
        double[] read = all[..8];
        double share = Math.Sqrt(read.Average(d => 1e-6 / (d * d)) / 12);

        Close.Within(1e-9, share * Math.Exp(all.Average(Math.Log)), filled.Scatter!.Value.Milliseconds);
    }

    /// <summary>Pairs that were read keep what was read, though it lies off the pattern; the scatter says how far.</summary>
    [Fact]
    public void Fill_OffThePattern_KeepsTheReadings()
    {
        double[,] read =
        {
            { 1.8, 1.92, 2.05 },
            { 1.3, 1.38, 1.52 },
            { 1.0, 1.13, double.NaN },
        };
        FilledDeadTimes filled = Fill(
            FilledDeadTimes.FillPattern.Additive,
            (i, j) => double.IsNaN(read[i, j]) ? null : read[i, j]
        );

        Close.Within(1e-12, 1.92, filled.Table.ValueAt(0, 1).Milliseconds);
        Assert.True(filled.Scatter!.Value.Milliseconds is > 0.005 and < 0.05);
        Assert.True(filled.Table.ValueAt(2, 2).Milliseconds is > 1.1 and < 1.4);
    }

    [Fact]
    public void Fill_NothingMissing_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            () => Fill(FilledDeadTimes.FillPattern.Additive, (i, j) => 2 - (0.3 * i) + (0.1 * j))
        );

    [Fact]
    public void Fill_ReadingsThatDoNotHangTogether_AreRefusedByName() =>
        Words.Refused<ArgumentException>(
            "columns",
            "14 V, 400 kPa, 10 V, 300 kPa",
            () =>
                DeadTimeSeries.Fill(
                    [Read(10, 300, 1.8), Read(14, 400, 1.2)],
                    FilledDeadTimes.FillPattern.Additive,
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );

    [Fact]
    public void Fill_ANegativeEstimate_IsRefused() =>
        Words.Says(
            "14 V, 400 kPa, -0.4 ms",
            Assert.Throws<NoSolutionException>(() =>
                DeadTimeSeries.Fill(
                    [Read(10, 300, 1.8), Read(10, 400, 1.0), Read(14, 300, 0.4)],
                    FilledDeadTimes.FillPattern.Additive,
                    OutsideRange.Refuse,
                    TestBench.Source
                )
            )
        );

    [Fact]
    public void Fill_NegativeReadingThatMultiplies_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            () =>
                DeadTimeSeries.Fill(
                    [Read(10, 300, -0.1), Read(10, 400, 1.0), Read(14, 300, 0.4)],
                    FilledDeadTimes.FillPattern.Proportional,
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );

    /// <summary>Nothing multiplies to zero.</summary>
    [Fact]
    public void Fill_AReadingOfZeroThatMultiplies_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            () =>
                DeadTimeSeries.Fill(
                    [Read(10, 300, 0), Read(10, 400, 1.0), Read(14, 300, 0.4)],
                    FilledDeadTimes.FillPattern.Proportional,
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );

    [Fact]
    public void FromReadings_OneReading_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            "2, 1",
            () => DeadTimeSeries.FromReadings([Read(10, 300, 1.8)], OutsideRange.Refuse, TestBench.Source)
        );

    /// <summary>A table is not filled where nobody asked for it.</summary>
    [Fact]
    public void FromReadings_AMissingPair_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            "1, 0, 14 V, 400 kPa",
            () =>
                DeadTimeSeries.FromReadings(
                    [Read(10, 300, 1.8), Read(10, 400, 1.9), Read(14, 300, 1.1)],
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );

    [Fact]
    public void Reading_BeyondAllNumbers_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "deadTime",
            () =>
                _ = new DeadTimeReading(
                    ElectricPotential.FromVolts(14),
                    Duration.FromDays(1e200),
                    Duration.FromMilliseconds(0.01),
                    TestBench.Conditions
                )
        );

    [Fact]
    public void FromReadings_Negative_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "values",
            "-0.1 ms",
            () =>
                DeadTimeSeries.FromReadings(
                    [Read(10, 300, 1.8), Read(14, 300, -0.1)],
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );

    [Fact]
    public void FromReadings_CorrectedWidths_AreRefused()
    {
        BenchConditions corrected = TestBench.Conditions.WithWidths(WidthCorrections.Voltage);
        Words.Refused<ArgumentException>(
            "readings",
            "14 V",
            () =>
                DeadTimeSeries.FromReadings(
                    [Read(10, 300, 1.8), Read(14, 1.0, corrected)],
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );
    }

    /// <summary>A table of characterizations holds one for each voltage: of two nobody says which counts.</summary>
    [Fact]
    public void ToTable_OnePairTwice_IsRefused()
    {
        static PulseCharacterization At(double volts, double dead) =>
            new(
                new[] { 3.0, 5, 8 }.Select(w => TestBench.Pulse(w, 4 * (w - dead), volts, TestBench.Conditions)),
                Ratio.FromPercent(2),
                TestBench.NinetyFive
            );

        RefusedArgumentException error = Words.Refused<RefusedArgumentException>(
            "series",
            "1, 2, 12 V, 300 kPa",
            () =>
                DeadTimeSeries.ToTable([At(12, 1.4), At(12, 1.41), At(14, 1.1)], OutsideRange.Refuse, TestBench.Source)
        );
        DeadTimeTable table = DeadTimeSeries.ToTable([At(14, 1.1), At(12, 1.4)], OutsideRange.Refuse, TestBench.Source);
        Close.Within(1e-9, 1.4, table.ValueAt(0, 0).Milliseconds);
        Close.Within(1e-9, 1.1, table.ValueAt(1, 0).Milliseconds);
    }

    [Fact]
    public void FromReadings_TwoDrivers_AreRefused()
    {
        BenchConditions driven = TestBench.Conditions.WithDriver(InjectorDriver.Saturated.WithoutBallast);
        Words.Refused<ArgumentException>(
            "readings",
            () =>
                DeadTimeSeries.FromReadings(
                    [Read(10, 300, 1.8), Read(14, 1.0, driven)],
                    OutsideRange.Refuse,
                    TestBench.Source
                )
        );
    }

    private static FilledDeadTimes Fill(FilledDeadTimes.FillPattern pattern, Func<int, int, double?> milliseconds) =>
        DeadTimeSeries.Fill(
            from i in Enumerable.Range(0, 3)
            from j in Enumerable.Range(0, 3)
            let value = milliseconds(i, j)
            where value.HasValue
            select Read(Volts[i], Kilopascals[j], value.Value),
            pattern,
            OutsideRange.Refuse,
            TestBench.Source
        );

    private static DeadTimeReading Read(double volts, double kilopascals, double milliseconds) =>
        Read(volts, milliseconds, TestBench.At(kilopascals));

    private static DeadTimeReading Read(double volts, double milliseconds, BenchConditions conditions) =>
        new(
            ElectricPotential.FromVolts(volts),
            Duration.FromMilliseconds(milliseconds),
            Duration.FromMilliseconds(0.001),
            conditions
        );
}
