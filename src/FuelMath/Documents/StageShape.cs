namespace FuelMath;

/// <summary>An injector stage: its seats and the controller's belief.</summary>
internal static class StageShape
{
    private static readonly ObjectShape<ControllerBelief> Belief = new(o =>
    {
        o.Is("controller-belief", "What the engine controller was told.");
        var believedInjector = o.Required("injector", InjectorShape.Reference, b => b.Injector)
            .Says("The characterization that was entered, by its name.");
        var believedPressure = o.Required(
                "differentialPressure",
                QuantityShapes.PressureDifference.Positive,
                b => b.DifferentialPressure
            )
            .Says("The injector differential pressure that was entered.");
        o.With(
                "railReference",
                ChoiceShape.Of(
                    ("manifold", RailPressure.Reference.Manifold),
                    ("fixed", RailPressure.Reference.Fixed),
                    ("measured", RailPressure.Reference.Measured)
                ),
                b => b.RailReference == RailPressure.Reference.Manifold ? null : b.RailReference,
                (b, v) => b.WithRailReference(v)
            )
            .Says(
                "What the controller takes the pressure across the injectors to follow from: a rail that follows the manifold (when left out), a fixed rail, whose gauge pressure differentialPressure then is, or a sensor that measures it."
            );
        var believedFuel = o.Required("fuel", FuelShape.Reference, b => b.Fuel)
            .Says("The fuel that was entered, by its name.");
        var believedTemperature = o.Required("fuelTemperature", QuantityShapes.Temperature, b => b.FuelTemperature)
            .Says("The temperature at which the fuel's density was entered.");
        return f => new(f.Of(believedInjector), f.Of(believedPressure), f.Of(believedFuel), f.Of(believedTemperature));
    });

    private static readonly ObjectShape<InjectorStage.Seat> Seat = new(o =>
    {
        o.Is("injector-seat", "An injector in its place.");
        var chamber = o.Required("chamber", new CountShape(1, 64), s => s.Chamber)
            .Says("The chamber that it feeds, counted from 1.");
        var node = o.Required("node", TextShape.Name, s => s.Node).Says("The node that supplies it.");
        var fitted = o.Required("injector", InjectorShape.Reference, s => s.Injector)
            .Says("The injector that is fitted, by its name.");
        return f => new(f.Of(chamber), f.Of(node), f.Of(fitted));
    });

    internal static ObjectShape<InjectorStage> Shape { get; } =
        new(o =>
        {
            o.Is("injector-stage", "The injectors that one controller output drives.");
            var name = o.Named(s => s.Name);
            var discharge = o.Required(
                    "discharge",
                    ChoiceShape.Of(
                        ("manifold", InjectorStage.DischargePlace.Manifold),
                        ("ambient", InjectorStage.DischargePlace.Ambient)
                    ),
                    s => s.Discharge
                )
                .Says("Where its injectors spray into.");
            var pulses = o.Required("pulsesPerCycle", new CountShape(1, 8), s => s.PulsesPerCycle)
                .Says("Pulses in one working cycle of a chamber.");
            o.With(
                    "firingGroups",
                    new CountShape(1, 256),
                    s => s.FiringGroups,
                    (s, v) => s.WithFiringGroups(v),
                    "groups"
                )
                .Says(
                    "Groups of its injectors that open one after the other, evenly spaced: 1 when all open at once; left out where it is not known."
                );
            o.With("belief", Belief, s => s.Belief, (s, v) => s.WithBelief(v))
                .Says("What the controller was told; left out where nobody knows it and a sensor holds lambda.");
            var seats = o.Required("seats", Seat.List(1, 256), s => s.Seats).Says("The injectors in their places.");
            return f => new(f.Of(name), f.Of(discharge), f.Of(pulses), f.Of(seats));
        });
}
