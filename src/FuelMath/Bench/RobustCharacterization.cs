using System.Collections.Immutable;
using FuelMath.Internal;
using FuelMath.Uncertainty;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>Slope and dead time that nearly half of the readings can't spoil, and the readings that stand apart.</summary>
/// <remarks>
/// <para>
/// It finds a reading that is off; it removes none. A short pulse below the linear range stands apart as well without
/// being misread. The scatter is at least the resolution of the instrument over the root of twelve.
/// </para>
/// <para>
/// Source: [Siegel-1982] the line; [Iglewicz-Hoaglin-1993] the limit of 3.5 standard deviations; [JCGM-100] section
/// 4.3.7, resolution. Instances are immutable and safe to share between threads. Equality is by reference.
/// </para>
/// </remarks>
public sealed class RobustCharacterization
{
    private const double Limit = 3.5;

    private readonly RepeatedMedianLine line;

    /// <summary>Puts the line of medians through readings.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="NoSolutionException">Mass does not rise with pulse width.</exception>
    public RobustCharacterization(IEnumerable<DynamicFlowReading> readings)
    {
        Readings = ReadingChecks.OneLine(readings, nameof(readings));
        line = new(Readings.Select(r => r.WidthSi), Readings.Select(r => r.MassSi));
        if (line.Slope <= 0)
        {
            throw new NoSolutionException("a static flow", "Mass does not rise with pulse width.", "", double.NaN, 0);
        }

        Suspects = [.. Readings.Where((r, i) => Math.Abs(line.Residuals[i]) > Limit * Scatter(r))];
    }

    /// <summary>All readings, by rising pulse width.</summary>
    public ImmutableArray<DynamicFlowReading> Readings { get; }

    /// <summary>The slope, in kg/s.</summary>
    public MassFlow StaticMassFlow => SiUnits.MassFlow(line.Slope);

    /// <summary>The dead time, in s.</summary>
    public Duration DeadTime => SiUnits.Duration(-line.Intercept / line.Slope);

    /// <summary>Readings more than 3.5 standard deviations of the scatter away from the line.</summary>
    public ImmutableArray<DynamicFlowReading> Suspects { get; }

    private double Scatter(DynamicFlowReading reading) =>
        Math.Max(line.StandardDeviation, reading.MassSi * reading.Collected.ResolutionShare.InSi() / Math.Sqrt(12));
}
