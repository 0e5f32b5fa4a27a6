using FuelMath.Internal;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>The limits that a set of injectors is held against.</summary>
/// <remarks>Makers' data come first. Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class AcceptanceLimits
{
    /// <summary>Sets down limits.</summary>
    /// <param name="spread">Largest spread of a matched set, (largest - smallest) / mean; greater than zero.</param>
    /// <param name="fromRating">Largest departure of one injector from the rating, to either side; greater than zero.</param>
    /// <param name="source">Where the limits come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public AcceptanceLimits(Ratio spread, Ratio fromRating, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Guard.Positive(spread, spread.InSi(), nameof(spread));
        Guard.Positive(fromRating, fromRating.InSi(), nameof(fromRating));
        (Spread, FromRating, Source) = (spread, fromRating, source);
    }

    /// <summary>Spread 2 %, from rating 5 %. Source: [Common-practice] no single work.</summary>
    public static AcceptanceLimits CommonPractice { get; } =
        new(SiUnits.Ratio(0.02), SiUnits.Ratio(0.05), new DataSource("Common-practice", "rule of thumb"));

    /// <summary>Largest spread of a matched set.</summary>
    public Ratio Spread { get; }

    /// <summary>Largest departure of one injector from the rating.</summary>
    public Ratio FromRating { get; }

    /// <summary>Where the limits come from.</summary>
    public DataSource Source { get; }
}
