using UnitsNet;

namespace FuelMath.Tests.Fuels;

/// <summary>Temperatures as the tables print them.</summary>
internal static class Celsius
{
    internal static Temperature Of(double degrees) => Temperature.FromDegreesCelsius(degrees);
}
