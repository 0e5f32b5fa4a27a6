using UnitsNet;

namespace FuelMath;

/// <summary>A reducing regulator by two readings and its measures.</summary>
internal static class ReducingRegulatorShape
{
    private static readonly ValueProperty<ReducingReading, Pressure> Difference = new(
        "differentialPressure",
        "Downstream less reference pressure.",
        QuantityShapes.PressureDifference,
        r => r.DifferentialPressure
    );

    private static readonly ValueProperty<ReducingReading, VolumeFlow> Flow = new(
        "flow",
        "Volume flow through it.",
        QuantityShapes.VolumeFlow,
        r => r.Flow
    );

    private static readonly ValueProperty<ReducingReading, GaugePressure> Supply = new(
        "supply",
        "Pressure ahead of it.",
        QuantityShapes.GaugePressure,
        r => r.Supply
    );

    private static readonly ObjectShape<ReducingReading> Reading = new(
        "reducing-reading",
        "Pressure held at a flow from a supply.",
        [Difference, Flow, Supply],
        f => new(f.Of(Difference), f.Of(Flow), f.Of(Supply))
    );

    private static readonly ValueProperty<ReducingRegulator, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        r => r.Name
    );

    private static readonly ValueProperty<ReducingRegulator, ReducingReading> SetPoint = new(
        "setPoint",
        "The reading at which it was set.",
        Reading,
        r => r.SetPoint
    );

    private static readonly ValueProperty<ReducingRegulator, ReducingReading> Second = new(
        "secondReading",
        "Another reading at another flow, which gives the droop.",
        Reading,
        r => r.SecondReading
    )
    {
        Parameter = "second",
    };

    private static readonly ValueProperty<ReducingRegulator, Area> Diaphragm = new(
        "diaphragm",
        "Effective area of the diaphragm.",
        QuantityShapes.Area,
        r => r.Diaphragm
    );

    private static readonly ValueProperty<ReducingRegulator, Area> Seat = new(
        "seat",
        "Area of the seat.",
        QuantityShapes.Area,
        r => r.Seat
    );

    private static readonly ValueProperty<ReducingRegulator, RegulatorRestriction> FullyOpen = new(
        "fullyOpen",
        "What it loses when open to its stop.",
        RegulatorPartShapes.Restriction,
        r => r.FullyOpen
    );

    private static readonly ValueProperty<ReducingRegulator, RegulatorReference> Reference = new(
        "reference",
        "What acts on the spring side of the diaphragm.",
        RegulatorPartShapes.ReferenceWords,
        r => r.Reference
    );

    private static readonly ValueProperty<ReducingRegulator, DataSource> Source = SourceShape.Of<ReducingRegulator>(r =>
        r.Source
    );

    internal static ObjectShape<ReducingRegulator> Shape { get; } =
        new(
            "reducing-regulator",
            "A dead-head regulator: it throttles what it lets through.",
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
