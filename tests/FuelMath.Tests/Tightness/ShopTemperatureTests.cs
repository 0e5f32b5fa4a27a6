using FuelMath.ShopTests;
using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Leak tests of gasoline and of the bundled car's E30 from a cold shop to a hot one.</summary>
public sealed class ShopTemperatureTests
{
    private const double Liters = 0.5;
    private const double Minutes = 10;
    private const double WallExpansion = 5e-5;
    private const double Swelling = 5e-10;

    /// <summary>
    /// By hand for 745 kg/m3: 346.4228/745^2 + 0.4388/745 = 1.2132e-3 at 15 degrees, times 1 + 1.6 x 1.2132e-3 for each degree
    /// more. Ethanol by its equation of state, from densities 806.41, 793.69, 789.42, 785.13 and 772.09 at 0, 15, 20, 25 and 40
    /// degrees: 1.065e-3 at 7.5, 1.084e-3 at 20, 1.117e-3 at 32.5. Volumes add up: 0.7 and 0.3 of them.
    /// </summary>
    [Theory]
    [InlineData(false, 5, 1.190e-3)]
    [InlineData(false, 15, 1.213e-3)]
    [InlineData(false, 25, 1.237e-3)]
    [InlineData(false, 40, 1.272e-3)]
    [InlineData(true, 7.5, 1.158e-3)]
    [InlineData(true, 20, 1.183e-3)]
    [InlineData(true, 32.5, 1.213e-3)]
    [Trait("Source", "ASTM-D1250")]
    [Trait("Source", "Schroeder-2014")]
    public void FuelExpansion_FromColdToHot_IsThatOfTheDensityTables(bool blend, double celsius, double perKelvin) =>
        Close.Within(0.01, perKelvin, At(Fuel(blend), celsius).FuelExpansion.PerKelvin);

    /// <summary>
    /// A line that leaks 30 mm3 a minute for ten minutes and warms by 0.3 K that is measured. What it should read is worked out
    /// with the expansion by hand above, straight between its points; the test gives the leak back within 2 %, and its
    /// uncertainty holds it.
    /// </summary>
    [Theory]
    [MemberData(nameof(Temperatures))]
    public void DecayTest_FromColdToHot_GivesTheLeakBack(bool blend, double celsius)
    {
        const double leaked = 0.3e-6;
        const double warming = 0.3;
        ClosedVolume volume = At(Fuel(blend), celsius);
        double modulus = volume.Fuel.BulkModulus.BulkModulusAt(Temperature.FromDegreesCelsius(celsius)).Pascals;
        double expands = blend
            ? 1.183e-3 + ((celsius - 20) * 2.2e-6)
            : 1.2132e-3 * (1 + (1.6 * 1.2132e-3 * (celsius - 15)));
        double fall = ((leaked / (Liters * 1e-3)) - ((expands - WallExpansion) * warming)) / ((1 / modulus) + Swelling);
        DecayTest test = new(
            volume,
            ClosedLine.Reading(0, new GaugePressure(Pressure.FromBars(6)), celsius),
            ClosedLine.Reading(
                Minutes,
                new GaugePressure(Pressure.FromBars(6) - Pressure.FromPascals(fall)),
                celsius + warming
            ),
            new DecayTest.Uncertainty(
                Pressure.FromKilopascals(1),
                TemperatureDelta.FromKelvins(0.02),
                Duration.FromSeconds(1),
                new ClosedVolume.Uncertainty(
                    Ratio.FromPercent(5),
                    volume.Fuel.BulkModulus.ErrorAt(Temperature.FromDegreesCelsius(celsius)),
                    Ratio.FromPercent(20),
                    Ratio.FromPercent(5),
                    Ratio.FromPercent(50),
                    default
                )
            )
        );

        double rate = test.Rate.CubicMillimetersPerSecond * 60;
        Close.Within(0.02, 30, rate);
        Assert.InRange(
            30,
            rate - (test.ExpandedUncertainty.CubicMillimetersPerSecond * 60),
            rate + (test.ExpandedUncertainty.CubicMillimetersPerSecond * 60)
        );

        // By hand: 5 % of the fuel's and half of the walls', times 0.5 L and 0.3 K, over 600 s.
        Close.Within(
            0.01,
            Liters * 1e6 * warming * Math.Sqrt(Math.Pow(0.05 * expands, 2) + Math.Pow(0.5 * WallExpansion, 2)) / 600,
            test.Contributions.Single(c =>
                c.Input == "expansion of fuel and walls"
            ).Uncertainty.CubicMillimetersPerSecond
        );
    }

    public static TheoryData<bool, double> Temperatures
    {
        get
        {
            var all = new TheoryData<bool, double>();
            foreach (bool blend in new[] { false, true })
            {
                for (int celsius = 5; celsius <= 40; celsius += 5)
                {
                    all.Add(blend, celsius);
                }
            }

            return all;
        }
    }

    private static Fuel Fuel(bool blend) =>
        blend ? SystemDocument.Read(TestFiles.System("time-trial-car")).Fuel : StandardFuels.PumpGasoline;

    private static ClosedVolume At(Fuel fuel, double celsius) =>
        new(
            fuel,
            Temperature.FromDegreesCelsius(celsius),
            Volume.FromLiters(Liters),
            new ClosedVolume.ElasticWalls(
                Compressibility.FromInversePascals(Swelling),
                CoefficientOfThermalExpansion.FromPerKelvin(WallExpansion)
            ),
            default,
            AbsolutePressure.StandardAtmosphere
        );
}
