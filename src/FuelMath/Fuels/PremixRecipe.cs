using UnitsNet;

namespace FuelMath;

/// <summary>Fuel with oil in it.</summary>
internal sealed class PremixRecipe : FuelRecipe
{
    internal PremixRecipe(PremixRatio ratio, Fuel fuel, Fuel oil, Temperature mixedAt)
    {
        Ratio = ratio;
        Fuel = fuel;
        Oil = oil;
        MixedAt = mixedAt;
    }

    internal PremixRatio Ratio { get; }

    internal Fuel Fuel { get; }

    internal Fuel Oil { get; }

    internal Temperature MixedAt { get; }
}
