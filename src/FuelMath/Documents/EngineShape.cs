using UnitsNet;

namespace FuelMath;

/// <summary>An engine: four-stroke, two-stroke or rotary.</summary>
internal static class EngineShape
{
    private static readonly CountShape Chambers = new(1, 64);

    private static readonly ValueProperty<Engine, string> Name = new("name", "Its name.", TextShape.Name, e => e.Name);

    private static readonly ValueProperty<Engine, int> Cylinders = new(
        "cylinders",
        "How many cylinders.",
        Chambers,
        e => e.Chambers
    );

    private static readonly ValueProperty<Engine, int> Rotors = new(
        "rotors",
        "How many rotors.",
        Chambers,
        e => e.Chambers
    );

    private static readonly ValueProperty<Engine, Volume> Displacement = new(
        "displacement",
        "Displacement of all cylinders.",
        QuantityShapes.Volume,
        e => e.Displacement
    );

    private static readonly ValueProperty<Engine, Volume> OneChamber = new(
        "chamberDisplacement",
        "Displacement of one of a rotor's three chambers.",
        QuantityShapes.Volume,
        e => e.ChamberDisplacement
    );

    private static readonly ValueProperty<Engine, VolumetricEfficiency> Efficiency = new(
        "volumetricEfficiency",
        "Volumetric efficiency at manifold density.",
        VolumetricEfficiencyShape.Shape,
        e => e.VolumetricEfficiency
    );

    private static readonly ValueProperty<Engine, VolumetricEfficiency> Delivery = new(
        "deliveryRatio",
        "Air sent in over air that fills the displacement at manifold density.",
        VolumetricEfficiencyShape.Shape,
        e => e.VolumetricEfficiency
    );

    private static readonly ValueProperty<Engine, Ratio> Trapping = new(
        "trappingEfficiency",
        "Air kept over air sent in.",
        QuantityShapes.Ratio,
        e => e.TrappingEfficiency
    );

    internal static UnionShape<Engine> Shape { get; } =
        new(
            UnionCase<Engine>.Of(
                new ObjectShape<Engine>(
                    "four-stroke",
                    "A four-stroke engine.",
                    [Kind("four-stroke"), Name, Cylinders, Displacement, Efficiency],
                    f => Engine.FourStroke(f.Of(Name), f.Of(Cylinders), f.Of(Displacement), f.Of(Efficiency))
                ),
                e => e.Cycle == EngineCycle.FourStroke
            ),
            UnionCase<Engine>.Of(
                new ObjectShape<Engine>(
                    "two-stroke",
                    "A two-stroke engine.",
                    [Kind("two-stroke"), Name, Cylinders, Displacement, Delivery, Trapping],
                    f =>
                        Engine.TwoStroke(
                            f.Of(Name),
                            f.Of(Cylinders),
                            f.Of(Displacement),
                            f.Of(Delivery),
                            f.Of(Trapping)
                        )
                ),
                e => e.Cycle == EngineCycle.TwoStroke
            ),
            UnionCase<Engine>.Of(
                new ObjectShape<Engine>(
                    "rotary",
                    "A rotary engine with three-sided rotors.",
                    [Kind("rotary"), Name, Rotors, OneChamber, Efficiency],
                    f => Engine.Rotary(f.Of(Name), f.Of(Rotors), f.Of(OneChamber), f.Of(Efficiency))
                ),
                e => e.Cycle == EngineCycle.Rotary
            )
        );

    private static WordProperty<Engine> Kind(string word) => new("kind", "How it works.", word);
}
