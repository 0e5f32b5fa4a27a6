using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A blend by mass.</summary>
internal sealed class MassBlendRecipe : FuelRecipe
{
    internal MassBlendRecipe(IEnumerable<FuelPart> parts)
    {
        Parts = [.. parts];
    }

    internal ImmutableArray<FuelPart> Parts { get; }
}
