using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Fuels mixed from others: by volume, by mass, and premix.</summary>
internal static class BlendShapes
{
    private const int MostParts = 20;

    /// <summary>A part is a fuel like any other, blends included.</summary>
    private static readonly DeferredShape<Fuel> AnyFuel = new("a fuel by name or in full", () => FuelShape.Part);

    private static readonly ValueProperty<FuelPart, Fuel> PartFuel = new("fuel", "The fuel.", AnyFuel, p => p.Fuel);

    private static readonly ValueProperty<FuelPart, Ratio> Fraction = new(
        "fraction",
        "Its share.",
        QuantityShapes.Ratio,
        p => p.Fraction
    );

    private static readonly ListShape<FuelPart> PartList = new(
        new ObjectShape<FuelPart>(
            "blend-part",
            "A fuel and its share in a blend.",
            [Fraction, PartFuel],
            f => new(f.Of(PartFuel), f.Of(Fraction))
        ),
        1,
        MostParts
    );

    private static readonly ValueProperty<Fuel, string> Name = new("name", "Its name.", TextShape.Name, f => f.Name);

    private static readonly ValueProperty<Fuel, Temperature> VolumesMixedAt = new(
        "mixedAt",
        "Temperature at which the volumes were measured.",
        QuantityShapes.Temperature,
        f => ((VolumeBlendRecipe)f.Recipe!).MixedAt
    );

    private static readonly ValueProperty<Fuel, ImmutableArray<FuelPart>> VolumeParts = new(
        "parts",
        "The fuels with their shares of the volume before mixing, which add up to 100 %.",
        PartList,
        f => ((VolumeBlendRecipe)f.Recipe!).Parts
    );

    private static readonly ValueProperty<Fuel, ImmutableArray<FuelPart>> MassParts = new(
        "parts",
        "The fuels with their shares of the mass, which add up to 100 %.",
        PartList,
        f => ((MassBlendRecipe)f.Recipe!).Parts
    );

    private static readonly ValueProperty<Fuel, Fuel> Fuel = new("fuel", "The fuel.", AnyFuel, f => Mix(f).Fuel);

    private static readonly ValueProperty<Fuel, Fuel> Oil = new("oil", "The oil.", AnyFuel, f => Mix(f).Oil);

    private static readonly ValueProperty<Fuel, Ratio> OilPerFuel = new(
        "oilPerFuel",
        "Volume of oil for each volume of fuel: 2 % is 50:1.",
        QuantityShapes.Ratio,
        f => Mix(f).Ratio.OilPerFuel,
        _ => true,
        default
    );

    private static readonly ValueProperty<Fuel, PremixRatio> FuelToOil = new(
        "ratio",
        "Parts of fuel to one of oil, as on the bottle; written as oilPerFuel.",
        PremixRatioShape.Instance,
        f => Mix(f).Ratio,
        _ => false,
        default
    );

    private static readonly ValueProperty<Fuel, Temperature> OilMixedAt = new(
        "mixedAt",
        "Temperature at which the volumes were measured.",
        QuantityShapes.Temperature,
        f => Mix(f).MixedAt
    );

    internal static UnionCase<Fuel> ByVolume { get; } =
        UnionCase<Fuel>.Of(
            new ObjectShape<Fuel>(
                "blend-by-volume",
                "Fuels mixed by volume.",
                [
                    new WordProperty<Fuel>("kind", "That it is mixed by volume.", "blend by volume"),
                    Name,
                    VolumesMixedAt,
                    VolumeParts,
                ],
                f => FuelBlend.ByVolume(f.Of(Name), f.Of(VolumesMixedAt), f.Of(VolumeParts))
            ),
            f => f.Recipe is VolumeBlendRecipe
        );

    internal static UnionCase<Fuel> ByMass { get; } =
        UnionCase<Fuel>.Of(
            new ObjectShape<Fuel>(
                "blend-by-mass",
                "Fuels mixed by mass.",
                [new WordProperty<Fuel>("kind", "That it is mixed by mass.", "blend by mass"), Name, MassParts],
                f => FuelBlend.ByMass(f.Of(Name), f.Of(MassParts))
            ),
            f => f.Recipe is MassBlendRecipe
        );

    internal static UnionCase<Fuel> Premix { get; } =
        UnionCase<Fuel>.Of(
            new ObjectShape<Fuel>(
                "premix",
                "Fuel with oil in it, for a two-stroke.",
                [
                    new WordProperty<Fuel>("kind", "That it is premix.", "premix"),
                    Name,
                    OilPerFuel,
                    FuelToOil,
                    OilMixedAt,
                    Fuel,
                    Oil,
                ],
                f =>
                    (f.Has(FuelToOil) ? f.Of(FuelToOil) : PremixRatio.FromOilPerFuel(f.Of(OilPerFuel))).ToFuel(
                        f.Of(Name),
                        f.Of(Fuel),
                        f.Of(Oil),
                        f.Of(OilMixedAt)
                    )
            )
            {
                ExactlyOne = [OilPerFuel.Name, FuelToOil.Name],
            },
            f => f.Recipe is PremixRecipe
        );

    private static PremixRecipe Mix(Fuel fuel) => (PremixRecipe)fuel.Recipe!;
}
