using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>A pressure-decay test: the leak rate between two readings, with its uncertainty.</summary>
/// <remarks>
/// <para>
/// A gauge shows that fuel leaves, not where: a leaking check valve, injector seat or regulator looks like a leak to
/// the outside (<see cref="LeakSuspects"/>). Rates are of liquid fuel at the conditions of the line.
/// </para>
/// <para>Caution: pressurized fuel sprays and ignites; see <see cref="ClosedVolume"/>.</para>
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public sealed partial class DecayTest
{
    /// <summary>
    /// The distance to the floor within which a pressure counts as at the floor, in standard uncertainties of a
    /// reading.
    /// </summary>
    private const double FloorMargin = 3;

    /// <summary>Expanded uncertainty over standard uncertainty, about 95 %. Source: [JCGM-100] section 6.3.3.</summary>
    private const double Coverage = 2;

    /// <summary>Least distance to the floor, Pa, for readings stated without uncertainty.</summary>
    private const double LeastMargin = 1000;

    /// <summary>Evaluates two readings.</summary>
    /// <param name="volume">The closed volume, described at the temperature of the first reading.</param>
    /// <param name="before">The first reading.</param>
    /// <param name="after">The second reading, later.</param>
    /// <param name="uncertainty">Standard uncertainties of all inputs, assumed independent.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// The second reading is not later, or the first temperature is not that of the volume.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is not above vacuum.</exception>
    /// <exception cref="NoSolutionException">The numbers are so far apart that the rate or its uncertainty is not finite.</exception>
    public DecayTest(ClosedVolume volume, Reading before, Reading after, Uncertainty uncertainty)
    {
        ArgumentNullException.ThrowIfNull(volume);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(uncertainty);
        double seconds = after.Seconds - before.Seconds;
        if (!(seconds > 0))
        {
            throw new RefusedArgumentException(
                RefusalCode.OutOfRange,
                $"Must be later than the first reading, at {before.Time:above}; it was at {after.Time:value}.",
                nameof(after)
            );
        }

        if (Math.Abs(before.Kelvins - volume.Kelvins) > 1e-6 * volume.Kelvins)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"Must be taken at the temperature that the volume is described at, {volume.Temperature.ToUnit(before.Temperature.Unit):exactly}; it was {before.Temperature:value}.",
                nameof(before)
            );
        }

        Volume = volume;
        Before = before;
        After = after;
        double absoluteBefore = volume.Absolute(before.Pressure, nameof(before));
        double absoluteAfter = volume.Absolute(after.Pressure, nameof(after));
        Budget = DecayBudget.Of(volume, before, after, uncertainty, absoluteBefore, absoluteAfter);
        Rate = SiUnits.VolumeFlow(Budget.Value * DecayBudget.RateUnit);
        LeakedVolume = SiUnits.Volume(Rate.InSi() * seconds);
        StandardUncertainty = SiUnits.VolumeFlow(Budget.CombinedStandardUncertainty * DecayBudget.RateUnit);
        Contributions =
        [
            .. Budget
                .Lines.Where(l => l.Contribution > 0)
                .OrderByDescending(l => l.Contribution)
                .Select(l => new Contribution(
                    l.Input.Name,
                    l.Contribution * DecayBudget.RateUnit,
                    StandardUncertainty.InSi()
                )),
        ];
        double margin = Math.Max(FloorMargin * uncertainty.Pascals, LeastMargin);
        IsAtFloor = absoluteAfter <= volume.Floor.Si + volume.Outside + margin;
        Estimates =
        [
            .. volume.Fuel.BulkModulus.Estimates,
            .. double.IsNaN(volume.VaporPressure)
                ?
                [
                    $"The vapor pressure of '{volume.Fuel.Name}' is not known at this temperature: a pressure that stands still may be vapor, not tightness.",
                ]
                : Array.Empty<string>(),
        ];
    }

    /// <summary>The closed volume.</summary>
    public ClosedVolume Volume { get; }

    /// <summary>The first reading.</summary>
    public Reading Before { get; }

    /// <summary>The second reading.</summary>
    public Reading After { get; }

    /// <summary>
    /// The volume that left between them, corrected for temperature; negative when the contents seem to have grown.
    /// </summary>
    public Volume LeakedVolume { get; }

    /// <summary>The mean rate between them.</summary>
    public VolumeFlow Rate { get; }

    /// <summary>Standard uncertainty of the rate. Source: [JCGM-100] section 5.1.2.</summary>
    public VolumeFlow StandardUncertainty { get; }

    /// <summary>Twice the standard uncertainty, about 95 %. Source: [JCGM-100] section 6.3.3.</summary>
    public VolumeFlow ExpandedUncertainty => SiUnits.VolumeFlow(Coverage * StandardUncertainty.InSi());

    /// <summary>The uncertainty budget of the rate: each input with its slope, contribution and share.</summary>
    public UncertaintyBudget Budget { get; }

    /// <summary>The contribution of each input, the largest first.</summary>
    public ImmutableArray<Contribution> Contributions { get; }

    /// <summary>
    /// Whether the pressure is at its floor, vapor pressure or ambient, where it stays with or without a leak.
    /// </summary>
    public bool IsAtFloor { get; }

    /// <summary>
    /// Whether the rate is negative beyond its expanded uncertainty: fuel can't leak in, so something else raises the
    /// pressure, most likely fuel that warms away from the thermometer, and may hide a leak of any size.
    /// </summary>
    public bool IsContradictory => Rate.InSi() + ExpandedUncertainty.InSi() < 0;

    /// <summary>Sentences that say what about it is an estimate or can't be excluded.</summary>
    public ImmutableArray<string> Estimates { get; }

    /// <summary>Judges the rate against a limit.</summary>
    /// <param name="limit">
    /// The largest acceptable rate, set by the person responsible for the car; greater than zero.
    /// </param>
    /// <returns>The verdict.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is not greater than zero.</exception>
    public Outcome Judge(VolumeFlow limit)
    {
        double most = Guard.Positive(limit, limit.InSi());
        double rate = Rate.InSi();
        double expanded = ExpandedUncertainty.InSi();
        return rate - expanded > most ? Outcome.Fails
            : IsAtFloor || IsContradictory ? Outcome.NotATest
            : rate + expanded <= most ? Outcome.Passes
            : Outcome.Undecided;
    }

    /// <summary>
    /// The warming of the fuel between the readings that would hide a leak if unnoticed: a pass is only valid if the
    /// mean temperature of all the trapped fuel certainly did not drift by it.
    /// </summary>
    /// <param name="leak">The leak, such as the limit; greater than zero.</param>
    /// <returns>The warming, in K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The leak is not greater than zero.</exception>
    /// <exception cref="InvalidOperationException">
    /// The walls expand more than fuel and gas, so warming can't hide a leak.
    /// </exception>
    public TemperatureDelta WarmingThatHides(VolumeFlow leak)
    {
        double lost = Guard.Positive(leak, leak.InSi()) * (After.Seconds - Before.Seconds);
        double perKelvin =
            (Volume.Liquid * Volume.Expansion)
            + (Volume.Gas / (Volume.Absolute(After.Pressure, nameof(After)) * Before.Kelvins));
        return perKelvin > 0
            ? SiUnits.TemperatureDelta(lost / perKelvin)
            : throw new RefusedOperationException(
                RefusalCode.WarmingHidesLeak,
                "The walls expand by more than fuel and gas: warming lowers the pressure and hides no leak."
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"leak {Rate}, to either side {ExpandedUncertainty}");
}
