using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A part of which only what it takes from some flows is known.</summary>
internal static class LossTableShape
{
    private static readonly ValueProperty<MeasuredLoss, VolumeFlow> Flow = new(
        "flow",
        "Volume flow.",
        QuantityShapes.VolumeFlow,
        r => r.Flow
    );

    private static readonly ValueProperty<MeasuredLoss, Pressure> Loss = new(
        "pressureLoss",
        "Pressure lost.",
        QuantityShapes.PressureDifference,
        r => r.PressureLoss
    );

    private static readonly ObjectShape<MeasuredLoss> Reading = new(
        "measured-loss",
        "Pressure lost at a flow.",
        [Flow, Loss],
        f => new(f.Of(Flow), f.Of(Loss))
    );

    private static readonly ValueProperty<LossTable, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        t => t.Name
    );

    private static readonly ValueProperty<LossTable, ImmutableArray<MeasuredLoss>> Readings = new(
        "readings",
        "One or more readings, flow and loss rising.",
        new ListShape<MeasuredLoss>(Reading, 1, 1000),
        t => t.Readings
    );

    private static readonly ValueProperty<LossTable, Density> Density = new(
        "density",
        "Density of the fluid that was measured with.",
        QuantityShapes.Density,
        t => t.Density
    );

    private static readonly ValueProperty<LossTable, DynamicViscosity> Viscosity = new(
        "viscosity",
        "Dynamic viscosity of that fluid.",
        QuantityShapes.DynamicViscosity,
        t => t.Viscosity
    );

    private static readonly ValueProperty<LossTable, DataSource> Source = SourceShape.Of<LossTable>(t => t.Source);

    internal static ObjectShape<LossTable> Shape { get; } =
        new(
            "loss-table",
            "A part of which only what it takes from some flows is known.",
            [Name, Readings, Density, Viscosity, Source],
            f => new(f.Of(Name), f.Of(Readings), f.Of(Density), f.Of(Viscosity), f.Of(Source))
        );
}
