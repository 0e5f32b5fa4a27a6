using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

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

    private static readonly ValueProperty<FilterLoadingPoint, Mass> HeldMass = new(
        "retained",
        "Mass of dirt in the element.",
        QuantityShapes.Mass,
        p => p.Retained
    );

    private static readonly ValueProperty<FilterLoadingPoint, Pressure> LoadedLoss = new(
        "pressureLoss",
        "Pressure lost at the flow of the test.",
        QuantityShapes.PressureDifference,
        p => p.PressureLoss
    );

    private static readonly ObjectShape<FilterLoadingPoint> LoadingPoint = new(
        "filter-loading-point",
        "Pressure lost with a mass of dirt.",
        [HeldMass, LoadedLoss],
        f => new(f.Of(HeldMass), f.Of(LoadedLoss))
    );

    private static readonly ValueProperty<FilterLoading, VolumeFlow> TestFlow = new(
        "testFlow",
        "The flow of the test.",
        QuantityShapes.VolumeFlow,
        l => l.TestFlow
    );

    private static readonly ValueProperty<FilterLoading, DynamicViscosity> LoadingViscosity = new(
        "viscosity",
        "Dynamic viscosity of the fluid of the test.",
        QuantityShapes.DynamicViscosity,
        l => l.TestViscosity
    )
    {
        Parameter = "testViscosity",
    };

    private static readonly ValueProperty<FilterLoading, ImmutableArray<FilterLoadingPoint>> LoadingPoints = new(
        "points",
        "Two or more points, the first without dirt; mass and loss rising.",
        TableShapes.Knots(LoadingPoint),
        l => l.Points
    );

    private static readonly ValueProperty<FilterLoading, DataSource> LoadingSource = SourceShape.Of<FilterLoading>(l =>
        l.Source
    );

    private static readonly ObjectShape<FilterLoading> LoadingTest = new(
        "filter-loading",
        "A loading test of an element.",
        [TestFlow, LoadingViscosity, LoadingPoints, LoadingSource],
        f => new(f.Of(TestFlow), f.Of(LoadingViscosity), f.Of(LoadingPoints), f.Of(LoadingSource))
    );

    private static readonly ValueProperty<Filter, FilterLoading> Loading = new(
        "loading",
        "How its element ages; left out for a clean one.",
        LoadingTest,
        f => f.Loading!,
        f => f.Loading is not null,
        null!
    );

    private static readonly ValueProperty<Filter, Mass> Retained = new(
        "retained",
        "Mass of dirt that it holds; left out for a clean one.",
        QuantityShapes.Mass,
        f => f.Retained,
        f => f.Loading is not null,
        default
    );

    private static readonly ValueProperty<Filter, Pressure> Collapse = new(
        "collapse",
        "The loss at which its element collapses, where somebody knows it.",
        QuantityShapes.PressureDifference,
        f => f.CollapseDifferentialPressure!.Value,
        f => f.CollapseDifferentialPressure is not null,
        default
    )
    {
        Parameter = "collapseDifferentialPressure",
    };

    private static readonly ValueProperty<Filter, DataSource> Source = SourceShape.Of<Filter>(f => f.Source);

    internal static ObjectShape<Filter> Shape { get; } =
        new(
            "filter",
            "A filter by the points of its loss with a test fluid, and the dirt that it holds.",
            [Name, Points, TestDensity, TestViscosity, Loading, Retained, Collapse, Source],
            Make
        );

    private static Filter Make(Fields<Filter> f)
    {
        Filter filter = Filter.Fit(f.Of(Name), f.Of(Points), f.Of(TestDensity), f.Of(TestViscosity), f.Of(Source));
        if (f.Has(Loading) != f.Has(Retained))
        {
            throw new ArgumentException(
                $"A loading test and the mass retained belong together; filter '{f.Of(Name)}' has one of them."
            );
        }

        filter = f.Has(Loading) ? filter.Loaded(f.Of(Loading), f.Of(Retained)) : filter;
        return f.Has(Collapse) ? filter.WithCollapseLimit(f.Of(Collapse)) : filter;
    }
}
