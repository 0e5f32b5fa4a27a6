using System.Collections.Immutable;
using FuelMath.Filters;
using FuelMath.Shapes;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Documents;

/// <summary>A filter by the points of its loss.</summary>
internal static class FilterShape
{
    private static readonly ValueProperty<FilterPoint, Pressure> Loss = new(
        "pressureLoss",
        "Pressure lost.",
        QuantityShapes.PressureDifference,
        p => p.PressureLoss
    );

    private static readonly ValueProperty<FilterPoint, VolumeFlow> Flow = new(
        "flow",
        "Volume flow.",
        QuantityShapes.VolumeFlow,
        p => p.Flow
    );

    private static readonly ObjectShape<FilterPoint> Point = new(
        "filter-point",
        "Pressure lost at a flow.",
        [Flow, Loss],
        f => new(f.Of(Loss), f.Of(Flow))
    );

    private static readonly ValueProperty<Filter, string> Name = new("name", "Its name.", TextShape.Name, f => f.Name);

    private static readonly ValueProperty<Filter, ImmutableArray<FilterPoint>> Points = new(
        "points",
        "Two or more points, flow and loss rising.",
        TableShapes.Knots(Point),
        f => f.Points
    );

    private static readonly ValueProperty<Filter, Density> TestDensity = new(
        "density",
        "Density of the test fluid.",
        QuantityShapes.Density,
        f => f.TestDensity
    );

    private static readonly ValueProperty<Filter, DynamicViscosity> TestViscosity = new(
        "viscosity",
        "Dynamic viscosity of the test fluid.",
        QuantityShapes.DynamicViscosity,
        f => f.TestViscosity
    );

    private static readonly ValueProperty<Filter, DataSource> Source = SourceShape.Of<Filter>(f => f.Source);

    internal static ObjectShape<Filter> Shape { get; } =
        new(
            "filter",
            "A filter by the points of its loss with a test fluid.",
            [Name, Points, TestDensity, TestViscosity, Source],
            f => Filter.Fit(f.Of(Name), f.Of(Points), f.Of(TestDensity), f.Of(TestViscosity), f.Of(Source))
        );
}
