using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>The verdict on leakage readings of one injector against a limit.</summary>
/// <remarks>
/// <para>
/// Readings are judged condition by condition (pressure, fluid, temperature), and the worst decides: rejected if one is
/// rejected, else undecided if one is undecided. No leakage at one pressure proves nothing at a higher one.
/// </para>
/// <para>
/// Counted drops are judged by exact Poisson limits: accepted when so few drops would be improbable at the limit,
/// rejected when so many would be, else undecided. With 95 % and a limit of one a minute, three minutes without a drop
/// are accepted and one drop in a minute is not. A collected volume is judged with one step of the glass to either
/// side. Source: [Garwood-1936].
/// </para>
/// </remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class LeakageVerdict
{
    /// <summary>Judges leakage.</summary>
    /// <param name="readings">One or more readings. Copied.</param>
    /// <param name="limit">The allowed leakage.</param>
    /// <param name="drop">The volume of a drop, for readings in another measure than the limit.</param>
    /// <param name="confidence">
    /// Confidence level of an acceptance or a rejection by counted drops; 50 % to 99.99 %.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public LeakageVerdict(
        IEnumerable<Reading> readings,
        AcceptanceLimits.LeakageLimit limit,
        DropVolume drop,
        Ratio confidence
    )
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentNullException.ThrowIfNull(drop);
        _ = Student.Checked(confidence);
        (Readings, Limit, Drop, Confidence) = ([.. Lists.NoNulls(readings)], limit, drop, confidence);
        Guard.AtLeast(1, Readings.Length, "A verdict on leakage", nameof(readings));
        var conditions = new List<List<Reading>>();
        foreach (Reading reading in Readings)
        {
            List<Reading>? same = conditions.Find(c => c[0].Conditions.MatchFluid(reading.Conditions));
            if (same is null)
            {
                conditions.Add([reading]);
            }
            else
            {
                same.Add(reading);
            }
        }

        Conditions =
        [
            .. conditions
                .Select(c => new AtCondition([.. c], limit, drop, confidence))
                .OrderBy(c => Order(c.Verdict))
                .ThenByDescending(c => c.ShareOfLimit.InSi()),
        ];
        RestsOnDropVolume = Readings.Any(r => r.Drops.HasValue != limit.IsByDrops);
    }

    /// <summary>The readings.</summary>
    public ImmutableArray<Reading> Readings { get; }

    /// <summary>The allowed leakage.</summary>
    public AcceptanceLimits.LeakageLimit Limit { get; }

    /// <summary>The volume of a drop that was used where measures differ.</summary>
    public DropVolume Drop { get; }

    /// <summary>Confidence level of an acceptance or a rejection by counted drops.</summary>
    public Ratio Confidence { get; }

    /// <summary>The readings of each condition with their own verdict, the worst first.</summary>
    public ImmutableArray<AtCondition> Conditions { get; }

    /// <summary>The condition that decides.</summary>
    public AtCondition Worst => Conditions[0];

    /// <summary>The verdict: that of the worst condition.</summary>
    public BenchVerdict Verdict => Worst.Verdict;

    /// <summary>Whether the verdict depends on the volume of a drop, which may be an estimate.</summary>
    public bool RestsOnDropVolume { get; }

    /// <summary>The leakage at the worst condition, as a fraction of the limit.</summary>
    public Ratio ShareOfLimit => Worst.ShareOfLimit;

    /// <summary>The highest differential pressure at which leakage was read, in Pa.</summary>
    public Pressure HighestDifferentialPressure => SiUnits.Pressure(Readings.Max(r => r.Conditions.PressureSi));

    /// <summary>Formats the leakage at the worst condition, in the measure of the limit.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Worst.ToString();

    private static int Order(BenchVerdict verdict) =>
        verdict switch
        {
            BenchVerdict.Rejected => 0,
            BenchVerdict.Undecided => 1,
            _ => 2,
        };
}
