using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>A leak test from what a person has.</summary>
public sealed class EverydayDecayTestTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    /// <summary>
    /// Worked independently: liquid V (1/K + s) dp, and 1 % of gas at ambient pressure that goes from p1 to p2 by Boyle's law.
    /// </summary>
    [Fact]
    public void Rate_OneTemperature_IsThatOfLiquidWallsAndGas()
    {
        const double Volume = 450e-6;
        const double Ambient = 101_325;
        double modulus = StandardFuels.PumpGasoline.BulkModulus.Law.At(Twenty);
        double released =
            (Volume * ((1 / modulus) + 2e-9) * 0.4e5)
            + (0.01 * Volume * Ambient * ((1 / (3.6e5 + Ambient)) - (1 / (4e5 + Ambient))));

        DecayTest test = Bled(4, 3.6, 20).Test;

        Assert.Equal(released / 600, test.Rate.CubicMetersPerSecond, released * 1e-6);
    }

    /// <summary>Gas at ambient pressure yields most here: 1 cm³ of it at 5 bar absolute as much as more than a liter of fuel.</summary>
    [Fact]
    public void Contributions_ALineThatOnlyWasBled_AreLedByTheGas()
    {
        EverydayDecayTest test = Bled(4, 2, 20);

        Assert.Equal("trapped gas", test.Test.Contributions[0].Input);
        Assert.NotEmpty(test.Estimates);
    }

    /// <summary>By hand: 3 m of 8 mm hold pi/4 x 0.64 cm² x 300 cm = 150.8 cm³.</summary>
    [Fact]
    public void VolumeOf_LengthAndBore_IsACylinder() =>
        Assert.Equal(
            150.8,
            EverydayDecayTest.VolumeOf(Length.FromMeters(3), Length.FromMillimeters(8)).CubicCentimeters,
            0.05
        );

    [Fact]
    public void New_NoTime_IsRefused() =>
        Assert.Throws<ArgumentException>(() =>
            _ = new EverydayDecayTest(
                StandardFuels.PumpGasoline,
                Volume.FromCubicCentimeters(450),
                new DecayTest.Reading(Duration.Zero, Bar(4), Twenty),
                new DecayTest.Reading(Duration.Zero, Bar(3), Twenty),
                Pressure.FromBars(0.05)
            )
        );

    [Fact]
    public void New_NoVolume_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "fuelVolume",
            "0 cm³",
            () =>
                _ = new EverydayDecayTest(
                    StandardFuels.PumpGasoline,
                    Volume.FromCubicCentimeters(0),
                    new DecayTest.Reading(Duration.Zero, Bar(4), Twenty),
                    new DecayTest.Reading(Duration.FromMinutes(10), Bar(3), Twenty),
                    Pressure.FromBars(0.05)
                )
        );

    private static EverydayDecayTest Bled(double before, double after, double celsius) =>
        new(
            StandardFuels.PumpGasoline,
            Volume.FromCubicCentimeters(450),
            new DecayTest.Reading(Duration.Zero, Bar(before), Twenty),
            new DecayTest.Reading(Duration.FromMinutes(10), Bar(after), Temperature.FromDegreesCelsius(celsius)),
            Pressure.FromBars(0.05)
        );

    private static GaugePressure Bar(double value) => new(Pressure.FromBars(value));
}
