using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>A line put under pressure and watched. The data are invented.</summary>
public sealed class TightnessExamples
{
    #region Given
    private static readonly ClosedVolume Line = new(
        StandardFuels.PumpGasoline,
        Temperature.FromDegreesCelsius(20),
        Volume.FromCubicCentimeters(450),
        new ClosedVolume.ElasticWalls(
            swelling: Compressibility.FromInversePascals(2e-9),
            expansion: CoefficientOfThermalExpansion.FromPerKelvin(0.0002)
        ),
        gas: Volume.FromCubicCentimeters(2),
        ambient: new AbsolutePressure(Pressure.FromKilopascals(100))
    );
    #endregion

    [Fact]
    public void Judge()
    {
        #region Judge
        var line = new ClosedVolume(
            StandardFuels.PumpGasoline,
            Temperature.FromDegreesCelsius(20),
            Volume.FromCubicCentimeters(450),
            new ClosedVolume.ElasticWalls(
                swelling: Compressibility.FromInversePascals(2e-9),
                expansion: CoefficientOfThermalExpansion.FromPerKelvin(0.0002)
            ),
            gas: Volume.FromCubicCentimeters(2),
            ambient: new AbsolutePressure(Pressure.FromKilopascals(100))
        );
        var test = new DecayTest(
            line,
            new DecayTest.Reading(
                Duration.FromMinutes(0),
                new GaugePressure(Pressure.FromBars(4)),
                Temperature.FromDegreesCelsius(20)
            ),
            new DecayTest.Reading(
                Duration.FromMinutes(10),
                new GaugePressure(Pressure.FromBars(3.6)),
                Temperature.FromDegreesCelsius(20.2)
            ),
            new DecayTest.Uncertainty(
                DecayTest.Uncertainty.DifferenceOfResolution(Pressure.FromBars(0.05)),
                temperature: TemperatureDelta.FromKelvins(0.1),
                time: Duration.FromSeconds(2),
                new ClosedVolume.Uncertainty(
                    fuelVolume: Ratio.FromPercent(5),
                    bulkModulus: Ratio.FromPercent(15),
                    swelling: Ratio.FromPercent(30),
                    fuelExpansion: Ratio.FromPercent(5),
                    wallExpansion: Ratio.FromPercent(50),
                    gas: Volume.FromCubicCentimeters(0.5)
                )
            )
        );

        VolumeFlow rate = test.Rate; // 19 mm³/min, half of it told by the thermometer alone
        VolumeFlow expanded = test.ExpandedUncertainty; // 14 mm³/min
        string worst = test.Contributions[0].Input; // a temperature
        VolumeFlow limit = VolumeFlow.FromCubicMillimetersPerSecond(50 / 60.0);
        DecayTest.Outcome verdict = test.Judge(limit);
        TemperatureDelta hides = test.WarmingThatHides(limit); // 1.1 K that nobody saw would hide a leak of the limit
        #endregion

        Assert.Equal(18, rate.CubicMillimetersPerSecond * 60, 2.0);
        Assert.Equal(14, expanded.CubicMillimetersPerSecond * 60, 2.0);
        Assert.StartsWith("temperature", worst);
        Assert.Equal(DecayTest.Outcome.Passes, verdict);
        Assert.Equal(1.1, hides.Kelvins, 0.05);
    }

    [Fact]
    public void Wait()
    {
        #region Wait
        DecayTest.Wait wait = DecayTest.Wait.ToSee(
            Line,
            start: new GaugePressure(Pressure.FromBars(4)),
            LeakPath.Constant(VolumeFlow.FromCubicMillimetersPerSecond(10 / 60.0)),
            resolutionDifference: Pressure.FromBars(0.05),
            steps: 3
        );
        Duration time = wait.Time; // 3.4 min
        TemperatureDelta hides = wait.HidingDrift; // 0.07 K of warming would hide it
        #endregion

        Assert.Equal(3.3, time.Minutes, 0.2);
        Assert.Equal(0.07, hides.Kelvins, 0.01);
    }
}
