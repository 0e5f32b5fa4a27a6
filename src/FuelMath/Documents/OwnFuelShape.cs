using UnitsNet;

namespace FuelMath;

/// <summary>A fuel described by its own composition and measured points.</summary>
internal static class OwnFuelShape
{
    private static readonly ListShape<string> Sentences = TextShape.Note.List(1, 20);

    private static readonly UnionShape<LiquidVaporPressure> VaporPressure = new(
        PropertyPointsShape.Of<LiquidVaporPressure, AbsolutePressure>(
            "vapor pressure",
            "pressures",
            QuantityShapes.AbsolutePressure.Positive,
            v => v.Points,
            LiquidVaporPressure.FromPoints,
            o => o.Kind("points", "That it is known at points.", v => v.IsKnown)
        ),
        new(o =>
        {
            o.Is(
                "negligible-vapor-pressure",
                "A vapor pressure that is next to nothing, as of an oil: it adds none to a blend."
            );
            o.Kind("negligible", "That it is next to nothing.", v => v.IsNegligible);
            var reason = Reason(o);
            return f => LiquidVaporPressure.Negligible(f.Of(reason));
        }),
        new(o =>
        {
            o.Is("unknown-vapor-pressure", "A vapor pressure that is not known.");
            o.Kind("unknown", "That it is not known.", v => !v.IsKnown && !v.IsNegligible);
            var reason = Reason(o);
            return f => LiquidVaporPressure.Unknown(f.Of(reason));
        })
    );

    internal static ObjectShape<Fuel> Shape { get; } =
        new(o =>
        {
            o.Is("own-fuel", "A fuel described by its own composition and measured points.");
            o.Kind("own", "That it is described here.", f => f.Recipe is null);
            var name = o.Named(NameOf);
            var composition = o.Required("composition", CompositionShape.Shape, f => f.Composition)
                .Says("What it is made of.");
            var density = o.Required(
                    "density",
                    PropertyPointsShape.Of<LiquidDensity, Density>(
                        "density curve",
                        "densities",
                        QuantityShapes.Density.Positive,
                        d => d.Points,
                        LiquidDensity.FromPoints
                    ),
                    f => f.Density
                )
                .Says("Density against temperature; it falls from point to point.");
            var viscosity = o.Required(
                    "viscosity",
                    PropertyPointsShape.Of<LiquidViscosity, DynamicViscosity>(
                        "viscosity curve",
                        "viscosities",
                        QuantityShapes.DynamicViscosity.Positive,
                        v => v.Points,
                        LiquidViscosity.FromPoints
                    ),
                    f => f.Viscosity
                )
                .Says("Dynamic viscosity against temperature; it falls from point to point.");
            var vaporPressure = o.Required("vaporPressure", VaporPressure, f => f.VaporPressure)
                .Says("Vapor pressure against temperature, which rises from point to point, or why it is not known.");
            var heatingValue = o.Optional(
                    "lowerHeatingValue",
                    QuantityShapes.SpecificEnergy.Positive,
                    f => f.LowerHeatingValue
                )
                .Says("Lower heating value; not known when left out.");
            var source = o.Source(f => f.Sources[0]);
            var estimates = o.Optional("estimates", Sentences, f => f.Estimates)
                .Says("What of it is an estimate, in sentences; nothing when left out.");
            var cautions = o.Optional("cautions", Sentences, f => f.Cautions)
                .Says("What can hurt, in sentences; nothing when left out.");
            return f =>
                new(
                    f.Of(name),
                    f.Of(composition),
                    f.Of(density),
                    f.Of(viscosity),
                    f.Of(vaporPressure),
                    f.Of(heatingValue),
                    f.Of(source),
                    f.Of(estimates),
                    f.Of(cautions)
                );
        });

    private static ValueProperty<LiquidVaporPressure, string> Reason(ObjectBuilder<LiquidVaporPressure> o) =>
        o.Required("reason", TextShape.Note, v => v.ReasonUnknown ?? "")
            .Says("Why the vapor pressure is not known, a sentence.");

    private static string NameOf(Fuel fuel) =>
        fuel.HeatCapacity.IsKnown || fuel.BulkModulus.IsKnown
            ? throw new RefusedArgumentException(
                RefusalCode.NotWritable,
                $"The fuel '{fuel.Name:part}' can't be written, because documents do not hold heat capacity and bulk modulus.",
                nameof(fuel)
            )
            : fuel.Name;
}
