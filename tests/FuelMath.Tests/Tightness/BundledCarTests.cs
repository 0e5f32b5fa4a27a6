using FuelMath.ShopTests;
using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>The bundled car on its blend: its leak rate and its hot fuel come out as labeled estimates.</summary>
public sealed class BundledCarTests
{
    private static readonly FuelSystem Car = SystemDocument.Read(TestFiles.System("time-trial-car"));

    /// <summary>
    /// Half a liter of E30 in rigid walls that falls by 0.1 bar in a minute leaks 5e-4 x 1e4 / (60 K). By compressibilities K lies
    /// between those of the gasoline (0.81, 0.74, 0.71 GPa at the three temperatures, 11 to 13 % either way) and of ethanol
    /// (0.888, 0.83, 0.80 GPa).
    /// </summary>
    [Theory]
    [InlineData(20, 0.81, 0.888)]
    [InlineData(30, 0.74, 0.83)]
    [InlineData(35, 0.71, 0.80)]
    [Trait("Source", "Schroeder-2014")]
    public void DecayTest_OnItsBlend_HasARate(double celsius, double least, double most)
    {
        Temperature warm = Temperature.FromDegreesCelsius(celsius);
        ClosedVolume volume = new(
            Car.Fuel,
            warm,
            Volume.FromLiters(0.5),
            new ClosedVolume.ElasticWalls(default, CoefficientOfThermalExpansion.FromPerKelvin(0)),
            default,
            AbsolutePressure.StandardAtmosphere
        );
        DecayTest.Uncertainty uncertainty = new(
            Pressure.FromBars(0.005),
            TemperatureDelta.FromKelvins(0),
            Duration.FromSeconds(1),
            new ClosedVolume.Uncertainty(
                Ratio.FromPercent(5),
                Car.Fuel.BulkModulus.ErrorAt(warm),
                Ratio.FromPercent(0),
                Ratio.FromPercent(0),
                Ratio.FromPercent(0),
                default
            )
        );
        DecayTest test = new(
            volume,
            new(Duration.Zero, new(Pressure.FromBars(3)), warm),
            new(Duration.FromMinutes(1), new(Pressure.FromBars(2.9)), warm),
            uncertainty
        );

        double modulus = 5e-4 * 1e4 / 60 / test.Rate.CubicMetersPerSecond / 1e9;
        Assert.InRange(modulus, least, most);
        Assert.NotEmpty(Car.Fuel.BulkModulus.Estimates);
    }

    /// <summary>Its hot idle, 55 degrees: the blend has about 1.2 bar there and boils in the vented tank, and that is said.</summary>
    [Fact]
    public void HotSoak_OnItsBlend_HasAMarginAtEachNode()
    {
        OperatingPoint point = OperatingListDocument
            .Read(TestFiles.Points("time-trial-car"))
            .Single(p => p.Name == "idle, hot");
        SystemState state = Car.Solve(point);

        Assert.All(
            HotSoak.Of(Car, state),
            node =>
            {
                Assert.NotNull(node.Margin);
                Assert.InRange(node.MarginError!.Value.Kelvins, 1, 6);
            }
        );
        Assert.Contains(state.Findings, f => f.Code == FuelMath.FindingCode.VaporMarginLow);
    }
}
