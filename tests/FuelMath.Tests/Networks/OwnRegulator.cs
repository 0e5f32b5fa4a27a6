using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>Settings of a regulator of either type, open to its stop in the fluid that its network is filled with.</summary>
internal sealed class OwnRegulator(Pressure set, GaugePressure reference, Pressure openLoss, VolumeFlow openFlow)
{
    // Refuses what can't be where it is described.
    private readonly PlainRegulator tried = PlainRegulator.Bypass(
        set,
        reference,
        openLoss,
        openFlow,
        Density.FromKilogramsPerCubicMeter(740)
    );
    private Func<PlainRegulator, PlainRegulator> further = r => r;

    internal OwnRegulator WithSlope(Pressure pressureDifference, VolumeFlow flow) =>
        With(r => r.WithSlope(pressureDifference, flow));

    internal OwnRegulator WithReturnInfluence(Ratio seatOverNetDiaphragm) =>
        With(r => r.WithReturnInfluence(seatOverNetDiaphragm));

    internal PlainRegulator Part(bool isBypass, Density density) =>
        further(
            isBypass
                ? PlainRegulator.Bypass(set, reference, openLoss, openFlow, density)
                : PlainRegulator.Reducing(set, reference, openLoss, openFlow, density)
        );

    private OwnRegulator With(Func<PlainRegulator, PlainRegulator> next)
    {
        Func<PlainRegulator, PlainRegulator> before = further;
        OwnRegulator changed = new(set, reference, openLoss, openFlow) { further = r => next(before(r)) };
        _ = changed.further(tried);
        return changed;
    }
}
