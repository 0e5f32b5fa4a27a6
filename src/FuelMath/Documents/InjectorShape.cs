using UnitsNet;

namespace FuelMath;

/// <summary>An injector: its rating, its dead time and its manner at short pulses.</summary>
internal static class InjectorShape
{
    private const int Most = 200;

    private static readonly ValueProperty<Injector, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        i => i.Name
    );

    private static readonly ValueProperty<Injector, FlowRating> Rating = new(
        "rating",
        "Its static flow.",
        FlowRatingShape.Shape,
        i => i.Rating
    );

    private static readonly ValueProperty<Injector, DeadTimeTable> DeadTime = new(
        "deadTime",
        "Its dead time.",
        DeadTimeShape.Shape,
        i => i.DeadTime
    );

    private static readonly ValueProperty<Injector, ShortPulseCorrection> Correction = new(
        "correction",
        "Its correction at short pulses.",
        ShortPulseShape.Shape,
        i => i.Correction
    );

    private static readonly ValueProperty<Injector, Duration> Smallest = new(
        "smallestRepeatableWidth",
        "The least effective width that it repeats.",
        QuantityShapes.Duration,
        i => i.SmallestRepeatableWidth
    );

    private static readonly ValueProperty<Injector, Duration> Closing = new(
        "closingTime",
        "The time it needs to close: with less time off it stays open.",
        QuantityShapes.Duration,
        i => i.ClosingTime
    );

    private static readonly ValueProperty<Injector, ElectricResistance> Coil = new(
        "coil",
        "Resistance of its coil.",
        QuantityShapes.Resistance,
        i => i.Coil
    );

    internal static ObjectShape<Injector> Full { get; } =
        new(
            "injector",
            "An injector.",
            [Name, Rating, DeadTime, Correction, Smallest, Closing, Coil],
            f =>
                new(
                    f.Of(Name),
                    f.Of(Rating),
                    f.Of(DeadTime),
                    f.Of(Correction),
                    f.Of(Smallest),
                    f.Of(Closing),
                    f.Of(Coil)
                )
        );

    /// <summary>The injectors at the root.</summary>
    internal static NamedListShape<Injector> List { get; } = new("injectors", Full, Most);

    /// <summary>An injector that a stage refers to.</summary>
    internal static Shape<Injector> Reference { get; } =
        new ReferenceShape<Injector>("an injector", List, i => i.Name, new ChoiceShape<Injector>());
}
