using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>The verdict on readings of one coil against a band.</summary>
/// <remarks>
/// Each reading is converted to 20 °C, and their mean is judged. Undecided within half a step of the meter from an
/// edge.
/// </remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class CoilVerdict
{
    private readonly double ohms;

    /// <summary>Judges a coil.</summary>
    /// <param name="readings">One or more readings. Copied.</param>
    /// <param name="band">The allowed band of resistance.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public CoilVerdict(IEnumerable<Reading> readings, AcceptanceLimits.CoilBand band)
    {
        ArgumentNullException.ThrowIfNull(readings);
        readings = Lists.NoNulls(readings);
        ArgumentNullException.ThrowIfNull(band);
        (Readings, Band) = ([.. readings], band);
        Guard.AtLeast(1, Readings.Length, "A verdict on a coil", nameof(readings));
        ohms = MeanSi(Readings);
        double half = ohms * Readings.Max(r => r.StepShare) / 2;
        double inside = Math.Min(ohms - band.Least.InSi(), band.Most.InSi() - ohms);
        Verdict =
            inside >= half ? BenchVerdict.Accepted
            : inside <= -half ? BenchVerdict.Rejected
            : BenchVerdict.Undecided;
    }

    /// <summary>The readings.</summary>
    public ImmutableArray<Reading> Readings { get; }

    /// <summary>The allowed band of resistance.</summary>
    public AcceptanceLimits.CoilBand Band { get; }

    /// <summary>The verdict.</summary>
    public BenchVerdict Verdict { get; }

    /// <summary>Its resistance at 20 °C, in ohm.</summary>
    public ElectricResistance AtTwentyCelsius => SiUnits.ElectricResistance(ohms);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{AtTwentyCelsius}: {Verdict}");

    internal static double MeanSi(ImmutableArray<Reading> readings) =>
        readings.Average(r => r.Coil.AtTwentyCelsius.InSi());
}
