using UnitsNet;

namespace FuelMath;

/// <summary>What is sold as E85: a gasoline with a measured content of ethanol, and the class where it is known.</summary>
internal sealed class E85Recipe : FuelRecipe
{
    internal E85Recipe(Fuel gasoline, Ratio ethanol, E85Class? ethanolClass, AbsolutePressure? asMixed) =>
        (Gasoline, Ethanol, Class, AsMixed) = (gasoline, ethanol, ethanolClass, asMixed);

    internal Fuel Gasoline { get; }

    internal Ratio Ethanol { get; }

    internal E85Class? Class { get; }

    /// <summary>The vapor pressure of what was mixed, at the temperature of the classes; null where it is not known.</summary>
    internal AbsolutePressure? AsMixed { get; }
}
