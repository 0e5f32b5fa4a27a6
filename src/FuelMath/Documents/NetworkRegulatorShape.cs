using UnitsNet;

namespace FuelMath;

/// <summary>A regulator in a network.</summary>
internal static class NetworkRegulatorShape
{
    private static readonly ValueProperty<NetworkRegulator, Pressure> Setting = new(
        "setDifferentialPressure",
        "Held pressure less reference, where it just opens or shuts.",
        QuantityShapes.PressureDifference,
        r => r.SetDifferentialPressure
    );

    private static readonly ValueProperty<NetworkRegulator, GaugePressure> Reference = new(
        "reference",
        "Pressure on its spring side.",
        QuantityShapes.GaugePressure,
        r => r.Reference
    );

    private static readonly ValueProperty<NetworkRegulator, Pressure> OpenLoss = new(
        "fullyOpenLoss",
        "What it loses open to its stop.",
        QuantityShapes.PressureDifference,
        r => r.FullyOpenLoss
    );

    private static readonly ValueProperty<NetworkRegulator, VolumeFlow> OpenFlow = new(
        "fullyOpenFlow",
        "The flow of that loss.",
        QuantityShapes.VolumeFlow,
        r => r.FullyOpenFlow
    );

    private static readonly ValueProperty<NetworkRegulator, Pressure> Slope = new(
        "slopePressureDifference",
        "Change of the held pressure over a flow; none when left out.",
        QuantityShapes.PressureDifference,
        r => r.SlopeDifference,
        r => r.SlopeDifference.InSi() != 0,
        SiUnits.Pressure(0)
    )
    {
        Parameter = "pressureDifference",
    };

    private static readonly ValueProperty<NetworkRegulator, VolumeFlow> SlopeFlow = new(
        "slopeFlow",
        "The flow of that change.",
        QuantityShapes.VolumeFlow,
        r => r.SlopeFlow,
        r => r.SlopeDifference.InSi() != 0,
        default
    )
    {
        Parameter = "flow",
    };

    private static readonly ValueProperty<NetworkRegulator, Ratio> Influence = new(
        "seatOverNetDiaphragm",
        "Seat area over diaphragm area less seat area, bypass type; zero when left out.",
        QuantityShapes.Ratio,
        r => SiUnits.Ratio(r.InfluenceSi),
        r => r.InfluenceSi != 0,
        SiUnits.Ratio(0)
    );

    internal static ObjectShape<NetworkRegulator> Shape { get; } =
        new(
            "network-regulator",
            "A pressure regulator, in plain quantities.",
            [Setting, Reference, OpenLoss, OpenFlow, Slope, SlopeFlow, Influence],
            Make
        );

    private static NetworkRegulator Make(Fields<NetworkRegulator> f)
    {
        if (f.Has(Slope) != f.Has(SlopeFlow))
        {
            throw new ArgumentException("A slope needs both its pressure difference and its flow.", nameof(f));
        }

        NetworkRegulator plain = new(f.Of(Setting), f.Of(Reference), f.Of(OpenLoss), f.Of(OpenFlow));
        NetworkRegulator sloped = f.Has(Slope) ? plain.WithSlope(f.Of(Slope), f.Of(SlopeFlow)) : plain;
        return sloped.WithReturnInfluence(f.Of(Influence));
    }
}
