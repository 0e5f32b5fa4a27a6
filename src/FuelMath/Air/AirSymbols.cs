using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Symbols of the inputs of air workings.</summary>
internal static class AirSymbols
{
    internal static Symbol Pressure { get; } = new("p", "Pa", "absolute pressure");

    internal static Symbol WaterPressure { get; } = new("pw", "Pa", "partial pressure of water");

    internal static Symbol Altitude { get; } = new("H", "m", "geopotential altitude");
}
