namespace FuelMath;

/// <summary>An injector: its rating, its dead time and its manner at short pulses.</summary>
internal static class InjectorShape
{
    private const int Most = 200;

    internal static ObjectShape<Injector> Full { get; } =
        new(o =>
        {
            o.Is("injector", "An injector.");
            var name = o.Named(i => i.Name);
            var rating = o.Required("rating", FlowRatingShape.Shape, i => i.Rating).Says("Its static flow.");
            var deadTime = o.Required("deadTime", DeadTimeShape.Shape, i => i.DeadTime).Says("Its dead time.");
            var correction = o.Required("correction", ShortPulseShape.Shape, i => i.Correction)
                .Says("Its correction at short pulses.");
            var smallest = o.Required(
                    "smallestRepeatableWidth",
                    QuantityShapes.Duration.NotNegative,
                    i => i.SmallestRepeatableWidth
                )
                .Says("The least effective width that it repeats.");
            var closing = o.Required("closingTime", QuantityShapes.Duration.NotNegative, i => i.ClosingTime)
                .Says("The time it needs to close: with less time off it stays open.");
            var coil = o.Required("coil", QuantityShapes.Resistance.Positive, i => i.Coil)
                .Says("Resistance of its coil.");
            return f =>
                new(
                    f.Of(name),
                    f.Of(rating),
                    f.Of(deadTime),
                    f.Of(correction),
                    f.Of(smallest),
                    f.Of(closing),
                    f.Of(coil)
                );
        });

    /// <summary>The injectors at the root.</summary>
    internal static NamedListShape<Injector> List { get; } = new("injectors", Full, Most);

    /// <summary>An injector that a stage refers to.</summary>
    internal static Shape<Injector> Reference { get; } =
        new ReferenceShape<Injector>("an injector", List, i => i.Name, new ChoiceShape<Injector>());
}
