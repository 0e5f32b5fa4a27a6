using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The limits that an assessment holds a state against.</summary>
/// <remarks>
/// <see cref="CommonPractice"/> rests on rules of thumb of the trade and says so in every finding; makers' data come
/// first.
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed partial class Limits
{
    /// <summary>Creates limits. Internal: <see cref="With"/> is the way in, so that one limit more does not break a caller.</summary>
    /// <param name="dutyCycle">Largest duty cycle of an injector; 10 % to 100 %.</param>
    /// <param name="pumpReserve">Least bypassed flow as a share of the flow drawn by the engine; 0 % to 1000 %.</param>
    /// <param name="pressureDeviation">Largest relative deviation of injector differential pressure from the controller's belief.</param>
    /// <param name="mixtureDeviation">Largest relative deviation of a chamber's lambda, to the lean side, from the lambda asked for.</param>
    /// <param name="voltageDrop">Largest voltage drop between source and pump or injector.</param>
    /// <param name="feedVelocity">Largest mean velocity on the pressure side.</param>
    /// <param name="suctionVelocity">Largest mean velocity ahead of a pump.</param>
    /// <param name="vaporMargin">Least difference between absolute pressure and vapor pressure anywhere in the path.</param>
    /// <param name="lowestCorrection">Least factor on the fuel that the controller's correction applies; above 0 % and up to 100 %.</param>
    /// <param name="highestCorrection">Greatest factor on the fuel that it applies; 100 % to 1000 %.</param>
    /// <param name="source">Where the limits come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is out of its range.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    internal Limits(
        Ratio dutyCycle,
        Ratio pumpReserve,
        Ratio pressureDeviation,
        Ratio mixtureDeviation,
        ElectricPotential voltageDrop,
        Speed feedVelocity,
        Speed suctionVelocity,
        Pressure vaporMargin,
        Ratio lowestCorrection,
        Ratio highestCorrection,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        Guard.InRange(dutyCycle, dutyCycle.InSi(), 0.1, 1, SiUnits.Ratio);
        Guard.InRange(pumpReserve, pumpReserve.InSi(), 0, 10, SiUnits.Ratio);
        Guard.Positive(pressureDeviation, pressureDeviation.InSi());
        Guard.Positive(mixtureDeviation, mixtureDeviation.InSi());
        Guard.Positive(voltageDrop, voltageDrop.InSi());
        Guard.Positive(feedVelocity, feedVelocity.InSi());
        Guard.Positive(suctionVelocity, suctionVelocity.InSi());
        Guard.NotNegative(vaporMargin, vaporMargin.InSi());
        _ = new MixtureLimits(lowestCorrection, highestCorrection, mixtureDeviation, source);
        DutyCycle = dutyCycle;
        PumpReserve = pumpReserve;
        PressureDeviation = pressureDeviation;
        MixtureDeviation = mixtureDeviation;
        VoltageDrop = voltageDrop;
        FeedVelocity = feedVelocity;
        SuctionVelocity = suctionVelocity;
        VaporMarginDifference = vaporMargin;
        (LowestCorrection, HighestCorrection) = (lowestCorrection, highestCorrection);
        Source = source;
    }

    /// <summary>Rules of thumb of the trade. Source: [Common-practice] no single work.</summary>
    public static Limits CommonPractice { get; } =
        new(
            SiUnits.Ratio(0.85),
            SiUnits.Ratio(0.15),
            SiUnits.Ratio(0.03),
            MixtureLimits.CommonPractice.LeanDeviation,
            SiUnits.ElectricPotential(0.7),
            SiUnits.Speed(4),
            SiUnits.Speed(1.2),
            SiUnits.Pressure(20_000),
            MixtureLimits.CommonPractice.LowestCorrection,
            MixtureLimits.CommonPractice.HighestCorrection,
            MixtureLimits.CommonPractice.Source
        );

    /// <summary>Largest duty cycle of an injector.</summary>
    public Ratio DutyCycle { get; }

    /// <summary>Least bypassed flow as a share of the flow drawn by the engine.</summary>
    public Ratio PumpReserve { get; }

    /// <summary>Largest relative deviation of injector differential pressure from the controller's belief.</summary>
    public Ratio PressureDeviation { get; }

    /// <summary>Largest relative deviation of a chamber's lambda, to the lean side, from the lambda asked for.</summary>
    public Ratio MixtureDeviation { get; }

    /// <summary>Largest voltage drop between source and pump or injector.</summary>
    public ElectricPotential VoltageDrop { get; }

    /// <summary>Largest mean velocity on the pressure side.</summary>
    public Speed FeedVelocity { get; }

    /// <summary>Largest mean velocity ahead of a pump.</summary>
    public Speed SuctionVelocity { get; }

    /// <summary>Least difference between absolute pressure and vapor pressure anywhere in the path.</summary>
    public Pressure VaporMarginDifference { get; }

    /// <summary>Least factor on the fuel that the controller's correction applies.</summary>
    public Ratio LowestCorrection { get; }

    /// <summary>Greatest factor on the fuel that the controller's correction applies.</summary>
    public Ratio HighestCorrection { get; }

    /// <summary>Where the limits come from that are not among <see cref="Own"/>.</summary>
    public DataSource Source { get; }

    /// <summary>What the owner set in place of others, in the order set.</summary>
    public ImmutableArray<OwnLimit> Own { get; private init; } = [];

    /// <summary>The limits before the first of the owner's; null where there is none.</summary>
    internal Limits? Standing { get; private init; }

    /// <summary>Where a limit comes from: for one of the owner's it is the reason.</summary>
    /// <param name="kind">Which limit.</param>
    /// <returns>The source; of an owner's limit its key is <c>Owner</c>.</returns>
    public DataSource SourceOf(Kind kind) => Own.FirstOrDefault(o => o.Kind == kind)?.Source ?? Source;

    /// <summary>The same limits with one of the owner's in place of another.</summary>
    /// <param name="own">The owner's limit, with its reason.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="own"/> is null.</exception>
    /// <exception cref="ArgumentException">The owner set that limit already.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is out of the limit's range.</exception>
    public Limits With(OwnLimit own)
    {
        ArgumentNullException.ThrowIfNull(own);
        if (Own.Any(o => o.Kind == own.Kind))
        {
            throw new RefusedArgumentException(
                RefusalCode.Duplicate,
                $"Must set each limit once; {own.Kind:given} is set already.",
                nameof(own)
            );
        }

        Ratio Share(Kind kind, Ratio now) => own.Kind == kind ? (Ratio)own.Value : now;
        return new(
            Share(Kind.DutyCycle, DutyCycle),
            Share(Kind.PumpReserve, PumpReserve),
            Share(Kind.PressureDeviation, PressureDeviation),
            Share(Kind.MixtureDeviation, MixtureDeviation),
            own.Kind == Kind.VoltageDrop ? (ElectricPotential)own.Value : VoltageDrop,
            own.Kind == Kind.FeedVelocity ? (Speed)own.Value : FeedVelocity,
            own.Kind == Kind.SuctionVelocity ? (Speed)own.Value : SuctionVelocity,
            own.Kind == Kind.VaporMargin ? (Pressure)own.Value : VaporMarginDifference,
            Share(Kind.LowestCorrection, LowestCorrection),
            Share(Kind.HighestCorrection, HighestCorrection),
            Source
        )
        {
            Own = Own.Add(own),
            Standing = Standing ?? this,
        };
    }

    /// <summary>The value of a limit.</summary>
    /// <param name="kind">Which limit.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is none of the choices.</exception>
    public IQuantity ValueOf(Kind kind) =>
        kind switch
        {
            Kind.DutyCycle => DutyCycle,
            Kind.PumpReserve => PumpReserve,
            Kind.PressureDeviation => PressureDeviation,
            Kind.MixtureDeviation => MixtureDeviation,
            Kind.VoltageDrop => VoltageDrop,
            Kind.FeedVelocity => FeedVelocity,
            Kind.SuctionVelocity => SuctionVelocity,
            Kind.VaporMargin => VaporMarginDifference,
            Kind.LowestCorrection => LowestCorrection,
            Kind.HighestCorrection => HighestCorrection,
            _ => throw Guard.NoChoice(kind),
        };

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"duty cycle {DutyCycle}, pump reserve {PumpReserve}, mixture {MixtureDeviation}");
}
