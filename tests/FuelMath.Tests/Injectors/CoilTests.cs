using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Injectors;

/// <summary>Coils that get hot, and what drives them.</summary>
[Properties(Arbitrary = [typeof(InjectorArbitraries)])]
public sealed class CoilTests
{
    private static CoilResistance Coil { get; } = new(Ohms(12.5), Celsius(20));

    /// <summary>The trade's figure: 70 K are 27.5 % more resistance; three digits.</summary>
    [Fact]
    [Trait("Source", "Common-practice")]
    public void ResistanceRise_SeventyKelvin_IsTheTradesFigure() =>
        Close.WithinOf(
            1,
            5e-4,
            0.275,
            Hot(90, InjectorDriver.Saturated.WithoutBallast).ResistanceRise.DecimalFractions
        );

    /// <summary>By hand: 1 + 0.00393 x 55 at 75 degrees Celsius.</summary>
    [Fact]
    [Trait("Source", "NBS-Handbook-100")]
    public void At_SeventyFiveDegrees_HasItsRatio() => Close.Within(1e-12, 12.5 * 1.21615, Coil.At(Celsius(75)).Ohms);

    [Property]
    public void TemperatureFor_TheResistanceAtATemperature_IsThatTemperature(Part part)
    {
        double celsius = -49 + (248 * part.Value);
        var measured = new CoilResistance(Ohms(2.4), Celsius(33));

        Close.WithinOf(300, 1e-12, celsius, measured.TemperatureFor(measured.At(Celsius(celsius))).DegreesCelsius);
        // Which temperature it was measured at makes no difference to what it is at 20 degrees.
        Close.Within(
            1e-12,
            measured.AtTwentyCelsius.Ohms,
            new CoilResistance(measured.At(Celsius(celsius)), Celsius(celsius)).AtTwentyCelsius.Ohms
        );
    }

    [Theory]
    [Trait("Source", "Common-practice")]
    [InlineData(2.4, CoilResistance.ImpedanceClass.Low)]
    [InlineData(7, CoilResistance.ImpedanceClass.Between)]
    [InlineData(12.5, CoilResistance.ImpedanceClass.High)]
    public void Impedance_ByResistance_IsTheTradesClass(double ohms, CoilResistance.ImpedanceClass expected) =>
        Assert.Equal(expected, new CoilResistance(Ohms(ohms), Celsius(20)).Impedance);

    /// <summary>Ohm's law by hand: 14 V over 2.4 ohm; with 6 ohm of ballast; held at 1 A; and 12.5 ohm that never reach 4 A.</summary>
    [Fact]
    public void Current_OfEachDriver_IsAsByHand()
    {
        ElectricPotential supply = ElectricPotential.FromVolts(14);
        InjectorDriver limited = Limited(4, 1);

        Close.Within(
            1e-14,
            14 / 2.4,
            InjectorDriver.Saturated.WithoutBallast.LargestCurrent(supply, Ohms(2.4)).Amperes
        );
        Close.Within(1e-14, 14 / 8.4, new InjectorDriver.Saturated(Ohms(6)).FinalCurrent(supply, Ohms(2.4)).Amperes);
        Close.Within(1e-14, 4, limited.LargestCurrent(supply, Ohms(2.4)).Amperes);
        Close.Within(1e-14, 1, limited.FinalCurrent(supply, Ohms(2.4)).Amperes);
        Close.Within(1e-14, 14 / 12.5, limited.LargestCurrent(supply, Ohms(12.5)).Amperes);
    }

    /// <summary>A driver that limits the current holds its peak when the coil is hot; a saturated one loses 1 / 1.2751.</summary>
    [Fact]
    public void LargestCurrent_HotCoil_FallsOnlyWithoutALimit()
    {
        ElectricPotential supply = ElectricPotential.FromVolts(14);
        var low = new CoilResistance(Ohms(2.4), Celsius(20));

        Close.Within(
            1e-12,
            14 / 12.5 / 1.2751,
            Hot(90, InjectorDriver.Saturated.WithoutBallast).LargestCurrent(supply).Amperes
        );
        Close.Within(
            1e-14,
            4,
            new CoilHeating(low, Celsius(20), Celsius(90), Limited(4, 1)).LargestCurrent(supply).Amperes
        );
    }

