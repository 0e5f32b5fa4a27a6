using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A stage of injectors: where they sit and what the controller believes of them.</summary>
internal static class StageShape
{
    private static readonly ValueProperty<ControllerBelief, Injector> BelievedInjector = new(
        "injector",
        "The characterization that was entered, by its name.",
        InjectorShape.Reference,
        b => b.Injector
    );

    private static readonly ValueProperty<ControllerBelief, Pressure> BelievedPressure = new(
        "differentialPressure",
        "The injector differential pressure that was entered.",
        QuantityShapes.PressureDifference,
        b => b.DifferentialPressure
    );

    private static readonly ValueProperty<ControllerBelief, Fuel> BelievedFuel = new(
        "fuel",
        "The fuel that was entered, by its name.",
        FuelShape.Reference,
        b => b.Fuel
    );

    private static readonly ValueProperty<ControllerBelief, Temperature> BelievedTemperature = new(
        "fuelTemperature",
        "The temperature at which the fuel's density was entered.",
        QuantityShapes.Temperature,
        b => b.FuelTemperature
    );

    private static readonly ValueProperty<ControllerBelief, RailReference> Reference = new(
        "railReference",
        "What the controller takes the pressure across the injectors to follow from: a rail that follows the manifold (when left out), a fixed rail, whose gauge pressure differentialPressure then is, or a sensor that measures it.",
        new ChoiceShape<RailReference>(
            ("manifold", RailReference.Manifold),
            ("fixed", RailReference.Fixed),
            ("measured", RailReference.Measured)
        ),
        b => b.RailReference,
        b => b.RailReference != RailReference.Manifold,
        RailReference.Manifold
    );

    private static readonly ObjectShape<ControllerBelief> Belief = new(
        "controller-belief",
        "What the engine controller was told.",
        [BelievedInjector, BelievedPressure, Reference, BelievedFuel, BelievedTemperature],
        f =>
            new ControllerBelief(
                f.Of(BelievedInjector),
                f.Of(BelievedPressure),
                f.Of(BelievedFuel),
                f.Of(BelievedTemperature)
            ).WithRailReference(f.Of(Reference))
    );

    private static readonly ValueProperty<InjectorSeat, int> Chamber = new(
        "chamber",
        "The cylinder or rotor that it feeds, counted from 1.",
        new CountShape(1, 64),
        s => s.Chamber
    );

    private static readonly ValueProperty<InjectorSeat, string> Node = new(
        "node",
        "The node that supplies it.",
        TextShape.Name,
        s => s.Node
    );

    private static readonly ValueProperty<InjectorSeat, Injector> Fitted = new(
        "injector",
        "The injector that is fitted, by its name.",
        InjectorShape.Reference,
        s => s.Injector
    );

    private static readonly ObjectShape<InjectorSeat> Seat = new(
        "injector-seat",
        "An injector in its place.",
        [Chamber, Node, Fitted],
        f => new(f.Of(Chamber), f.Of(Node), f.Of(Fitted))
    );

    private static readonly ValueProperty<InjectorStage, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        s => s.Name
    );

    private static readonly ValueProperty<InjectorStage, InjectorDischarge> Discharge = new(
        "discharge",
        "Where its injectors spray into.",
        new ChoiceShape<InjectorDischarge>(
            ("manifold", InjectorDischarge.Manifold),
            ("ambient", InjectorDischarge.Ambient)
        ),
        s => s.Discharge
    );

    private static readonly ValueProperty<InjectorStage, int> Pulses = new(
        "pulsesPerCycle",
        "Pulses in one working cycle of a chamber.",
        new CountShape(1, 8),
        s => s.PulsesPerCycle
    );

    private static readonly ValueProperty<InjectorStage, ControllerBelief> Believed = new(
        "belief",
        "What the controller was told.",
        Belief,
        s => s.Belief
    );

    private static readonly ValueProperty<InjectorStage, ImmutableArray<InjectorSeat>> Seats = new(
        "seats",
        "The injectors in their places.",
        new ListShape<InjectorSeat>(Seat, 1, 256),
        s => s.Seats
    );

    private static readonly ValueProperty<InjectorStage, int> Firing = new(
        "firingGroups",
        "Groups of its injectors that open one after the other, evenly spaced: 1 when all open at once; left out where it is not known.",
        new CountShape(1, 256),
        s => s.FiringGroups!.Value,
        s => s.FiringGroups is not null,
        0
    )
    {
        Parameter = "groups",
    };

    internal static ObjectShape<InjectorStage> Shape { get; } =
        new(
            "injector-stage",
            "The injectors that one controller output drives.",
            [Name, Discharge, Pulses, Firing, Believed, Seats],
            f =>
            {
                InjectorStage stage = new(f.Of(Name), f.Of(Discharge), f.Of(Pulses), f.Of(Believed), f.Of(Seats));
                return f.Has(Firing) ? stage.WithFiringGroups(f.Of(Firing)) : stage;
            }
        );
}
