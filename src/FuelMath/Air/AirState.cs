using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Air at a pressure, a temperature and a humidity.</summary>
/// <remarks>
/// Only the dry air in it burns the fuel: saturated with water at sea level it has 2.3 % less dry air at 20 °C, 4.2 %
/// at 30 °C, 5.6 % at 35 °C and 7.3 % at 40 °C. Treated as an ideal gas, accurate within 0.1 %. Source: [CIPM-2007]
/// equation 1.
/// </remarks>
/// <seealso href="../guide/air.html">Air</seealso>
public sealed class AirState
{
    /// <summary>The range in which the vapor pressure of water is known here, in °C.</summary>
    internal const double LowestHumidCelsius = 0;

    internal const double HighestHumidCelsius = 60;

    private readonly double kelvins;
    private readonly double water;

    /// <summary>Creates a state of moist air.</summary>
    /// <param name="pressure">Absolute pressure; greater than zero.</param>
    /// <param name="temperature">From 0 °C to 60 °C where there is humidity; else from -90 °C to 200 °C.</param>
    /// <param name="relativeHumidity">From 0 % to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, or the pressure is not above the partial pressure of the water.
    /// </exception>
    public AirState(AbsolutePressure pressure, Temperature temperature, Ratio relativeHumidity)
    {
        if (!(pressure.Si > 0))
        {
            throw Guard.Outside(
                pressure,
                RefusalCode.OutOfRange,
                $"Must be above vacuum, {new AbsolutePressure(0):above}; it was {pressure:value}."
            );
        }

        double humidity = Guard.InRange(relativeHumidity, relativeHumidity.InSi(), 0, 1, SiUnits.Ratio);
        kelvins = Guard.InRange(
            temperature,
            temperature.InSi(),
            SiUnits.KelvinsFromCelsius(humidity > 0 ? LowestHumidCelsius : -90),
            SiUnits.KelvinsFromCelsius(humidity > 0 ? HighestHumidCelsius : 200),
            SiUnits.Temperature
        );
        water = humidity > 0 ? humidity * AtmosphereModel.WaterVaporPressure(new Real(kelvins)).Value : 0;
        if (!(water < pressure.Si))
        {
            throw Guard.Outside(
                pressure,
                RefusalCode.OutOfRange,
                $"Must be above that of the water in the air, {new AbsolutePressure(water):above}; it was {pressure:value}."
            );
        }

        Pressure = pressure;
        RelativeHumidity = relativeHumidity;
    }

    /// <summary>Absolute pressure.</summary>
    public AbsolutePressure Pressure { get; }

    /// <summary>Temperature.</summary>
    public Temperature Temperature => SiUnits.Temperature(kelvins);

    /// <summary>Partial pressure of water over that at saturation.</summary>
    public Ratio RelativeHumidity { get; }

    /// <summary>Partial pressure of water in it.</summary>
    public AbsolutePressure WaterPressure => new(water);

    /// <summary>Density, water included.</summary>
    public Density Density =>
        SiUnits.Density(
            AtmosphereModel.MoistAirDensity(new Real(Pressure.Si), new Real(kelvins), new Real(water)).Value
        );

    /// <summary>Density of the dry air, which burns the fuel.</summary>
    public Density DryAirDensity => SiUnits.Density(DrySi);

    private double DrySi =>
        AtmosphereModel.DryAirDensity(new Real(Pressure.Si), new Real(kelvins), new Real(water)).Value;

    /// <summary>Air without water.</summary>
    /// <param name="pressure">Absolute pressure; greater than zero.</param>
    /// <param name="temperature">From -90 °C to 200 °C.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, or the pressure is not above the partial pressure of the water.
    /// </exception>
    public static AirState FromDryAir(AbsolutePressure pressure, Temperature temperature) =>
        new(pressure, temperature, SiUnits.Ratio(0));

    /// <summary>
    /// Fuel that an engine needs in this air over that in another, for the same intake volume and lambda: the ratio of
    /// dry-air densities.
    /// </summary>
    /// <param name="reference">The other air.</param>
    /// <returns>The ratio of fuel masses.</returns>
    /// <remarks>
    /// For a naturally aspirated engine. One that is boosted to an absolute pressure is affected by temperature and
    /// humidity, not by altitude.
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="reference"/> is null.</exception>
    public Ratio FuelRatioTo(AirState reference)
    {
        ArgumentNullException.ThrowIfNull(reference);
        return SiUnits.Ratio(DrySi / reference.DrySi);
    }

    /// <summary>The working of the density: formula, inserted values, result, source.</summary>
    /// <returns>The working.</returns>
    public Working DensityWorking() => Read(AtmosphereModel.MoistAirDensity);

    /// <summary>The working of the mass of dry air in a volume: formula, inserted values, result, source.</summary>
    /// <returns>The working.</returns>
    public Working DryAirWorking() => Read(AtmosphereModel.DryAirDensity);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Pressure}, {Temperature}, {RelativeHumidity} humid");

    private Working Read(Func<Traced, Traced, Traced, Traced> formula) =>
        formula(
                Traced.Input(AirSymbols.Pressure, Pressure.Si),
                Traced.Input(Symbols.AbsoluteTemperature, kelvins),
                Traced.Input(AirSymbols.WaterPressure, water)
            )
            .ToWorking();
}
