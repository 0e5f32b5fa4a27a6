using UnitsNet;

namespace FuelMath;

/// <summary>A filter by points of flow and pressure loss.</summary>
internal static class FilterShape
{
    private static readonly ObjectShape<Filter.Point> Point = new(o =>
    {
        o.Is("filter-point", "Pressure lost at a flow.");
        var flow = o.Required("flow", QuantityShapes.VolumeFlow.Positive, p => p.Flow).Says("Volume flow.");
        var loss = o.Required("pressureLoss", QuantityShapes.PressureDifference.Positive, p => p.PressureLoss)
            .Says("Pressure lost.");
        return f => new(f.Of(loss), f.Of(flow));
    });

    private static readonly ObjectShape<FilterLoading.Point> LoadingPoint = new(o =>
    {
        o.Is("filter-loading-point", "Pressure lost with a mass of dirt.");
        var heldMass = o.Required("retained", QuantityShapes.Mass.NotNegative, p => p.Retained)
            .Says("Mass of dirt in the element.");
        var loadedLoss = o.Required("pressureLoss", QuantityShapes.PressureDifference.Positive, p => p.PressureLoss)
            .Says("Pressure lost at the flow of the test.");
        return f => new(f.Of(heldMass), f.Of(loadedLoss));
    });

    private static readonly ObjectShape<FilterLoading> LoadingTest = new(o =>
    {
        o.Is("filter-loading", "A loading test of an element.");
        var testFlow = o.Required("testFlow", QuantityShapes.VolumeFlow.Positive, l => l.TestFlow)
            .Says("The flow of the test.");
        var loadingViscosity = o.Required(
                "viscosity",
                QuantityShapes.DynamicViscosity.Positive,
                l => l.TestViscosity,
                parameter: "testViscosity"
            )
            .Says("Dynamic viscosity of the fluid of the test.");
        var loadingPoints = o.Required("points", LoadingPoint.Knots(), l => l.Points)
            .Says("Two or more points, the first without dirt; mass and loss rising.");
        var loadingSource = o.Source(l => l.Source);
        return f => new(f.Of(testFlow), f.Of(loadingViscosity), f.Of(loadingPoints), f.Of(loadingSource));
    });

    internal static ObjectShape<Filter> Shape { get; } =
        new(o =>
        {
            o.Is("filter", "A filter by the points of its loss with a test fluid, and the dirt that it holds.");
            var name = o.Named(f => f.Name);
            var points = o.Required("points", Point.Knots(), f => f.Points)
                .Says("Two or more points, flow and loss rising.");
            var testDensity = o.Required("density", QuantityShapes.Density.Positive, f => f.TestDensity)
                .Says("Density of the test fluid.");
            var testViscosity = o.Required("viscosity", QuantityShapes.DynamicViscosity.Positive, f => f.TestViscosity)
                .Says("Dynamic viscosity of the test fluid.");
            var loading = o.Optional("loading", LoadingTest, f => f.Loading)
                .Says("How its element ages; left out for a clean one.");
            var retained = o.Optional(
                    "retained",
                    QuantityShapes.Mass.NotNegative,
                    f => f.Loading is null ? null : f.Retained
                )
                .Says("Mass of dirt that it holds; left out for a clean one.");
            o.With(
                    "collapse",
                    QuantityShapes.PressureDifference.Positive,
                    f => f.CollapseDifferentialPressure,
                    (f, v) => f.WithCollapseLimit(v),
                    "collapseDifferentialPressure"
                )
                .Says("The loss at which its element collapses, where somebody knows it.");
            var source = o.Source(f => f.Source);
            return f =>
            {
                Filter filter = Filter.Fit(
                    f.Of(name),
                    f.Of(points),
                    f.Of(testDensity),
                    f.Of(testViscosity),
                    f.Of(source)
                );
                if (f.Has(loading) != f.Has(retained))
                {
                    throw new RefusedArgumentException(
                        RefusalCode.BelongTogether,
                        $"A loading test and the mass retained belong together; filter '{f.Of(name):part}' has one of them."
                    );
                }

                return f.Of(loading) is { } test ? filter.Loaded(test, f.Of(retained)!.Value) : filter;
            };
        });
}
