using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class VaporMarginTests
{
    private static readonly AbsolutePressure Sea = AbsolutePressure.StandardAtmosphere;

    // Example 7.32: tank at 5 psi above the atmosphere, liquid 25 ft below the pump, 6 ft lost, water at 60 °F with 0.256
    // psi and 62.364 lb/ft³: 13.887 ft. The atmosphere there is 14.696 psi.
    [Fact]
    [Trait("Source", "TP-410")]
    public void NetPositiveSuctionHead_WaterLifted_IsTheWorkedExample()
    {
        Fuel water = LikeWater();
        double lost = 62.364 * 6 / 144;

        VaporMargin margin = VaporMargin.AtPumpInlet(
            water,
            Celsius.Of(15.56),
            Psi(14.696 + 5),
            Length.FromFeet(-25),
            Pressure.FromPoundsForcePerSquareInch(lost)
        );

        // Printed numbers have five digits.
        Close.Within(2e-4, 13.887, margin.NetPositiveSuctionHead.Feet);
        Assert.False(margin.Boils);
    }

    // Boiling points at one atmosphere, from memory: 78.3, 64.7, 98.4, 99.2 °C. Half a kelvin is 2 % of the pressure, by
    // which sources differ.
    [Theory]
    [InlineData("ethanol", 78.3)]
    [InlineData("methanol", 64.7)]
    [InlineData("n-heptane", 98.4)]
    [InlineData("iso-octane", 99.2)]
    [Trait("Source", "CRC-Handbook")]
    public void BoilingTemperature_AtOneAtmosphere_IsTheBoilingPoint(string name, double celsius) =>
        Assert.Equal(
            celsius,
            VaporMargin.At(Named(name), Celsius.Of(20), Sea).BoilingTemperature().DegreesCelsius,
            0.5
        );

    [Property]
    public void BoilingTemperature_ThenTheMarginThere_IsNone(Warmth any)
    {
        AbsolutePressure pressure = new(Pressure.FromKilopascals(20 + any.Degrees));
        Temperature boils = VaporMargin.At(StandardFuels.Ethanol, Celsius.Of(20), pressure).BoilingTemperature();

        Assert.Equal(
            0,
            VaporMargin.At(StandardFuels.Ethanol, boils, pressure).MarginAboveBoiling.Pascals,
            1e-7 * pressure.AboveVacuum.Pascals
        );
    }

    [Property]
    public void MarginAboveBoiling_Warmer_IsLess(Gasoline gasoline)
    {
        Fuel fuel = gasoline.ToFuel();

        Assert.True(
            VaporMargin.At(fuel, Celsius.Of(35), Sea).MarginAboveBoiling
                < VaporMargin.At(fuel, Celsius.Of(15), Sea).MarginAboveBoiling
        );
    }

    [Fact]
    public void At_Pressure_IsThePressureLessTheVaporPressure()
    {
        VaporMargin margin = VaporMargin.At(StandardFuels.PumpGasoline, Celsius.Of(30), Sea);

        Close.Within(
            1e-12,
            101_325 - StandardFuels.PumpGasoline.VaporPressureAt(Celsius.Of(30)).AboveVacuum.Pascals,
            margin.MarginAboveBoiling.Pascals
        );
        Assert.Equal(margin.VaporPressure, StandardFuels.PumpGasoline.VaporPressureAt(Celsius.Of(30)));
    }

    // Hot gasoline on a mountain: at 60 °C the vapor pressure of 60 kPa Reid is above 100 kPa.
    [Fact]
    public void Boils_HotGasolineOnAMountain_IsTrue() =>
        Assert.True(
            VaporMargin.At(StandardFuels.PumpGasoline, Celsius.Of(60), new(Pressure.FromKilopascals(80))).Boils
        );

    [Fact]
    public void BoilingTemperature_OutsideWhatIsKnown_SaysTheRange()
    {
        var error = Assert.Throws<NoSolutionException>(() =>
            VaporMargin
                .At(StandardFuels.PumpGasoline, Celsius.Of(20), new(Pressure.FromKilopascals(600)))
                .BoilingTemperature()
        );

        Words.Says("'gasoline'", error);
        Words.Says("600 kPa", error);
    }

    [Fact]
    public void At_ABlendWithMethanol_SaysWhyNot() =>
        Words.Says(
            "'M10'",
            Assert.Throws<UnknownPropertyException>(() => VaporMargin.At(TestFuels.MethanolBlend, Celsius.Of(20), Sea))
        );

    [Fact]
    public void AtPumpInlet_NegativeLoss_Refuses() =>
        Words.Says(
            "-1 kPa",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                VaporMargin.AtPumpInlet(
                    StandardFuels.PumpGasoline,
                    Celsius.Of(20),
                    Sea,
                    Length.FromMeters(0),
                    Pressure.FromKilopascals(-1)
                )
            )
        );

    [Fact]
    public void ToWorking_EndsInTheHead()
    {
        VaporMargin margin = VaporMargin.AtPumpInlet(
            StandardFuels.PumpGasoline,
            Celsius.Of(30),
            Sea,
            Length.FromMeters(-0.4),
            Pressure.FromKilopascals(5)
        );

        Assert.Equal(margin.NetPositiveSuctionHead.Meters, margin.ToWorking().Value);
        Assert.Contains("NPSH = dpv / ", margin.ToWorking().ToString(), StringComparison.Ordinal);
        Assert.Contains("[TP-410] example 7.32", margin.ToWorking().ToString(), StringComparison.Ordinal);
    }

    private static Fuel Named(string name) =>
        name switch
        {
            "ethanol" => StandardFuels.Ethanol,
            "methanol" => StandardFuels.Methanol,
            "n-heptane" => StandardFuels.NHeptane,
            _ => StandardFuels.IsoOctane,
        };

    /// <summary>A liquid with the density and vapor pressure of the example's water; composition does not matter here.</summary>
    private static Fuel LikeWater()
    {
        Temperature cold = Celsius.Of(15.55);
        Temperature warm = Celsius.Of(15.57);
        return new(
            "like water",
            StandardFuels.Ethanol.Composition,
            LiquidDensity.FromPoints(
                [cold, warm],
                [Density.FromPoundsPerCubicFoot(62.36401), Density.FromPoundsPerCubicFoot(62.36399)],
                TestFuels.Invented
            ),
            LiquidViscosity.Unknown("not needed here."),
            LiquidVaporPressure.FromPoints([cold, warm], [Psi(0.255999), Psi(0.256001)], TestFuels.Invented),
            null,
            TestFuels.Invented,
            [],
            []
        );
    }

    private static AbsolutePressure Psi(double value) => new(Pressure.FromPoundsForcePerSquareInch(value));
}
