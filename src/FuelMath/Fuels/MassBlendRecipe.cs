using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A blend by mass.</summary>
internal sealed class MassBlendRecipe : FuelRecipe
{
    internal MassBlendRecipe(IEnumerable<FuelBlend.Part> parts)
    {
        Parts = [.. parts];
    }

    internal ImmutableArray<FuelBlend.Part> Parts { get; }
}
