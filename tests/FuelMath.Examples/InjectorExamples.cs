using UnitsNet;

namespace FuelMath.Examples;

public sealed class InjectorExamples
{
    [Fact]
    public void PulseForAMass()
    {
        #region Injector
        var source = new DataSource("Workshop-class", "primary injector of the time-trial car");
        FlowRating rating = FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(980),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(21),
            source
        );
        DeadTimeTable deadTime = DeadTimeTable.FromVoltage(
            [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
            Pressure.FromBars(3),
            [Duration.FromMilliseconds(2.4), Duration.FromMilliseconds(1.2), Duration.FromMilliseconds(0.8)],
            OutsideRange.Refuse,
            source
        );
        var injector = new Injector(
            "primary",
            rating,
            deadTime,
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(0.4),
            Duration.FromMilliseconds(0.9),
            ElectricResistance.FromOhms(12.5)
        );

        Injector.PulseResult pulse = injector.WidthFor(
            Mass.FromMilligrams(40),
            Duration.FromMilliseconds(20),
            Pressure.FromBars(3),
            StandardFuels.PumpGasoline.DensityAt(Temperature.FromDegreesCelsius(40)),
            ElectricPotential.FromVolts(13.5)
        );
        Duration width = pulse.PulseWidth; // 4.5 ms, 1.05 ms of it dead time
        Ratio duty = pulse.DutyCycle;
        #endregion

        Assert.Equal(1.05, pulse.DeadTime.Milliseconds, 1e-9);
        Assert.Equal(40, pulse.StaticMassFlow.GramsPerSecond * pulse.EffectiveWidth.Milliseconds, 1e-9);
        Assert.Equal(width.Milliseconds / 20, duty.DecimalFractions, 1e-12);
    }
}
