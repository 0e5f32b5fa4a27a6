using UnitsNet;

namespace FuelMath;

/// <summary>Check valves and openings into spaces.</summary>
internal static class OpeningShapes
{
    private static readonly ValueProperty<CheckValve, Pressure> Opening = new(
        "openingDifferentialPressure",
        "The difference at which it opens.",
        QuantityShapes.PressureDifference,
        v => v.OpeningDifferentialPressure
    );

    private static readonly ValueProperty<CheckValve, Pressure> OpenLoss = new(
        "openLoss",
        "What it loses beyond that.",
        QuantityShapes.PressureDifference,
        v => v.OpenLoss
    );

    private static readonly ValueProperty<CheckValve, VolumeFlow> OpenFlow = new(
        "openFlow",
        "The flow of that loss.",
        QuantityShapes.VolumeFlow,
        v => v.OpenFlow
    );

    private static readonly ValueProperty<CheckValve, Density> ValveDensity = DensityOf<CheckValve>(v => v.Density);
    private static readonly ValueProperty<Nozzle, VolumeFlow> NozzleFlow = FlowOf<Nozzle>(n => n.Flow);
    private static readonly ValueProperty<Nozzle, Pressure> NozzleAcross = AcrossOf<Nozzle>(n =>
        n.DifferentialPressure
    );
    private static readonly ValueProperty<Nozzle, Density> NozzleDensity = DensityOf<Nozzle>(n => n.Density);
    private static readonly ValueProperty<InjectorDraw, VolumeFlow> DrawFlow = FlowOf<InjectorDraw>(d => d.Flow);
    private static readonly ValueProperty<InjectorDraw, Pressure> DrawAcross = AcrossOf<InjectorDraw>(d =>
        d.DifferentialPressure
    );
    private static readonly ValueProperty<InjectorDraw, Density> DrawDensity = DensityOf<InjectorDraw>(d => d.Density);

    private static readonly ValueProperty<Nozzle, Backflow> BackflowOf = new(
        "backflow",
        "What it does when the space has the higher pressure.",
        new ChoiceShape<Backflow>(("prevented", Backflow.Prevented), ("allowed", Backflow.Allowed)),
        n => n.Backflow
    );

    private static readonly ValueProperty<InjectorDraw, VolumeFlow> Commanded = new(
        "commanded",
        "The commanded mean flow; zero shuts it. When left out, the conditions say it.",
        QuantityShapes.VolumeFlow,
        d => d.CommandedFlow!.Value,
        d => d.CommandedFlow is not null,
        default
    );

    internal static ObjectShape<CheckValve> CheckValve { get; } =
        new(
            "check-valve",
            "Nothing flows backwards; with a spring it is a relief valve.",
            [Opening, OpenLoss, OpenFlow, ValveDensity],
            f => new(f.Of(Opening), f.Of(OpenLoss), f.Of(OpenFlow), f.Of(ValveDensity))
        );

    internal static ObjectShape<Nozzle> Nozzle { get; } =
        new(
            "nozzle",
            "A steady opening into a space of fixed pressure.",
            [NozzleFlow, NozzleAcross, NozzleDensity, BackflowOf],
            f => new(f.Of(NozzleFlow), f.Of(NozzleAcross), f.Of(NozzleDensity), f.Of(BackflowOf))
        );

    internal static ObjectShape<InjectorDraw> Draw { get; } =
        new(
            "injector-draw",
            "Pulsed injectors that hold a commanded flow as long as the pressure suffices.",
            [DrawFlow, DrawAcross, DrawDensity, Commanded],
            f =>
            {
                InjectorDraw draw = new(f.Of(DrawFlow), f.Of(DrawAcross), f.Of(DrawDensity));
                return f.Has(Commanded) ? draw.WithCommandedFlow(f.Of(Commanded)) : draw;
            }
        );

    private static ValueProperty<T, VolumeFlow> FlowOf<T>(Func<T, VolumeFlow> get) =>
        new("flow", "A flow of it, held open.", QuantityShapes.VolumeFlow, get);

    private static ValueProperty<T, Pressure> AcrossOf<T>(Func<T, Pressure> get) =>
        new("differentialPressure", "The difference at that flow.", QuantityShapes.PressureDifference, get);

    private static ValueProperty<T, Density> DensityOf<T>(Func<T, Density> get) =>
        new("density", "Density of the fluid of that reading.", QuantityShapes.Density, get);
}
