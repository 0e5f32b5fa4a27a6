using UnitsNet;

namespace FuelMath;

/// <summary>Check valves and openings into spaces.</summary>
internal static class OpeningShapes
{
    internal static ObjectShape<CheckValve> CheckValve { get; } =
        new(o =>
        {
            o.Is("check-valve", "Nothing flows backwards; with a spring it is a relief valve.");
            var opening = o.Required(
                    "openingDifferentialPressure",
                    QuantityShapes.PressureDifference.NotNegative,
                    v => v.OpeningDifferentialPressure
                )
                .Says("The difference at which it opens.");
            var loss = o.Required("openLoss", QuantityShapes.PressureDifference.Positive, v => v.OpenLoss)
                .Says("What it loses beyond that.");
            var flow = o.Required("openFlow", QuantityShapes.VolumeFlow.Positive, v => v.OpenFlow)
                .Says("The flow of that loss.");
            var density = FluidDensity(o, v => v.Density);
            return f => new(f.Of(opening), f.Of(loss), f.Of(flow), f.Of(density));
        });

    internal static ObjectShape<Nozzle> Nozzle { get; } =
        new(o =>
        {
            o.Is("nozzle", "A steady opening into a space of fixed pressure.");
            var (flow, across) = Reading(o, n => n.Flow, n => n.DifferentialPressure);
            var density = FluidDensity(o, n => n.Density);
            var backflow = o.Required(
                    "backflow",
                    ChoiceShape.Of(
                        ("prevented", InjectorDraw.Backflow.Prevented),
                        ("allowed", InjectorDraw.Backflow.Allowed)
                    ),
                    n => n.Backflow
                )
                .Says("What it does when the space has the higher pressure.");
            return f => new(f.Of(flow), f.Of(across), f.Of(density), f.Of(backflow));
        });

    internal static ObjectShape<InjectorDraw> Draw { get; } =
        new(o =>
        {
            o.Is("injector-draw", "Pulsed injectors that hold a commanded flow as long as the pressure suffices.");
            var (flow, across) = Reading(o, d => d.Flow, d => d.DifferentialPressure);
            var density = FluidDensity(o, d => d.Density);
            o.With(
                    "commanded",
                    QuantityShapes.VolumeFlow.NotNegative,
                    d => d.CommandedFlow,
                    (d, v) => d.WithCommandedFlow(v)
                )
                .Says("The commanded mean flow; zero shuts it. When left out, the conditions say it.");
            return f => new(f.Of(flow), f.Of(across), f.Of(density));
        });

    private static (ValueProperty<T, VolumeFlow>, ValueProperty<T, Pressure>) Reading<T>(
        ObjectBuilder<T> o,
        Func<T, VolumeFlow> flow,
        Func<T, Pressure> across
    ) =>
        (
            o.Required("flow", QuantityShapes.VolumeFlow.Positive, flow).Says("A flow of it, held open."),
            o.Required("differentialPressure", QuantityShapes.PressureDifference.Positive, across)
                .Says("The difference at that flow.")
        );

    private static ValueProperty<T, Density> FluidDensity<T>(ObjectBuilder<T> o, Func<T, Density> get) =>
        o.Required("density", QuantityShapes.Density.Positive, get).Says("Density of the fluid of that reading.");
}
