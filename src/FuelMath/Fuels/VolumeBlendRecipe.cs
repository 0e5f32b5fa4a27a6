using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A blend by volume.</summary>
internal sealed class VolumeBlendRecipe : FuelRecipe
{
    internal VolumeBlendRecipe(Temperature mixedAt, IEnumerable<FuelBlend.Part> parts)
    {
        MixedAt = mixedAt;
        Parts = [.. parts];
    }

    internal Temperature MixedAt { get; }

    internal ImmutableArray<FuelBlend.Part> Parts { get; }
}
