using UnitsNet;

namespace FuelMath;

/// <summary>A regulator in a network.</summary>
internal static class PlainRegulatorShape
{
    internal static ObjectShape<PlainRegulator> Bypass { get; } =
        new(o =>
        {
            o.Is("plain-bypass-regulator", "Holds the pressure ahead of it; by its settings alone.");
            var plain = Plain(o, PlainRegulator.Bypass);
            o.With(
                    "seatOverNetDiaphragm",
                    QuantityShapes.Ratio.NotNegative,
                    r => r.SeatOverNetDiaphragm.InSi() == 0 ? null : r.SeatOverNetDiaphragm,
                    (r, v) => r.WithReturnInfluence(v)
                )
                .Says("Seat area over diaphragm area less seat area, bypass type; zero when left out.");
            return plain;
        });

    internal static ObjectShape<PlainRegulator> Reducing { get; } =
        new(o =>
        {
            o.Is("plain-reducing-regulator", "Holds the pressure behind it; by its settings alone.");
            return Plain(o, PlainRegulator.Reducing);
        });

    private static Func<Fields<PlainRegulator>, PlainRegulator> Plain(
        ObjectBuilder<PlainRegulator> o,
        Func<Pressure, GaugePressure, Pressure, VolumeFlow, Density, PlainRegulator> make
    )
    {
        var setting = o.Required(
                "setDifferentialPressure",
                QuantityShapes.PressureDifference.Positive,
                r => r.SetDifferentialPressure
            )
            .Says("Held pressure less reference, where it just opens or shuts.");
        var reference = o.Required("reference", QuantityShapes.GaugePressure, r => r.Reference)
            .Says("Pressure on its spring side.");
        var openLoss = o.Required("fullyOpenLoss", QuantityShapes.PressureDifference.Positive, r => r.FullyOpenLoss)
            .Says("What it loses open to its stop.");
        var openFlow = o.Required("fullyOpenFlow", QuantityShapes.VolumeFlow.Positive, r => r.FullyOpenFlow)
            .Says("The flow of that loss.");
        var density = o.Required("density", QuantityShapes.Density.Positive, r => r.Density)
            .Says("Density of the fluid of that loss.");
        var slope = o.Optional(
                "slopePressureDifference",
                QuantityShapes.PressureDifference.NotNegative,
                r => HasSlope(r) ? r.SlopePressureDifference : null,
                "pressureDifference"
            )
            .Says("Change of the held pressure over a flow; none when left out.");
        var slopeFlow = o.Optional(
                "slopeFlow",
                QuantityShapes.VolumeFlow.Positive,
                r => HasSlope(r) ? r.SlopeFlow : null,
                "flow"
            )
            .Says("The flow of that change.");
        return f =>
        {
            if (f.Has(slope) != f.Has(slopeFlow))
            {
                throw new RefusedArgumentException(
                    RefusalCode.BelongTogether,
                    "A slope needs both its pressure difference and its flow.",
                    nameof(f)
                );
            }

            PlainRegulator plain = make(f.Of(setting), f.Of(reference), f.Of(openLoss), f.Of(openFlow), f.Of(density));
            return f.Of(slope) is { } difference ? plain.WithSlope(difference, f.Of(slopeFlow)!.Value) : plain;
        };
    }

    private static bool HasSlope(PlainRegulator regulator) => regulator.SlopePressureDifference.InSi() != 0;
}
