namespace FuelMath;

/// <summary>Fuels mixed from others: by volume, by mass, and premix.</summary>
internal static class BlendShapes
{
    /// <summary>A component is any fuel, also a blend.</summary>
    private static readonly DeferredShape<Fuel> AnyFuel = new("a fuel by name or in full", () => FuelShape.Part);

    private static readonly ListShape<FuelBlend.Part> Parts = new ObjectShape<FuelBlend.Part>(o =>
    {
        o.Is("blend-part", "A fuel and its share in a blend.");
        var fraction = o.Required("fraction", QuantityShapes.Ratio.NotNegative, p => p.Fraction).Says("Its share.");
        var fuel = o.Required("fuel", AnyFuel, p => p.Fuel).Says("The fuel.");
        return f => new(f.Of(fuel), f.Of(fraction));
    }).List(1, 20);

    internal static ObjectShape<Fuel> ByVolume { get; } =
        new(o =>
        {
            o.Is("blend-by-volume", "Fuels mixed by volume.");
            o.Kind("blend by volume", "That it is mixed by volume.", f => f.Recipe is VolumeBlendRecipe);
            var name = o.Named(f => f.Name);
            var mixedAt = o.Required("mixedAt", QuantityShapes.Temperature, f => Recipe<VolumeBlendRecipe>(f).MixedAt)
                .Says("Temperature at which the volumes were measured.");
            var parts = o.Required("parts", Parts, f => Recipe<VolumeBlendRecipe>(f).Parts)
                .Says("The fuels with their shares of the volume before mixing, which add up to 100 %.");
            return f => FuelBlend.ByVolume(f.Of(name), f.Of(mixedAt), f.Of(parts));
        });

    internal static ObjectShape<Fuel> ByMass { get; } =
        new(o =>
        {
            o.Is("blend-by-mass", "Fuels mixed by mass.");
            o.Kind("blend by mass", "That it is mixed by mass.", f => f.Recipe is MassBlendRecipe);
            var name = o.Named(f => f.Name);
            var parts = o.Required("parts", Parts, f => Recipe<MassBlendRecipe>(f).Parts)
                .Says("The fuels with their shares of the mass, which add up to 100 %.");
            return f => FuelBlend.ByMass(f.Of(name), f.Of(parts));
        });

    internal static ObjectShape<Fuel> Premix { get; } =
        new(o =>
        {
            o.Is("premix", "Fuel with oil in it, for a two-stroke.");
            o.Kind("premix", "That it is premix.", f => f.Recipe is PremixRecipe);
            var name = o.Named(f => f.Name);
            var oilPerFuel = o.Optional("oilPerFuel", QuantityShapes.Ratio.NotNegative, f => Mix(f).Ratio.OilPerFuel)
                .Says("Volume of oil for each volume of fuel: 2 % is 50:1.");
            var ratio = o.Optional("ratio", PremixRatioShape.Instance, _ => null)
                .Says("Parts of fuel to one of oil, as on the bottle; written as oilPerFuel.");
            var mixedAt = o.Required("mixedAt", QuantityShapes.Temperature, f => Mix(f).MixedAt)
                .Says("Temperature at which the volumes were measured.");
            var fuel = o.Required("fuel", AnyFuel, f => Mix(f).Fuel).Says("The fuel.");
            var oil = o.Required("oil", AnyFuel, f => Mix(f).Oil).Says("The oil.");
            o.ExactlyOne(oilPerFuel, ratio);
            return f =>
                (f.Of(ratio) ?? PremixRatio.FromOilPerFuel(f.Of(oilPerFuel)!.Value)).ToFuel(
                    f.Of(name),
                    f.Of(fuel),
                    f.Of(oil),
                    f.Of(mixedAt)
                );
        });

    internal static ObjectShape<Fuel> E85 { get; } =
        new(o =>
        {
            o.Is(
                "ethanol-fuel",
                "What is sold as E85: gasoline with 51 % to 83 % of ethanol by volume, as the season asks."
            );
            o.Kind("E85", "That it is sold as E85.", f => f.Recipe is E85Recipe);
            var name = o.Named(f => f.Name);
            var ethanol = o.Required("ethanol", QuantityShapes.Ratio.Positive, f => Recipe<E85Recipe>(f).Ethanol)
                .Says(
                    "Volume of ethanol in a volume of it, at 15 degC, from 51 % to 83 %: measured, never the 85 % of the name."
                );
            var gasoline = o.Required("gasoline", AnyFuel, f => Recipe<E85Recipe>(f).Gasoline)
                .Says("The gasoline in it.");
            var season = o.Optional(
                    "class",
                    new CountShape(1, E85Class.All.Length),
                    f => Recipe<E85Recipe>(f).Class?.Number
                )
                .Says(
                    "Its class by the season, 1 (warm) to 4 (cold): the vapor pressure is reckoned as the most that the class allows, or as mixed where that is more; as mixed where the class is left out."
                );
            return f =>
                (
                    f.Of(season) is { } number
                        ? StandardFuels.E85(f.Of(gasoline), f.Of(ethanol), E85Class.FromNumber(number))
                        : StandardFuels.E85(f.Of(gasoline), f.Of(ethanol))
                ).WithName(f.Of(name));
        });

    private static PremixRecipe Mix(Fuel fuel) => Recipe<PremixRecipe>(fuel);

    private static TRecipe Recipe<TRecipe>(Fuel fuel) => (TRecipe)(object)fuel.Recipe!;
}
