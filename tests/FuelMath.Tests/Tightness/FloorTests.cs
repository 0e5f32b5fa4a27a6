using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Where the pressure of a closed volume stops: at ambient, or at the vapor pressure above it.</summary>
public sealed class FloorTests
{
    [Theory]
    [InlineData(101.325)]
    [InlineData(30)]
    public void Floor_IsWhatTheVaporExceedsAmbientBy(double kilopascals)
    {
        Fuel fuel = StandardFuels.Gasoline(
            Density.FromKilogramsPerCubicMeter(745),
            new AbsolutePressure(Pressure.FromKilopascals(60))
        );
        Temperature warm = Temperature.FromDegreesCelsius(35);
        var volume = new ClosedVolume(
            fuel,
            warm,
            Volume.FromLiters(1),
            new ClosedVolume.ElasticWalls(default, default),
            Volume.Zero,
            new AbsolutePressure(Pressure.FromKilopascals(kilopascals))
        );
        double vapor = fuel.VaporPressureAt(warm).AboveVacuum.Kilopascals;

        // Near 37.8 degrees Celsius the vapor pressure is near its Reid value.
        Assert.InRange(vapor, 45, 62);
        Close.WithinOf(60, 1e-12, Math.Max(0, vapor - kilopascals), volume.Floor.AboveAmbient.Kilopascals);
    }
}
