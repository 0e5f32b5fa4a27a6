using UnitsNet;

namespace FuelMath;

/// <summary>A regulator in a network.</summary>
internal static class PlainRegulatorShape
{
    private static readonly ValueProperty<PlainRegulator, Pressure> Setting = new(
        "setDifferentialPressure",
        "Held pressure less reference, where it just opens or shuts.",
        QuantityShapes.PressureDifference,
        r => r.SetDifferentialPressure
    );

    private static readonly ValueProperty<PlainRegulator, GaugePressure> Reference = new(
        "reference",
        "Pressure on its spring side.",
        QuantityShapes.GaugePressure,
        r => r.Reference
    );

    private static readonly ValueProperty<PlainRegulator, Pressure> OpenLoss = new(
        "fullyOpenLoss",
        "What it loses open to its stop.",
        QuantityShapes.PressureDifference,
        r => r.FullyOpenLoss
    );

    private static readonly ValueProperty<PlainRegulator, VolumeFlow> OpenFlow = new(
        "fullyOpenFlow",
        "The flow of that loss.",
        QuantityShapes.VolumeFlow,
        r => r.FullyOpenFlow
    );

    private static readonly ValueProperty<PlainRegulator, Pressure> Slope = new(
        "slopePressureDifference",
        "Change of the held pressure over a flow; none when left out.",
        QuantityShapes.PressureDifference,
        r => r.SlopePressureDifference,
        r => r.SlopePressureDifference.InSi() != 0,
        SiUnits.Pressure(0)
    )
    {
        Parameter = "pressureDifference",
    };

    private static readonly ValueProperty<PlainRegulator, VolumeFlow> SlopeFlow = new(
        "slopeFlow",
        "The flow of that change.",
        QuantityShapes.VolumeFlow,
        r => r.SlopeFlow,
        r => r.SlopePressureDifference.InSi() != 0,
        default
    )
    {
        Parameter = "flow",
    };

    private static readonly ValueProperty<PlainRegulator, Ratio> Influence = new(
        "seatOverNetDiaphragm",
        "Seat area over diaphragm area less seat area, bypass type; zero when left out.",
        QuantityShapes.Ratio,
        r => r.SeatOverNetDiaphragm,
        r => r.SeatOverNetDiaphragm.InSi() != 0,
        SiUnits.Ratio(0)
    );

    private static readonly ValueProperty<PlainRegulator, Density> FluidDensity = new(
        "density",
        "Density of the fluid of that loss.",
        QuantityShapes.Density,
        r => r.Density
    );

    internal static ObjectShape<PlainRegulator> Bypass { get; } =
        new(
            "plain-bypass-regulator",
            "Holds the pressure ahead of it; by its settings alone.",
            [Setting, Reference, OpenLoss, OpenFlow, FluidDensity, Slope, SlopeFlow, Influence],
            f => Make(f, PlainRegulator.Bypass).WithReturnInfluence(f.Of(Influence))
        );

    internal static ObjectShape<PlainRegulator> Reducing { get; } =
        new(
            "plain-reducing-regulator",
            "Holds the pressure behind it; by its settings alone.",
            [Setting, Reference, OpenLoss, OpenFlow, FluidDensity, Slope, SlopeFlow],
            f => Make(f, PlainRegulator.Reducing)
        );

    private static PlainRegulator Make(
        Fields<PlainRegulator> f,
        Func<Pressure, GaugePressure, Pressure, VolumeFlow, Density, PlainRegulator> make
    )
    {
        if (f.Has(Slope) != f.Has(SlopeFlow))
        {
            throw new ArgumentException("A slope needs both its pressure difference and its flow.", nameof(f));
        }

        PlainRegulator plain = make(f.Of(Setting), f.Of(Reference), f.Of(OpenLoss), f.Of(OpenFlow), f.Of(FluidDensity));
        return f.Has(Slope) ? plain.WithSlope(f.Of(Slope), f.Of(SlopeFlow)) : plain;
    }
}
