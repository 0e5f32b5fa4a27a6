using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The standard atmosphere up to 11 km: dry air at rest, 15 °C at sea level. Source: [ISO-2533] table 4.</summary>
/// <remarks>
/// The standard uses geopotential altitude, other tables the height above sea level; at 5 km the two differ by 4 m, or
/// 0.05 % of the pressure. Weather makes a larger difference: measure pressure and temperature where you can.
/// </remarks>
/// <seealso href="../guide/air.html">Air</seealso>
public static class StandardAtmosphere
{
    internal const double Lowest = -2000;
    internal const double Highest = 11_000;

    /// <summary>The air at sea level.</summary>
    public static AirState SeaLevel { get; } = At(0);

    /// <summary>The air at a geopotential altitude.</summary>
    /// <param name="altitude">From -2 km to 11 km.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside the range.</exception>
    public static AirState AtGeopotentialAltitude(Length altitude) => At(Inside(altitude));

    /// <summary>The air at a height above sea level.</summary>
    /// <param name="height">From -2 km to 11 km.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside the range.</exception>
    public static AirState AtHeight(Length height) =>
        At(AtmosphereModel.GeopotentialAltitude(new Real(Inside(height))).Value);

    /// <summary>
    /// The working of the pressure at a geopotential altitude: formula, inserted values, result, source.
    /// </summary>
    /// <param name="altitude">From -2 km to 11 km.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside the range.</exception>
    public static Working PressureWorking(Length altitude) =>
        AtmosphereModel.Pressure(Traced.Input(AirSymbols.Altitude, Inside(altitude))).ToWorking();

    private static AirState At(double meters) =>
        AirState.FromDryAir(
            new AbsolutePressure(AtmosphereModel.Pressure(new Real(meters)).Value),
            SiUnits.Temperature(AtmosphereModel.Temperature(new Real(meters)).Value)
        );

    private static double Inside(Length value, [CallerArgumentExpression(nameof(value))] string paramName = "") =>
        Guard.InRange(value, value.InSi(), Lowest, Highest, SiUnits.Length, paramName);
}
