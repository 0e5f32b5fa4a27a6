using FuelMath.Regulators;
using FuelMath.Shapes;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Documents;

/// <summary>A bypass regulator by two readings and its measures.</summary>
internal static class RegulatorShape
{
    private static readonly ValueProperty<RegulatorReading, Pressure> Difference = new(
        "differentialPressure",
        "Upstream less reference pressure.",
        QuantityShapes.PressureDifference,
        r => r.DifferentialPressure
    );

    private static readonly ValueProperty<RegulatorReading, VolumeFlow> Bypassed = new(
        "bypassedFlow",
        "Volume flow through the return.",
        QuantityShapes.VolumeFlow,
        r => r.BypassedFlow
    );

    private static readonly ObjectShape<RegulatorReading> Reading = new(
        "regulator-reading",
        "Pressure held at a bypassed flow.",
        [Difference, Bypassed],
        f => new(f.Of(Difference), f.Of(Bypassed))
    );

    private static readonly ValueProperty<RegulatorRestriction, Pressure> Loss = new(
        "pressureLoss",
        "Upstream less return-line pressure.",
        QuantityShapes.PressureDifference,
        r => r.PressureLoss
    );

    private static readonly ValueProperty<RegulatorRestriction, VolumeFlow> Flow = new(
        "flow",
        "Volume flow at that loss.",
        QuantityShapes.VolumeFlow,
        r => r.Flow
    );

    private static readonly ValueProperty<RegulatorRestriction, Density> FluidDensity = new(
        "density",
        "Density of the fluid.",
        QuantityShapes.Density,
        r => r.Density
    );

    private static readonly ObjectShape<RegulatorRestriction> Restriction = new(
        "regulator-restriction",
        "What a regulator loses when open to its stop.",
        [Loss, Flow, FluidDensity],
        f => new(f.Of(Loss), f.Of(Flow), f.Of(FluidDensity))
    );

    private static readonly ValueProperty<BypassRegulator, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        r => r.Name
    );

    private static readonly ValueProperty<BypassRegulator, RegulatorReading> SetPoint = new(
        "setPoint",
        "The reading at which it was set.",
        Reading,
        r => r.SetPoint
    );

    private static readonly ValueProperty<BypassRegulator, RegulatorReading> Second = new(
        "secondReading",
        "Another reading at another flow, which gives the slope.",
        Reading,
        r => r.SecondReading
    )
    {
        Parameter = "second",
    };

    private static readonly ValueProperty<BypassRegulator, Area> Diaphragm = new(
        "diaphragm",
        "Effective area of the diaphragm.",
        QuantityShapes.Area,
        r => r.Diaphragm
    );

    private static readonly ValueProperty<BypassRegulator, Area> Seat = new(
        "seat",
        "Area of the seat.",
        QuantityShapes.Area,
        r => r.Seat
    );

    private static readonly ValueProperty<BypassRegulator, RegulatorRestriction> FullyOpen = new(
        "fullyOpen",
        "What it loses when open to its stop.",
        Restriction,
        r => r.FullyOpen
    );

    private static readonly ValueProperty<BypassRegulator, RegulatorReference> Reference = new(
        "reference",
        "What acts on the spring side of the diaphragm.",
        new ChoiceShape<RegulatorReference>(
            ("manifold", RegulatorReference.Manifold),
            ("ambient", RegulatorReference.Ambient),
            ("tank", RegulatorReference.Tank)
        ),
        r => r.Reference
    );

    private static readonly ValueProperty<BypassRegulator, DataSource> Source = SourceShape.Of<BypassRegulator>(r =>
        r.Source
    );

    internal static ObjectShape<BypassRegulator> Shape { get; } =
        new(
            "bypass-regulator",
            "A return-style regulator.",
            [Name, SetPoint, Second, Diaphragm, Seat, FullyOpen, Reference, Source],
            f =>
                new(
                    f.Of(Name),
                    f.Of(SetPoint),
                    f.Of(Second),
                    f.Of(Diaphragm),
                    f.Of(Seat),
                    f.Of(FullyOpen),
                    f.Of(Reference),
                    f.Of(Source)
                )
        );
}
