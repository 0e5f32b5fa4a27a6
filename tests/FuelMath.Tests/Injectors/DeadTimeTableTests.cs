using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Injectors;

[Properties(Arbitrary = [typeof(InjectorArbitraries)])]
public sealed class DeadTimeTableTests
{
    private static readonly double[,] Rising =
    {
        { 2.2, 2.6 },
        { 1.1, 1.3 },
    };

    /// <summary>Bilinear by definition: amid four values lies their mean.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void At_AmidFourValues_GivesTheirMean() =>
        Close.Within(
            1e-13,
            (2.2 + 2.6 + 1.1 + 1.3) / 4,
            TestInjector.DeadTime.At(ElectricPotential.FromVolts(10), Pressure.FromKilopascals(350)).Milliseconds
        );

    [Property]
    public void At_MoreVoltage_IsNoLonger(Conditions c, Part part)
    {
        double more = c.Volts + (part.Value * (16 - c.Volts));

        Duration high = TestInjector.DeadTime.At(ElectricPotential.FromVolts(more), c.Differential);

        Assert.True(high.Seconds <= TestInjector.DeadTime.At(c.Voltage, c.Differential).Seconds + 1e-15);
    }

    [Fact]
    public void At_ItsOwnPlaces_GivesItsValues()
    {
        DeadTimeTable table = TestInjector.DeadTime;

        for (int i = 0; i < table.Voltages.Length; i++)
        {
            for (int j = 0; j < table.DifferentialPressures.Length; j++)
            {
                double at = table.At(table.Voltages[i], table.DifferentialPressures[j]).Seconds;
                Close.Within(1e-14, table.ValueAt(i, j).Seconds, at);
            }
        }
    }

    [Fact]
    public void FromVoltage_OnePressure_IsUsedForAllAndSaysSo()
    {
        DeadTimeTable table = OneColumn(OutsideRange.Refuse);

        Assert.False(table.DependsOnPressure);
        Assert.True(TestInjector.DeadTime.DependsOnPressure);
        Assert.Equal(
            table.At(ElectricPotential.FromVolts(10), Pressure.FromBars(1)).Seconds,
            table.At(ElectricPotential.FromVolts(10), Pressure.FromBars(9)).Seconds
        );
        Close.Within(1e-13, 1.8, table.At(ElectricPotential.FromVolts(10), Pressure.FromBars(3)).Milliseconds);
    }

    [Theory]
    [InlineData(OutsideRange.HoldEnds, 18, 0.8)]
    [InlineData(OutsideRange.Extend, 18, 0.6)]
    [InlineData(OutsideRange.HoldEnds, 6, 2.4)]
    [InlineData(OutsideRange.Extend, 6, 3.0)]
    public void At_OutsideWhenChosen_HoldsOrExtends(OutsideRange outside, double volts, double expected) =>
        Close.Within(
            1e-12,
            expected,
            OneColumn(outside).At(ElectricPotential.FromVolts(volts), Pressure.FromBars(3)).Milliseconds
        );

    [Fact]
    public void At_ExtendedBelowZero_Refuses() =>
        Words.OutsideTable(
            "8, 16, 25",
            () => OneColumn(OutsideRange.Extend).At(ElectricPotential.FromVolts(25), Pressure.FromBars(3))
        );

    [Theory]
    [InlineData(7.9, 300, "Dead time: voltage at the injector (V) must be from 8 to 16; it was 7.9.")]
    [InlineData(16.1, 300, "Dead time: voltage at the injector (V) must be from 8 to 16; it was 16.1.")]
    [InlineData(12, 99, "Dead time: differential pressure (kPa) must be from 100 to 600; it was 99.")]
    [InlineData(12, 601, "Dead time: differential pressure (kPa) must be from 100 to 600; it was 601.")]
    public void At_Outside_Refuses(double volts, double kilopascals, string words) =>
        Words.OutsideTable(
            words,
            () => TestInjector.DeadTime.At(ElectricPotential.FromVolts(volts), Pressure.FromKilopascals(kilopascals))
        );

    [Fact]
    public void At_BadValue_Refuses()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "atInjector",
            "0 V",
            () => TestInjector.DeadTime.At(ElectricPotential.FromVolts(0), Pressure.FromBars(3))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressure",
            "-1 bar",
            () => TestInjector.DeadTime.At(ElectricPotential.FromVolts(12), Pressure.FromBars(-1))
        );
    }

    /// <summary>Rows and columns changed about, or voltages written downward.</summary>
    [Fact]
    public void Constructor_RisingWithVoltage_SaysWhatRowsAre() =>
        Words.Refused<ArgumentException>(
            "values",
            "1, 0",
            () =>
                Table(
                    [8, 12],
                    [100, 600],
                    new[,]
                    {
                        { 1.1, 1.3 },
                        { 2.2, 2.6 },
                    }
                )
        );

    [Fact]
    public void Constructor_NegativeValue_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "values",
            "-1.1 ms",
            () =>
                Table(
                    [8, 12],
                    [100, 600],
                    new[,]
                    {
                        { 2.2, 2.6 },
                        { -1.1, 1.3 },
                    }
                )
        );

    [Fact]
    public void Constructor_BadAxes_Refuses()
    {
        Assert.Throws<ArgumentException>(() => Table([12, 8], [100, 600], Rising));
        Assert.Throws<ArgumentException>(() => Table([8, 12], [600, 100], Rising));
        Assert.Throws<ArgumentException>(() => Table([8, 12, 14], [100, 600], Rising));
        Words.Refused<ArgumentOutOfRangeException>("voltages", "0 V", () => Table([0, 12], [100, 600], Rising));
        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressures",
            "-100 kPa",
            () => Table([8, 12], [-100, 600], Rising)
        );
    }

    [Fact]
    public void Constructor_Null_SaysWhich()
    {
        ElectricPotential[] voltages = [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12)];
        Pressure[] pressures = [Pressure.FromBars(1), Pressure.FromBars(6)];
        Duration[,] values = TestInjector.Milliseconds(Rising);
        const OutsideRange outside = OutsideRange.Refuse;

        Assert.Throws<ArgumentNullException>(
            "voltages",
            () => new DeadTimeTable(null!, pressures, values, outside, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "differentialPressures",
            () => new DeadTimeTable(voltages, null!, values, outside, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "values",
            () => new DeadTimeTable(voltages, pressures, null!, outside, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "source",
            () => new DeadTimeTable(voltages, pressures, values, outside, null!)
        );
        Assert.Throws<ArgumentNullException>(
            "voltages",
            () => DeadTimeTable.FromVoltage(null!, pressures[0], [], outside, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "values",
            () => DeadTimeTable.FromVoltage(voltages, pressures[0], null!, outside, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "source",
            () => DeadTimeTable.FromVoltage(voltages, pressures[0], [], outside, null!)
        );
    }

    private static DeadTimeTable OneColumn(OutsideRange outside) =>
        DeadTimeTable.FromVoltage(
            [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
            Pressure.FromBars(3),
            [Duration.FromMilliseconds(2.4), Duration.FromMilliseconds(1.2), Duration.FromMilliseconds(0.8)],
            outside,
            TestInjector.Source
        );

    private static DeadTimeTable Table(double[] volts, double[] kilopascals, double[,] milliseconds) =>
        new(
            volts.Select(v => ElectricPotential.FromVolts(v)),
            kilopascals.Select(p => Pressure.FromKilopascals(p)),
            TestInjector.Milliseconds(milliseconds),
            OutsideRange.Refuse,
            TestInjector.Source
        );
}
