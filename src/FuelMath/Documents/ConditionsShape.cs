using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What a network is solved at.</summary>
internal static class ConditionsShape
{
    private static readonly ValueProperty<NetworkConditions, Density> Density = new(
        "density",
        "Density of the fluid.",
        QuantityShapes.Density,
        c => c.Density
    );

    private static readonly ValueProperty<NetworkConditions, DynamicViscosity> Dynamic = new(
        "viscosity",
        "Dynamic viscosity of the fluid.",
        QuantityShapes.DynamicViscosity,
        c => c.Viscosity,
        _ => true,
        default
    );

    private static readonly ValueProperty<NetworkConditions, KinematicViscosity> Kinematic = new(
        "kinematicViscosity",
        "Kinematic viscosity of the fluid, in place of the dynamic one; it is written as that.",
        QuantityShapes.KinematicViscosity,
        _ => default,
        _ => false,
        default
    )
    {
        Parameter = "viscosity",
    };

    private static readonly ValueProperty<NetworkConditions, ElectricPotential> Voltage = new(
        "pumpVoltage",
        "The voltage at the terminals of measured pumps.",
        QuantityShapes.Voltage,
        c => c.PumpVoltage!.Value,
        c => c.PumpVoltage is not null,
        default
    )
    {
        Parameter = "voltage",
    };

    private static readonly ValueProperty<NetworkConditions, GaugePressure> Manifold = new(
        "manifold",
        "The pressure in the manifold, for regulators that refer to it.",
        QuantityShapes.GaugePressure,
        c => c.Manifold!.Value,
        c => c.Manifold is not null,
        default
    );

    private static readonly ValueProperty<NetworkConditions, GaugePressure> Tank = new(
        "tank",
        "The pressure in the tank, for regulators in one that return to no node of fixed pressure.",
        QuantityShapes.GaugePressure,
        c => c.Tank!.Value,
        c => c.Tank is not null,
        default
    );

    private static readonly ValueProperty<KeyValuePair<string, VolumeFlow>, string> CommandedLine = new(
        "line",
        "The line of injectors.",
        TextShape.Name,
        c => c.Key
    );

    private static readonly ValueProperty<KeyValuePair<string, VolumeFlow>, VolumeFlow> Commanded = new(
        "commanded",
        "The commanded mean flow; zero shuts them.",
        QuantityShapes.VolumeFlow,
        c => c.Value
    );

    private static readonly ValueProperty<
        NetworkConditions,
        ImmutableArray<KeyValuePair<string, VolumeFlow>>
    > Commands = new(
        "commands",
        "What injectors without a command of their own are commanded to; none when left out.",
        new ListShape<KeyValuePair<string, VolumeFlow>>(
            new ObjectShape<KeyValuePair<string, VolumeFlow>>(
                "injector-command",
                "What the injectors of a line are commanded to.",
                [CommandedLine, Commanded],
                f => new(f.Of(CommandedLine), f.Of(Commanded))
            ),
            1,
            NetworkShape.Most
        ),
        c => [.. c.Commands],
        c => !c.Commands.IsEmpty,
        []
    );

    internal static ObjectShape<NetworkConditions> Shape { get; } =
        new(
            "network-conditions",
            "What a network is solved at: its fluid, and what its parts need beside it.",
            [Density, Dynamic, Kinematic, Voltage, Manifold, Tank, Commands],
            Make
        )
        {
            ExactlyOne = [Dynamic.Name, Kinematic.Name],
        };

    private static NetworkConditions Make(Fields<NetworkConditions> f)
    {
        NetworkConditions at = f.Has(Dynamic)
            ? new(f.Of(Density), f.Of(Dynamic))
            : NetworkConditions.FromKinematicViscosity(f.Of(Density), f.Of(Kinematic));
        at = f.Has(Voltage) ? at.WithPumpVoltage(f.Of(Voltage)) : at;
        at = f.Has(Manifold) ? at.WithManifold(f.Of(Manifold)) : at;
        at = f.Has(Tank) ? at.WithTank(f.Of(Tank)) : at;
        return f.Of(Commands).Aggregate(at, (c, command) => c.WithCommandedFlow(command.Key, command.Value));
    }
}
