using UnitsNet;

namespace FuelMath.Bench;

/// <summary>The limits for the acceptance of a set of injectors.</summary>
/// <remarks>Makers' data come first.</remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class AcceptanceLimits
{
    /// <summary>Creates limits of flow; those of leakage and coils are common practice unless set.</summary>
    /// <param name="spread">Largest spread of a matched set, (largest - smallest) / mean; greater than zero.</param>
    /// <param name="fromRating">Largest departure of one injector from the rating, to either side; greater than zero.</param>
    /// <param name="source">Where the limits come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public AcceptanceLimits(Ratio spread, Ratio fromRating, DataSource source)
        : this(
            spread,
            fromRating,
            source,
            LeakageLimit.CommonPractice,
            LeakageVerdict.DropVolume.Estimate,
            null,
            SiUnits.Ratio(0.05)
        ) { }

    private AcceptanceLimits(
        Ratio spread,
        Ratio fromRating,
        DataSource source,
        LeakageLimit leakage,
        LeakageVerdict.DropVolume drop,
        CoilBand? coil,
        Ratio coilFromMedian
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(leakage);
        ArgumentNullException.ThrowIfNull(drop);
        Guard.Positive(spread, spread.InSi());
        Guard.Positive(fromRating, fromRating.InSi());
        Guard.Positive(coilFromMedian, coilFromMedian.InSi());
        (Spread, FromRating, Source) = (spread, fromRating, source);
        (Leakage, Drop, Coil, CoilFromMedian) = (leakage, drop, coil, coilFromMedian);
    }

    /// <summary>
    /// Spread 2 %, from rating 5 %, one drop a minute, coils 5 % from the median. Source: [Common-practice] no single work.
    /// </summary>
    public static AcceptanceLimits CommonPractice { get; } =
        new(SiUnits.Ratio(0.02), SiUnits.Ratio(0.05), new DataSource("Common-practice", "rule of thumb"));

    /// <summary>Largest spread of a matched set.</summary>
    public Ratio Spread { get; }

    /// <summary>Largest departure of one injector from the rating.</summary>
    public Ratio FromRating { get; }

    /// <summary>Where the limits of flow come from.</summary>
    public DataSource Source { get; }

    /// <summary>The allowed leakage of a closed injector.</summary>
    public LeakageLimit Leakage { get; }

    /// <summary>The volume of a drop, used where readings and limit differ in their measure.</summary>
    public LeakageVerdict.DropVolume Drop { get; }

    /// <summary>The allowed band of coil resistance; null when not given.</summary>
    public CoilBand? Coil { get; }

    /// <summary>
    /// Largest departure of a coil from the median of the set; beyond it there is a finding but no rejection.
    /// </summary>
    public Ratio CoilFromMedian { get; }

    /// <summary>The same limits with another limit of leakage.</summary>
    /// <param name="leakage">The allowed leakage of a closed injector.</param>
    /// <param name="drop">The volume of a drop, used where readings and limit differ in their measure.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public AcceptanceLimits WithLeakage(LeakageLimit leakage, LeakageVerdict.DropVolume drop) =>
        new(Spread, FromRating, Source, leakage, drop, Coil, CoilFromMedian);

    /// <summary>The same limits with a band for coils.</summary>
    /// <param name="coil">The allowed band of coil resistance.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="coil"/> is null.</exception>
    public AcceptanceLimits WithCoil(CoilBand coil)
    {
        ArgumentNullException.ThrowIfNull(coil);
        return new(Spread, FromRating, Source, Leakage, Drop, coil, CoilFromMedian);
    }

    /// <summary>The same limits with another departure of a coil from the median.</summary>
    /// <param name="coilFromMedian">The largest departure; greater than zero.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coilFromMedian"/> is not greater than zero.</exception>
    public AcceptanceLimits WithCoilFromMedian(Ratio coilFromMedian) =>
        new(Spread, FromRating, Source, Leakage, Drop, Coil, coilFromMedian);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"spread {Spread}, from rating {FromRating}, leakage {Leakage}");
}
