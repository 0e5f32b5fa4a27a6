using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A pressure regulator by its settings alone, of either type.</summary>
/// <remarks>
/// <para>
/// A bypass regulator holds the pressure upstream; a reducing one that downstream. Open to its stop either is a fixed
/// restriction. Source: [Definition] balance of forces on the diaphragm.
/// </para>
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class PlainRegulator : FlowPart
{
    private readonly double setting;
    private readonly double square;
    private readonly double slope;
    private readonly double influence;

    private PlainRegulator(
        bool isBypass,
        Pressure setDifferentialPressure,
        GaugePressure reference,
        Pressure fullyOpenLoss,
        VolumeFlow fullyOpenFlow,
        Density density
    )
    {
        setting = Guard.Positive(setDifferentialPressure, setDifferentialPressure.InSi());
        _ = NetworkChecks.NotBelowVacuum(reference);
        double loss = Guard.Positive(fullyOpenLoss, fullyOpenLoss.InSi());
        double flow = Guard.Positive(fullyOpenFlow, fullyOpenFlow.InSi());
        square = loss / (flow * flow) / Guard.Positive(density, density.InSi());
        (IsBypass, SetDifferentialPressure, Reference) = (isBypass, setDifferentialPressure, reference);
        (FullyOpenLoss, FullyOpenFlow, Density) = (fullyOpenLoss, fullyOpenFlow, density);
        (SlopePressureDifference, SlopeFlow) = (SiUnits.Pressure(0), fullyOpenFlow);
    }

    private PlainRegulator(
        PlainRegulator other,
        Pressure slopePressureDifference,
        VolumeFlow slopeFlow,
        Ratio influence
    )
        : this(
            other.IsBypass,
            other.SetDifferentialPressure,
            other.Reference,
            other.FullyOpenLoss,
            other.FullyOpenFlow,
            other.Density
        )
    {
        (SlopePressureDifference, SlopeFlow, SeatOverNetDiaphragm) = (slopePressureDifference, slopeFlow, influence);
        (slope, this.influence) = (slopePressureDifference.InSi() / slopeFlow.InSi(), influence.InSi());
    }

    /// <summary>Whether it holds the pressure upstream, rather than downstream.</summary>
    public bool IsBypass { get; }

    /// <summary>Held pressure less reference, where it just opens or closes.</summary>
    public Pressure SetDifferentialPressure { get; }

    /// <summary>The pressure on its spring side.</summary>
    public GaugePressure Reference { get; }

    /// <summary>Its pressure loss open to its stop.</summary>
    public Pressure FullyOpenLoss { get; }

    /// <summary>The flow of that loss.</summary>
    public VolumeFlow FullyOpenFlow { get; }

    /// <summary>Density of the fluid of that loss.</summary>
    public Density Density { get; }

    /// <summary>The change of the held pressure over <see cref="SlopeFlow"/>; zero without a slope.</summary>
    public Pressure SlopePressureDifference { get; }

    /// <summary>The flow of that change.</summary>
    public VolumeFlow SlopeFlow { get; }

    /// <summary>
    /// Seat area over diaphragm area less seat area: the influence of return-line pressure on the held pressure.
    /// </summary>
    public Ratio SeatOverNetDiaphragm { get; }

    /// <summary>A regulator that holds the pressure upstream by bypassing.</summary>
    /// <param name="setDifferentialPressure">Held pressure less reference, where it just opens; greater than zero.</param>
    /// <param name="reference">The pressure on its spring side; not below vacuum.</param>
    /// <param name="fullyOpenLoss">Its pressure loss open to its stop; greater than zero.</param>
    /// <param name="fullyOpenFlow">The flow of that loss; greater than zero.</param>
    /// <param name="density">Density of the fluid of that loss; greater than zero.</param>
    /// <returns>The regulator, without slope or influence of the return line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static PlainRegulator Bypass(
        Pressure setDifferentialPressure,
        GaugePressure reference,
        Pressure fullyOpenLoss,
        VolumeFlow fullyOpenFlow,
        Density density
    ) => new(true, setDifferentialPressure, reference, fullyOpenLoss, fullyOpenFlow, density);

    /// <summary>A regulator that holds the pressure downstream by throttling.</summary>
    /// <param name="setDifferentialPressure">
    /// Held pressure less reference, where it just closes; greater than zero.
    /// </param>
    /// <param name="reference">The pressure on its spring side; not below vacuum.</param>
    /// <param name="fullyOpenLoss">Its pressure loss open to its stop; greater than zero.</param>
    /// <param name="fullyOpenFlow">The flow of that loss; greater than zero.</param>
    /// <param name="density">Density of the fluid of that loss; greater than zero.</param>
    /// <returns>The regulator, without slope.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static PlainRegulator Reducing(
        Pressure setDifferentialPressure,
        GaugePressure reference,
        Pressure fullyOpenLoss,
        VolumeFlow fullyOpenFlow,
        Density density
    ) => new(false, setDifferentialPressure, reference, fullyOpenLoss, fullyOpenFlow, density);

    /// <summary>
    /// The same regulator with a held pressure that depends on flow: rising for a bypass regulator, falling for a
    /// reducing one.
    /// </summary>
    /// <param name="pressureDifference">The change of the held pressure; not negative.</param>
    /// <param name="flow">The flow over which it changes by that; greater than zero.</param>
    /// <returns>The regulator.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public PlainRegulator WithSlope(Pressure pressureDifference, VolumeFlow flow)
    {
        Guard.NotNegative(pressureDifference, pressureDifference.InSi());
        Guard.Positive(flow, flow.InSi());
        return new(this, pressureDifference, flow, SeatOverNetDiaphragm);
    }

    /// <summary>The same bypass regulator with return-line pressure acting on the seat.</summary>
    /// <param name="seatOverNetDiaphragm">Seat area over diaphragm area less seat area, 0 to 1.</param>
    /// <returns>The regulator.</returns>
    /// <remarks>
    /// Return-line pressure lowers the held pressure by this fraction of it; the reference raises it by one plus this
    /// fraction.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not from 0 to 1.</exception>
    /// <exception cref="InvalidOperationException">A reducing regulator has no return line.</exception>
    public PlainRegulator WithReturnInfluence(Ratio seatOverNetDiaphragm)
    {
        Guard.InRange(seatOverNetDiaphragm, seatOverNetDiaphragm.InSi(), 0, 1, SiUnits.Ratio);
        return IsBypass
            ? new(this, SlopePressureDifference, SlopeFlow, seatOverNetDiaphragm)
            : throw new RefusedOperationException(
                RefusalCode.NoReturnLine,
                "A reducing regulator has no return line to influence it."
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{(IsBypass ? "bypass" : "reducing")}, {SetDifferentialPressure}");

    /// <inheritdoc />
    internal override LawSettings Law =>
        new RegulatorSettings
        {
            Bypass = IsBypass,
            Setting = setting,
            Reference = Reference.Si,
            Slope = slope,
            Influence = influence,
            SquarePerDensity = square,
        };

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool ShutsIn => IsBypass;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces =>
        IsBypass ? LeakPlaces.BypassSeat | LeakPlaces.Diaphragm : LeakPlaces.Diaphragm;

    /// <inheritdoc />
    internal override ImmutableArray<string> KindInSystem => IsBypass ? ["BypassRegulator"] : ["ReducingRegulator"];
}
