using UnitsNet;

namespace FuelMath;

/// <summary>The conditions at which a network is solved.</summary>
internal static class ConditionsShape
{
    private static readonly ObjectShape<KeyValuePair<string, VolumeFlow>> Command = new(o =>
    {
        o.Is("injector-command", "What the injectors of a line are commanded to.");
        var line = o.Required("line", TextShape.Name, c => c.Key).Says("The line of injectors.");
        var commanded = o.Required("commanded", QuantityShapes.VolumeFlow.NotNegative, c => c.Value)
            .Says("The commanded mean flow; zero shuts them.");
        return f => new(f.Of(line), f.Of(commanded));
    });

    internal static ObjectShape<NetworkConditions> Shape { get; } =
        new(o =>
        {
            o.Is("network-conditions", "What a network is solved at: its fluid, and what its parts need beside it.");
            var density = o.Required("density", QuantityShapes.Density.Positive, c => c.Density)
                .Says("Density of the fluid.");
            var viscosity = o.Optional("viscosity", QuantityShapes.DynamicViscosity.Positive, c => c.Viscosity)
                .Says("Dynamic viscosity of the fluid.");
            var kinematic = o.Optional(
                    "kinematicViscosity",
                    QuantityShapes.KinematicViscosity.Positive,
                    _ => null,
                    "viscosity"
                )
                .Says("Kinematic viscosity of the fluid, in place of the dynamic one; it is written as that.");
            o.With(
                    "pumpVoltage",
                    QuantityShapes.Voltage.Positive,
                    c => c.PumpVoltage,
                    (c, v) => c.WithPumpVoltage(v),
                    "voltage"
                )
                .Says("The voltage at the terminals of measured pumps.");
            o.With("manifold", QuantityShapes.GaugePressure, c => c.Manifold, (c, v) => c.WithManifold(v))
                .Says("The pressure in the manifold, for regulators that refer to it.");
            o.With("tank", QuantityShapes.GaugePressure, c => c.Tank, (c, v) => c.WithTank(v))
                .Says("The pressure in the tank, for regulators in one that return to no node of fixed pressure.");
            var commands = o.Optional("commands", Command.List(1, NetworkShape.Most), c => [.. c.Commands])
                .Says("What injectors without a command of their own are commanded to; none when left out.");
            o.ExactlyOne(viscosity, kinematic);
            return f =>
                f.Of(commands)
                    .Aggregate(
                        f.Of(viscosity) is { } dynamic
                            ? new(f.Of(density), dynamic)
                            : NetworkConditions.FromKinematicViscosity(f.Of(density), f.Of(kinematic)!.Value),
                        (at, command) => at.WithCommandedFlow(command.Key, command.Value)
                    );
        });
}
