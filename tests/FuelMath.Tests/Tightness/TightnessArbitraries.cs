using FsCheck;
using FsCheck.Fluent;
using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Generators of closed lines.</summary>
public static class TightnessArbitraries
{
    public static Arbitrary<ClosedLine> Lines() =>
        (
            from liters in Gen.Choose(1, 30)
            from swelling in Gen.Choose(0, 40)
            from gas in Gen.Choose(0, 50)
            from pressure in Gen.Choose(20, 60)
            from leak in Gen.Choose(1, 1000)
            from walls in Gen.Choose(0, 6)
            select new ClosedLine(liters / 10.0, swelling, gas / 10.0, pressure / 10.0, leak)
            {
                WallExpansion = walls * 1e-4,
            }
        ).ToArbitrary();
}

/// <summary>
/// Fuel in L, swelling in 1e-10/Pa, gas in cm3 at ambient pressure, start in bar, leak in mm3/min. Pump gasoline at 20 °C.
/// </summary>
public sealed record ClosedLine(double Liters, double Swelling, double Gas, double Bars, double Leak)
{
    /// <summary>Of the walls, 1/K.</summary>
    public double WallExpansion { get; init; }

    public static readonly AbsolutePressure Ambient = new(Pressure.FromKilopascals(100));

    /// <summary>Pump gasoline whose vapor pressure and bulk modulus are known when it is hot, too; the figures are invented.</summary>
    public static readonly Fuel Hot = StandardFuels
        .PumpGasoline.WithVaporPressure(
            "hot gasoline",
            LiquidVaporPressure.FromPoints(
                [.. new[] { -10.0, 20, 50, 80 }.Select(c => Temperature.FromDegreesCelsius(c))],
                [.. new[] { 12.0, 40, 105, 230 }.Select(p => new AbsolutePressure(Pressure.FromKilopascals(p)))],
                new DataSource("Workshop-class", "test")
            )
        )
        .WithBulkModulus(
            "hot gasoline",
            LiquidBulkModulus.FromPoints(
                [Temperature.FromDegreesCelsius(-10), Temperature.FromDegreesCelsius(80)],
                [Pressure.FromGigapascals(1.5), Pressure.FromGigapascals(0.8)],
                new DataSource("Workshop-class", "test")
            )
        );

    public GaugePressure Start => new(Pressure.FromBars(Bars));

    public VolumeFlow LeakRate => VolumeFlow.FromCubicMillimetersPerSecond(Leak / 60);

    public ClosedVolume Volume => At(20);

    public ClosedVolume At(double celsius) =>
        new(
            Hot,
            Temperature.FromDegreesCelsius(celsius),
            UnitsNet.Volume.FromLiters(Liters),
            new ClosedVolume.ElasticWalls(
                Compressibility.FromInversePascals(Swelling * 1e-10),
                CoefficientOfThermalExpansion.FromPerKelvin(WallExpansion)
            ),
            UnitsNet.Volume.FromCubicCentimeters(Gas),
            Ambient
        );

    public static DecayTest.Reading Reading(double minutes, GaugePressure pressure, double celsius = 20) =>
        new(Duration.FromMinutes(minutes), pressure, Temperature.FromDegreesCelsius(celsius));
}
