using UnitsNet;

namespace FuelMath;

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
        RegulatorPartShapes.Restriction,
        r => r.FullyOpen
    );

    private static readonly ValueProperty<BypassRegulator, RegulatorReference> Reference = new(
        "reference",
        "What acts on the spring side of the diaphragm.",
        RegulatorPartShapes.ReferenceWords,
        r => r.Reference
    );

    private static readonly ValueProperty<BypassRegulator, Ratio> ReferenceRatio = new(
        "referenceRatio",
        "Area under the reference over that of the diaphragm; one when left out.",
        PureRatioShape.Instance,
        r => r.ReferenceRatio,
        r => r.ReferenceRatio.InSi() != 1,
        SiUnits.Ratio(1)
    )
    {
        Parameter = "ratio",
    };

    private static readonly ValueProperty<BypassRegulator, DataSource> Source = SourceShape.Of<BypassRegulator>(r =>
        r.Source
    );

    internal static ObjectShape<BypassRegulator> Shape { get; } =
        new(
            "bypass-regulator",
            "A return-style regulator.",
            [Name, SetPoint, Second, Diaphragm, Seat, FullyOpen, Reference, ReferenceRatio, Source],
            Make
        );

    private static BypassRegulator Make(Fields<BypassRegulator> f)
    {
        BypassRegulator regulator = new(
            f.Of(Name),
            f.Of(SetPoint),
            f.Of(Second),
            f.Of(Diaphragm),
            f.Of(Seat),
            f.Of(FullyOpen),
            f.Of(Reference),
            f.Of(Source)
        );
        return f.Has(ReferenceRatio) ? regulator.WithReferenceRatio(regulator.Name, f.Of(ReferenceRatio)) : regulator;
    }
}
