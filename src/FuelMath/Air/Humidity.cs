using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The humidity of ambient air, as weather reports give it: relative, with its temperature.</summary>
/// <remarks>
/// <para>
/// Water vapor displaces dry air, which alone burns the fuel. Its volume fraction does not change when the air is
/// compressed or heated on its way to the manifold; if the charge is so cold or so compressed that it is saturated, the
/// excess condenses to droplets of negligible volume. Source: [Definition] Dalton's law of partial pressures;
/// [CIPM-2007] vapor pressure of water.
/// </para>
/// </remarks>
/// <seealso href="../guide/air.html">Air</seealso>
public sealed class Humidity
{
    /// <summary>Highest temperature of the formula for the vapor pressure of water, K.</summary>
    private static readonly double Coldest = SiUnits.KelvinsFromCelsius(AirState.LowestHumidCelsius);
    private static readonly double Highest = SiUnits.KelvinsFromCelsius(100);

    private readonly double water;

    /// <summary>Creates a humidity.</summary>
    /// <param name="relative">Relative humidity, from 0 % to 100 %.</param>
    /// <param name="airTemperature">Temperature of the ambient air at the reading, from 0 °C to 60 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Humidity(Ratio relative, Temperature airTemperature)
    {
        double share = Guard.InRange(relative, relative.InSi(), 0, 1, SiUnits.Ratio);
        double kelvins = Guard.InRange(
            airTemperature,
            airTemperature.InSi(),
            Coldest,
            SiUnits.KelvinsFromCelsius(AirState.HighestHumidCelsius),
            SiUnits.Temperature
        );
        water = share * Saturation(kelvins);
        (Relative, AirTemperature) = (relative, airTemperature);
    }

    /// <summary>Relative humidity: partial pressure of the water over that at saturation.</summary>
    public Ratio Relative { get; }

    /// <summary>Temperature of the ambient air at the reading.</summary>
    public Temperature AirTemperature { get; }

    /// <summary>Partial pressure of the water in the ambient air.</summary>
    public AbsolutePressure WaterPressure => new(water);

    /// <summary>The volume fraction of water in the ambient air.</summary>
    /// <param name="ambient">Ambient absolute pressure; above that of the water.</param>
    /// <returns>The fraction, from 0 to less than 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not above that of the water.</exception>
    public Ratio ShareOf(AbsolutePressure ambient) => SiUnits.Ratio(ShareSi(ambient));

    /// <summary>The partial pressure of water vapor in the charge.</summary>
    /// <param name="ambient">Ambient absolute pressure; above that of the water.</param>
    /// <param name="manifold">Manifold absolute pressure; greater than zero.</param>
    /// <param name="charge">Temperature of the charge; 0 °C or more.</param>
    /// <returns>The absolute pressure of the vapor, without what condensed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="OutsideTableException">
    /// Whether the water condenses is not known: the charge is above 100 °C and the vapor above 1 bar.
    /// </exception>
    public AbsolutePressure VaporInCharge(AbsolutePressure ambient, AbsolutePressure manifold, Temperature charge)
    {
        double kelvins = CheckCharge(charge);
        double vapor = ShareSi(ambient) * Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold));
        double most = Saturation(Math.Min(kelvins, Highest));
        return kelvins > Highest && vapor > most
            ? throw new OutsideTableException(
                "Vapor pressure of water",
                "vapor in the charge (kPa)",
                vapor / 1000,
                0,
                most / 1000
            )
            : new AbsolutePressure(Math.Min(vapor, most));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Relative} at {AirTemperature}");

    /// <summary>Refuses an ambient pressure not above the partial pressure of the water.</summary>
    internal double ShareSi(
        AbsolutePressure ambient,
        [CallerArgumentExpression(nameof(ambient))] string paramName = ""
    ) =>
        water < ambient.Si
            ? water / ambient.Si
            : throw Guard.Outside(
                ambient,
                RefusalCode.OutOfRange,
                $"Must be above that of the water in the air, {WaterPressure:above}; it was {ambient:value}.",
                paramName
            );

    /// <summary>Refuses a charge in which water freezes.</summary>
    internal static double CheckCharge(
        Temperature charge,
        [CallerArgumentExpression(nameof(charge))] string paramName = ""
    ) =>
        charge.InSi() >= Coldest * (1 - Guard.EdgeTolerance) && double.IsFinite(charge.InSi())
            ? Math.Max(charge.InSi(), Coldest)
            : throw Guard.OutOfRange(
                charge,
                $"{SiUnits.Temperature(Coldest):least} or more where the air is humid",
                paramName
            );

    private static double Saturation(double kelvins) => AtmosphereModel.WaterVaporPressure(new Real(kelvins)).Value;
}