    /// <summary>By hand: 14 V over 1.2751 are 10.98 V; with 5 ohm of ballast 14 x 17.5 / 20.93875.</summary>
    [Fact]
    public void EquivalentVoltage_HotCoil_IsAsByHand()
    {
        ElectricPotential supply = ElectricPotential.FromVolts(14);

        Close.Within(
            1e-12,
            14 / 1.2751,
            Hot(90, InjectorDriver.Saturated.WithoutBallast).EquivalentVoltage(supply).Volts
        );
        Close.Within(
            1e-12,
            14 * 17.5 / 20.93875,
            Hot(90, new InjectorDriver.Saturated(Ohms(5))).EquivalentVoltage(supply).Volts
        );
    }

    /// <summary>
    /// A coil whose current rises as L di/dt = V - R i opens at a given current after -(L/R) ln(1 - I R/V): the true change
    /// lies between none and the estimate. Table of that law every 0.1 V, read straight between.
    /// </summary>
    [Property]
    public void EstimatedDeadTimeChange_FirstOrderCoil_BoundsTheTrueChange(Part part)
    {
        const double henry = 0.012;
        const double opening = 0.4;
        double hot = 20 + (100 * part.Value);
        double[] volts = [.. Enumerable.Range(70, 91).Select(i => i / 10.0)];
        DeadTimeTable table = DeadTimeTable.FromVoltage(
            volts.Select(v => ElectricPotential.FromVolts(v)),
            Pressure.FromKilopascals(300),
            volts.Select(v => Duration.FromSeconds(Opens(12.5, v))),
            OutsideRange.Refuse,
            TestInjector.Source
        );
        CoilHeating heating = Hot(hot, InjectorDriver.Saturated.WithoutBallast);
        double estimate = heating
            .EstimatedDeadTimeChange(table, ElectricPotential.FromVolts(14), Pressure.FromKilopascals(300))
            .Seconds;
        double actual = Opens(heating.Resistance.Ohms, 14) - Opens(12.5, 14);

        Assert.True(actual >= 0);
        // Straight lines between knots lie at most h2/8 times the second derivative above the law: below 1e-6 s here.
        Assert.True(estimate >= actual - 1e-6, FormattableString.Invariant($"{estimate} against {actual}"));

        static double Opens(double ohms, double volts) => -henry / ohms * Math.Log(1 - (opening * ohms / volts));
    }

    [Fact]
    public void FindingsFor_LowImpedanceOnPlainDriver_AreTwo()
    {
        var low = new CoilResistance(Ohms(2.4), Celsius(20));
        var findings = InjectorDriver.Saturated.WithoutBallast.FindingsFor(
            low,
            ElectricPotential.FromVolts(15),
            ElectricCurrent.FromAmperes(3),
            TestInjector.Source
        );

        Assert.Equal([Severity.Danger, Severity.Warning], findings.Select(f => f.Severity));
        Assert.Equal(("6.25 A", "3 A"), (findings[0].Value, findings[0].Limit));
        Assert.StartsWith("A low-impedance coil is switched", findings[1].What, StringComparison.Ordinal);
        Assert.Empty(
            Limited(2, 1)
                .FindingsFor(low, ElectricPotential.FromVolts(15), ElectricCurrent.FromAmperes(3), TestInjector.Source)
        );
    }

    [Fact]
    public void Driver_SaysWhatItIs()
    {
        Assert.Equal("saturated", InjectorDriver.Saturated.WithoutBallast.ToString());
        Assert.Equal("saturated with 6 ohm ballast", new InjectorDriver.Saturated(Ohms(6)).ToString());
        Assert.Equal("peak 4 A and hold 1 A", Limited(4, 1).ToString());
        Assert.Equal(1, Limited(4, 1).Hold.Amperes, 1e-15);
    }

    [Fact]
    public void Driver_HoldAbovePeak_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("hold", "1 A, 4 A", () => Limited(1, 4));

    [Fact]
    public void Coil_TooHot_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "temperature",
            "-50 °C, 200 °C, 300 °C",
            () => Coil.At(Celsius(300))
        );

    [Fact]
    public void TemperatureFor_AnotherCoil_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("now", "9.061", () => Coil.TemperatureFor(Ohms(2.4)));

    private static CoilHeating Hot(double celsius, InjectorDriver driver) =>
        new(Coil, Celsius(20), Celsius(celsius), driver);

    private static InjectorDriver.PeakAndHold Limited(double peak, double hold) =>
        new InjectorDriver.PeakAndHold(ElectricCurrent.FromAmperes(peak), ElectricCurrent.FromAmperes(hold));

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);
}
