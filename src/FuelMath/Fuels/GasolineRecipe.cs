using UnitsNet;

namespace FuelMath;

/// <summary>A gasoline from its density and Reid vapor pressure.</summary>
internal sealed class GasolineRecipe : FuelRecipe
{
    internal GasolineRecipe(Density at15Celsius, AbsolutePressure reidVaporPressure)
    {
        At15Celsius = at15Celsius;
        ReidVaporPressure = reidVaporPressure;
    }

    internal Density At15Celsius { get; }

    internal AbsolutePressure ReidVaporPressure { get; }
}
