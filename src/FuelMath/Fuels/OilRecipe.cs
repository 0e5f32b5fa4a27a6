using UnitsNet;

namespace FuelMath;

/// <summary>An oil for premix from its data sheet.</summary>
internal sealed class OilRecipe : FuelRecipe
{
    internal OilRecipe(
        Density at15Celsius,
        KinematicViscosity at40Celsius,
        KinematicViscosity at100Celsius,
        DataSource source
    )
    {
        At15Celsius = at15Celsius;
        At40Celsius = at40Celsius;
        At100Celsius = at100Celsius;
        Source = source;
    }

    internal Density At15Celsius { get; }

    internal KinematicViscosity At40Celsius { get; }

    internal KinematicViscosity At100Celsius { get; }

    internal DataSource Source { get; }
}
