using UnitsNet;

namespace FuelMath;

/// <summary>A pressure regulator in plain quantities, for either type.</summary>
/// <remarks>
/// A bypass regulator holds the pressure ahead of it; the reducing type holds the one behind it. Open to its stop either
/// is a fixed restriction. Immutable and safe to share between threads. Equality is by reference.
/// </remarks>
public sealed class NetworkRegulator
{
    private readonly double setting;
    private readonly double reference;
    private readonly double square;
    private double slope;
    private double influence;

    /// <summary>Sets down a regulator without slope or influence of the return line.</summary>
    /// <param name="setDifferentialPressure">Held pressure less reference, where it just opens or shuts; greater than zero.</param>
    /// <param name="reference">The pressure on its spring side; not below vacuum.</param>
    /// <param name="fullyOpenLoss">What it loses open to its stop, in the network's fluid; greater than zero.</param>
    /// <param name="fullyOpenFlow">The flow of that loss; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public NetworkRegulator(
        Pressure setDifferentialPressure,
        GaugePressure reference,
        Pressure fullyOpenLoss,
        VolumeFlow fullyOpenFlow
    )
    {
        setting = Guard.Positive(
            setDifferentialPressure,
            setDifferentialPressure.InSi(),
            nameof(setDifferentialPressure)
        );
        this.reference = NetworkChecks.NotBelowVacuum(reference, nameof(reference));
        double loss = Guard.Positive(fullyOpenLoss, fullyOpenLoss.InSi(), nameof(fullyOpenLoss));
        double flow = Guard.Positive(fullyOpenFlow, fullyOpenFlow.InSi(), nameof(fullyOpenFlow));
        square = loss / (flow * flow);
        (FullyOpenLoss, FullyOpenFlow) = (fullyOpenLoss, fullyOpenFlow);
        (SlopeDifference, SlopeFlow) = (SiUnits.Pressure(0), fullyOpenFlow);
    }

    private NetworkRegulator(NetworkRegulator other)
    {
        (setting, reference, square) = (other.setting, other.reference, other.square);
        (slope, influence) = (other.slope, other.influence);
        (FullyOpenLoss, FullyOpenFlow) = (other.FullyOpenLoss, other.FullyOpenFlow);
        (SlopeDifference, SlopeFlow) = (other.SlopeDifference, other.SlopeFlow);
    }

    /// <summary>Held pressure less reference, where it just opens or shuts, in Pa.</summary>
    public Pressure SetDifferentialPressure => SiUnits.Pressure(setting);

    /// <summary>The pressure on its spring side.</summary>
    public GaugePressure Reference => new(reference);

    /// <summary>The same regulator with a held pressure that moves with flow: up ahead of a bypass type, down behind a
    /// reducing type.</summary>
    /// <param name="pressureDifference">The change of the held pressure; not negative.</param>
    /// <param name="flow">The flow over which it changes by that; greater than zero.</param>
    /// <returns>The regulator.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public NetworkRegulator WithSlope(Pressure pressureDifference, VolumeFlow flow) =>
        new(this)
        {
            slope =
                Guard.NotNegative(pressureDifference, pressureDifference.InSi(), nameof(pressureDifference))
                / Guard.Positive(flow, flow.InSi(), nameof(flow)),
            SlopeDifference = pressureDifference,
            SlopeFlow = flow,
        };

    /// <summary>The same regulator, bypass type, with the return line's pressure pushing on the seat.</summary>
    /// <param name="seatOverNetDiaphragm">Seat area over diaphragm area less seat area, 0 to 1.</param>
    /// <returns>The regulator.</returns>
    /// <remarks>Return pressure lowers the held pressure by this part of it; the reference raises it by one and this part.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside what is allowed.</exception>
    public NetworkRegulator WithReturnInfluence(Ratio seatOverNetDiaphragm) =>
        new(this)
        {
            influence = Guard.InRange(
                seatOverNetDiaphragm,
                seatOverNetDiaphragm.InSi(),
                0,
                1,
                SiUnits.Ratio,
                nameof(seatOverNetDiaphragm)
            ),
        };

    internal double InfluenceSi => influence;

    /// <summary>What it loses open to its stop.</summary>
    internal Pressure FullyOpenLoss { get; }

    /// <summary>The flow of that loss.</summary>
    internal VolumeFlow FullyOpenFlow { get; }

    /// <summary>How much the held pressure changes; nothing without a slope.</summary>
    internal Pressure SlopeDifference { get; private init; }

    /// <summary>Over which flow.</summary>
    internal VolumeFlow SlopeFlow { get; private init; }

    internal RegulatorPart Part(bool bypass) =>
        new()
        {
            Bypass = bypass,
            Setting = setting,
            Reference = reference,
            Slope = slope,
            Influence = influence,
            Square = square,
        };
}
