using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>Workings of what people ask most, in their units. The data are invented.</summary>
public sealed class WorkingExamples
{
    private static readonly DataSource Invented = new("Workshop-class", "workings");

    private static Density Warm => Density.FromKilogramsPerCubicMeter(735);

    [Fact]
    public void FlowRatingCarried()
    {
        #region FlowRating
        FlowRating rating = Rating();

        Working working = rating.VolumeFlowWorkingAt(Pressure.FromBars(4), Warm).In("cm3/min"); // about 891 cm3/min

        string text = working.WithFigures(4).ToText(CultureInfo.InvariantCulture);
        #endregion

        // By hand: 800 sqrt(4/3 x 683.8/735) is 891.0; the density of the test fluid is known to 0.3 %.
        Assert.Equal(891.0, working.Conversion!.ToValue, 2.0);
        Assert.Contains("Q0 = 800 cm3/min", text, StringComparison.Ordinal);
        Assert.EndsWith("cm3/min\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void InjectorDelivery()
    {
        #region Injector
        var injector = new Injector(
            "primary",
            Rating(),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Duration.FromMilliseconds(2.4), Duration.FromMilliseconds(1.2), Duration.FromMilliseconds(0.8)],
                OutsideRange.Refuse,
                Invented
            ),
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(0.4),
            Duration.FromMilliseconds(0.9),
            ElectricResistance.FromOhms(12.5)
        );

        Working working = injector
            .DeliverWorking(
                pulseWidth: Duration.FromMilliseconds(5),
                period: Duration.FromMilliseconds(20),
                Pressure.FromBars(3),
                Warm,
                ElectricPotential.FromVolts(12)
            )
            .In("mg"); // 35.9 mg
        #endregion

        // 800 cm3/min from 683.8 to 735 kg/m3 are 9.453 g/s; 3.8 ms of it are 35.9 mg. The first density is known to 0.3 %.
        Assert.Equal(35.9, working.Conversion!.ToValue, 0.1);
    }

    [Fact]
    public void HoseLoss()
    {
        #region Hose
        var feed = new Hose(
            "feed",
            Length.FromMeters(3),
            Length.FromMillimeters(8),
            Length.FromMillimeters(0.0015),
            Ratio.FromDecimalFractions(1.5),
            Invented
        );

        Working working = feed.LossWorkingAt(
                VolumeFlow.FromLitersPerHour(200),
                Warm,
                DynamicViscosity.FromMillipascalSeconds(0.45)
            )
            .In("kPa"); // about 5.46 kPa
        #endregion

        // By hand: 1.105 m/s, Reynolds number 14 440, factor 0.0284 (chart): (0.0284 x 375 + 1.5) x 449 Pa.
        Assert.Equal(5.46, working.Conversion!.ToValue, 0.06);
    }

    [Fact]
    public void PumpAtAPoint()
    {
        #region Pump
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(13.5),
            [
                new(Pressure.FromBars(2), VolumeFlow.FromLitersPerHour(340), ElectricCurrent.FromAmperes(8)),
                new(Pressure.FromBars(4), VolumeFlow.FromLitersPerHour(290), ElectricCurrent.FromAmperes(10.5)),
                new(Pressure.FromBars(6), VolumeFlow.FromLitersPerHour(220), ElectricCurrent.FromAmperes(13.5)),
            ],
            Invented
        );

        Working rise = curve.RiseWorkingAt(VolumeFlow.FromLitersPerHour(250)).In("bar");
        Working efficiency = curve.EfficiencyWorkingAt(Pressure.FromBars(4)).In("%"); // 22.7 %
        #endregion

        Assert.InRange(rise.Conversion!.ToValue, 4, 6);

        // 4 bar x 290 L/h are 32.2 W of 141.75 W.
        Assert.Equal(22.7, efficiency.Conversion!.ToValue, 0.05);
    }

    [Fact]
    public void BlendAndPremix()
    {
        #region Blend
        Temperature twenty = Temperature.FromDegreesCelsius(20);

        Working ratio = FuelBlend.StoichiometricWorkingByVolume(
            twenty,
            [new(StandardFuels.Ethanol, Ratio.FromPercent(85)), new(StandardFuels.PumpGasoline, Ratio.FromPercent(15))],
            AirModel.StandardDry
        );
        Working oil = PremixRatio.FromParts(32).OilWorkingFor(Volume.FromLiters(5)).In("cm3"); // 156.25 cm3
        #endregion

        Assert.Equal(9.8, ratio.Value, 0.1);
        Assert.Equal(5000 / 32.0, oil.Conversion!.ToValue, 1e-9);
    }

    [Fact]
    public void WireDrop()
    {
        #region Wire
        var hot = new Conductor(WireSize.FromAwg(10), Length.FromFeet(10), Temperature.FromDegreesCelsius(75));
        var circuit = new Circuit("pump", [hot], [hot], ElectricResistance.FromMilliohms(10));

        Working drop = circuit.DropWorkingAt(ElectricCurrent.FromAmperes(20)); // 0.686 V
        #endregion

        // The code's table: 1.21 ohm per 1000 ft, 20 ft of it and 10 mohm.
        Assert.Equal(20 * ((1.21 * 20 / 1000) + 0.010), drop.Value, 0.005);
    }

    #region Rating
    private static FlowRating Rating() =>
        FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(800),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20),
            Invented
        );
    #endregion
}
