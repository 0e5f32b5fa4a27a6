using UnitsNet;

namespace FuelMath;

/// <summary>An engine: four-stroke, two-stroke or rotary.</summary>
internal static class EngineShape
{
    internal static UnionShape<Engine> Shape { get; } =
        new(
            new(o =>
            {
                var name = Begin(o, "four-stroke", "A four-stroke engine.", Engine.WorkingCycle.FourStroke);
                var (cylinders, displacement) = Cylinders(o);
                var efficiency = Efficiency(o);
                return f => Engine.FourStroke(f.Of(name), f.Of(cylinders), f.Of(displacement), f.Of(efficiency));
            }),
            new(o =>
            {
                var name = Begin(o, "two-stroke", "A two-stroke engine.", Engine.WorkingCycle.TwoStroke);
                var (cylinders, displacement) = Cylinders(o);
                var delivery = o.Required("deliveryRatio", VolumetricEfficiencyShape.Shape, e => e.VolumetricEfficiency)
                    .Says("Air sent in over air that fills the displacement at manifold density.");
                var trapping = o.Required(
                        "trappingEfficiency",
                        QuantityShapes.Ratio.Positive,
                        e => e.TrappingEfficiency
                    )
                    .Says("Air kept over air sent in.");
                return f =>
                    Engine.TwoStroke(f.Of(name), f.Of(cylinders), f.Of(displacement), f.Of(delivery), f.Of(trapping));
            }),
            new(o =>
            {
                var name = Begin(o, "rotary", "A rotary engine with three-sided rotors.", Engine.WorkingCycle.Rotary);
                var rotors = o.Required("rotors", new CountShape(1, 64), e => e.Chambers).Says("How many rotors.");
                var chamber = o.Required(
                        "chamberDisplacement",
                        QuantityShapes.Volume.Positive,
                        e => e.ChamberDisplacement
                    )
                    .Says("Displacement of one of a rotor's three chambers.");
                var efficiency = Efficiency(o);
                return f => Engine.Rotary(f.Of(name), f.Of(rotors), f.Of(chamber), f.Of(efficiency));
            })
        );

    private static ValueProperty<Engine, string> Begin(
        ObjectBuilder<Engine> o,
        string word,
        string description,
        Engine.WorkingCycle cycle
    )
    {
        o.Is(word, description);
        o.Kind(word, "How it works.", e => e.Cycle == cycle);
        return o.Named(e => e.Name);
    }

    private static (ValueProperty<Engine, int>, ValueProperty<Engine, Volume>) Cylinders(ObjectBuilder<Engine> o) =>
        (
            o.Required("cylinders", new CountShape(1, 64), e => e.Chambers).Says("How many cylinders."),
            o.Required("displacement", QuantityShapes.Volume.Positive, e => e.Displacement)
                .Says("Displacement of all cylinders.")
        );

    private static ValueProperty<Engine, VolumetricEfficiency> Efficiency(ObjectBuilder<Engine> o) =>
        o.Required("volumetricEfficiency", VolumetricEfficiencyShape.Shape, e => e.VolumetricEfficiency)
            .Says("Volumetric efficiency at manifold density.");
}
