using UnitsNet;

namespace FuelMath;

/// <summary>The limits that an assessment holds a state against.</summary>
/// <remarks>
/// <see cref="CommonPractice"/> rests on rules of thumb of the trade and says so in every finding; makers' data come
/// first. Immutable and safe to share between threads. Equality is by reference.
/// </remarks>
public sealed class Limits
{
    /// <summary>Sets down limits.</summary>
    /// <param name="dutyCycle">Largest duty cycle of an injector; 10 % to 100 %.</param>
    /// <param name="pumpReserve">Least bypassed flow as a share of the flow drawn by the engine; 0 % to 1000 %.</param>
    /// <param name="pressureDeviation">Largest relative deviation of injector differential pressure from the controller's belief.</param>
    /// <param name="mixtureDeviation">Largest relative deviation of a chamber's lambda, to the lean side, from the lambda asked for.</param>
    /// <param name="voltageDrop">Largest voltage drop between source and pump or injector.</param>
    /// <param name="feedVelocity">Largest mean velocity on the pressure side.</param>
    /// <param name="suctionVelocity">Largest mean velocity ahead of a pump.</param>
    /// <param name="vaporMargin">Least difference between absolute pressure and vapor pressure anywhere in the path.</param>
    /// <param name="source">Where the limits come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is out of its range.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public Limits(
        Ratio dutyCycle,
        Ratio pumpReserve,
        Ratio pressureDeviation,
        Ratio mixtureDeviation,
        ElectricPotential voltageDrop,
        Speed feedVelocity,
        Speed suctionVelocity,
        Pressure vaporMargin,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        Guard.InRange(dutyCycle, dutyCycle.InSi(), 0.1, 1, SiUnits.Ratio, nameof(dutyCycle));
        Guard.InRange(pumpReserve, pumpReserve.InSi(), 0, 10, SiUnits.Ratio, nameof(pumpReserve));
        Guard.Positive(pressureDeviation, pressureDeviation.InSi(), nameof(pressureDeviation));
        Guard.Positive(mixtureDeviation, mixtureDeviation.InSi(), nameof(mixtureDeviation));
        Guard.Positive(voltageDrop, voltageDrop.InSi(), nameof(voltageDrop));
        Guard.Positive(feedVelocity, feedVelocity.InSi(), nameof(feedVelocity));
        Guard.Positive(suctionVelocity, suctionVelocity.InSi(), nameof(suctionVelocity));
        Guard.NotNegative(vaporMargin, vaporMargin.InSi(), nameof(vaporMargin));
        DutyCycle = dutyCycle;
        PumpReserve = pumpReserve;
        PressureDeviation = pressureDeviation;
        MixtureDeviation = mixtureDeviation;
        VoltageDrop = voltageDrop;
        FeedVelocity = feedVelocity;
        SuctionVelocity = suctionVelocity;
        VaporMarginDifference = vaporMargin;
        Source = source;
    }

    /// <summary>Rules of thumb of the trade. Source: [Common-practice] no single work.</summary>
    public static Limits CommonPractice { get; } =
        new(
            SiUnits.Ratio(0.85),
            SiUnits.Ratio(0.15),
            SiUnits.Ratio(0.03),
            SiUnits.Ratio(0.05),
            SiUnits.ElectricPotential(0.7),
            SiUnits.Speed(4),
            SiUnits.Speed(1.2),
            SiUnits.Pressure(20_000),
            new DataSource("Common-practice", "rule of thumb")
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

    /// <summary>Where the limits come from.</summary>
    public DataSource Source { get; }
}
