using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A fuel described by its own composition and measured points.</summary>
internal static class OwnFuelShape
{
    private static readonly ListShape<string> Sentences = new(TextShape.Note, 1, 20);

    private static readonly ObjectShape<LiquidVaporPressure> KnownVaporPressure = PropertyPointsShape.Of<
        LiquidVaporPressure,
        AbsolutePressure
    >(
        "vapor pressure",
        "pressures",
        QuantityShapes.AbsolutePressure,
        v => v.Points,
        LiquidVaporPressure.FromPoints,
        new WordProperty<LiquidVaporPressure>("kind", "That it is known at points.", "points")
    );

    private static readonly ValueProperty<LiquidVaporPressure, string> Reason = new(
        "reason",
        "Why the vapor pressure is not known, a sentence.",
        TextShape.Note,
        v => v.ReasonUnknown
    );

    private static readonly ObjectShape<LiquidVaporPressure> UnknownVaporPressure = new(
        "unknown-vapor-pressure",
        "A vapor pressure that is not known.",
        [new WordProperty<LiquidVaporPressure>("kind", "That it is not known.", "unknown"), Reason],
        f => LiquidVaporPressure.Unknown(f.Of(Reason))
    );

    private static readonly ObjectShape<LiquidVaporPressure> NegligibleVaporPressure = new(
        "negligible-vapor-pressure",
        "A vapor pressure that is next to nothing, as of an oil: it adds none to a blend.",
        [new WordProperty<LiquidVaporPressure>("kind", "That it is next to nothing.", "negligible"), Reason],
        f => LiquidVaporPressure.Negligible(f.Of(Reason))
    );

    private static readonly ValueProperty<Fuel, string> Name = new("name", "Its name.", TextShape.Name, NameOf);

    private static readonly ValueProperty<Fuel, ElementalComposition> Composition = new(
        "composition",
        "What it is made of.",
        CompositionShape.Shape,
        f => f.Composition
    );

    private static readonly ValueProperty<Fuel, LiquidDensity> Density = new(
        "density",
        "Density against temperature.",
        PropertyPointsShape.Of<LiquidDensity, Density>(
            "density curve",
            "densities",
            QuantityShapes.Density,
            d => d.Points,
            LiquidDensity.FromPoints
        ),
        f => f.Density
    );

    private static readonly ValueProperty<Fuel, LiquidViscosity> Viscosity = new(
        "viscosity",
        "Dynamic viscosity against temperature.",
        PropertyPointsShape.Of<LiquidViscosity, DynamicViscosity>(
            "viscosity curve",
            "viscosities",
            QuantityShapes.DynamicViscosity,
            v => v.Points,
            LiquidViscosity.FromPoints
        ),
        f => f.Viscosity
    );

    private static readonly ValueProperty<Fuel, LiquidVaporPressure> VaporPressure = new(
        "vaporPressure",
        "Vapor pressure against temperature, or why it is not known.",
        new UnionShape<LiquidVaporPressure>(
            UnionCase<LiquidVaporPressure>.Of(KnownVaporPressure, v => v.IsKnown),
            UnionCase<LiquidVaporPressure>.Of(NegligibleVaporPressure, v => v.IsNegligible),
            UnionCase<LiquidVaporPressure>.Of(UnknownVaporPressure, v => !v.IsKnown && !v.IsNegligible)
        ),
        f => f.VaporPressure
    );

    private static readonly ValueProperty<Fuel, SpecificEnergy> HeatingValue = new(
        "lowerHeatingValue",
        "Lower heating value; not known when left out.",
        QuantityShapes.SpecificEnergy,
        f => f.LowerHeatingValue,
        f => f.HasLowerHeatingValue,
        default
    );

    private static readonly ValueProperty<Fuel, DataSource> Source = SourceShape.Of<Fuel>(f => f.Sources[0]);

    private static readonly ValueProperty<Fuel, ImmutableArray<string>> Estimates = new(
        "estimates",
        "What of it is an estimate, in sentences; nothing when left out.",
        Sentences,
        f => f.Estimates,
        f => f.Estimates.Length > 0,
        []
    );

    private static readonly ValueProperty<Fuel, ImmutableArray<string>> Cautions = new(
        "cautions",
        "What can hurt, in sentences; nothing when left out.",
        Sentences,
        f => f.Cautions,
        f => f.Cautions.Length > 0,
        []
    );

    private static string NameOf(Fuel fuel) =>
        fuel.HeatCapacity.IsKnown || fuel.BulkModulus.IsKnown
            ? throw new ArgumentException(
                $"The fuel '{fuel.Name}' can't be written, because documents do not hold heat capacity and bulk modulus.",
                nameof(fuel)
            )
            : fuel.Name;

    internal static ObjectShape<Fuel> Shape { get; } =
        new(
            "own-fuel",
            "A fuel described by its own composition and measured points.",
            [
                new WordProperty<Fuel>("kind", "That it is described here.", "own"),
                Name,
                Composition,
                Density,
                Viscosity,
                VaporPressure,
                HeatingValue,
                Source,
                Estimates,
                Cautions,
            ],
            f =>
                new(
                    f.Of(Name),
                    f.Of(Composition),
                    f.Of(Density),
                    f.Of(Viscosity),
                    f.Of(VaporPressure),
                    f.Has(HeatingValue) ? f.Of(HeatingValue) : null,
                    f.Of(Source),
                    f.Of(Estimates),
                    f.Of(Cautions)
                )
        );
}
