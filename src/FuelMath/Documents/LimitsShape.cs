using UnitsNet;

namespace FuelMath;

/// <summary>The limits of an assessment, or that common practice gives them.</summary>
internal static class LimitsShape
{
    private static readonly ValueProperty<Limits, Ratio> DutyCycle = Share(
        "dutyCycle",
        "Largest duty cycle of an injector.",
        l => l.DutyCycle
    );

    private static readonly ValueProperty<Limits, Ratio> PumpReserve = Share(
        "pumpReserve",
        "Least bypassed flow as a share of the flow drawn.",
        l => l.PumpReserve
    );

    private static readonly ValueProperty<Limits, Ratio> PressureDeviation = Share(
        "pressureDeviation",
        "Largest deviation of injector differential pressure from the controller's belief.",
        l => l.PressureDeviation
    );

    private static readonly ValueProperty<Limits, Ratio> MixtureDeviation = Share(
        "mixtureDeviation",
        "Largest deviation of a chamber's lambda to the lean side.",
        l => l.MixtureDeviation
    );

    private static readonly ValueProperty<Limits, ElectricPotential> VoltageDrop = new(
        "voltageDrop",
        "Largest voltage drop between source and pump or injector.",
        QuantityShapes.Voltage,
        l => l.VoltageDrop
    );

    private static readonly ValueProperty<Limits, Speed> FeedVelocity = new(
        "feedVelocity",
        "Largest mean velocity on the pressure side.",
        QuantityShapes.Speed,
        l => l.FeedVelocity
    );

    private static readonly ValueProperty<Limits, Speed> SuctionVelocity = new(
        "suctionVelocity",
        "Largest mean velocity ahead of a pump.",
        QuantityShapes.Speed,
        l => l.SuctionVelocity
    );

    private static readonly ValueProperty<Limits, Pressure> VaporMargin = new(
        "vaporMargin",
        "Least difference between absolute pressure and vapor pressure.",
        QuantityShapes.PressureDifference,
        l => l.VaporMarginDifference
    );

    private static readonly ValueProperty<Limits, DataSource> Source = SourceShape.Of<Limits>(l => l.Source);

    internal static Shape<Limits> Shape { get; } =
        new WordOrShape<Limits>(
            new ChoiceShape<Limits>(("common practice", Limits.CommonPractice)),
            new ObjectShape<Limits>(
                "limits",
                "What findings are held against.",
                [
                    DutyCycle,
                    PumpReserve,
                    PressureDeviation,
                    MixtureDeviation,
                    VoltageDrop,
                    FeedVelocity,
                    SuctionVelocity,
                    VaporMargin,
                    Source,
                ],
                f =>
                    new(
                        f.Of(DutyCycle),
                        f.Of(PumpReserve),
                        f.Of(PressureDeviation),
                        f.Of(MixtureDeviation),
                        f.Of(VoltageDrop),
                        f.Of(FeedVelocity),
                        f.Of(SuctionVelocity),
                        f.Of(VaporMargin),
                        f.Of(Source)
                    )
            )
        );

    private static ValueProperty<Limits, Ratio> Share(string name, string description, Func<Limits, Ratio> get) =>
        new(name, description, QuantityShapes.Ratio, get);
}
