using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>Slope and dead time that nearly half of the readings can't spoil, and the readings that stand apart.</summary>
/// <remarks>
/// <para>
/// It finds a reading that is off; it removes none. A short pulse below the linear range stands apart as well without
/// being misread. The scatter is at least the resolution of the instrument over the root of twelve.
/// </para>
/// <para>
/// Of benches where nothing is off, at most the stated share has a suspect, with any number of readings at any widths, if
/// scatter is normal and as told. With four or five readings only what is far off can be told from scatter; with three
/// nothing can.
/// </para>
/// <para>
/// Source: [Siegel-1982] the line; [Cook-Weisberg-1982] section 2.2, the test of the readings that stand apart;
/// [JCGM-100] section F.2.2.1, resolution.
/// </para>
/// </remarks>
public sealed class RobustCharacterization
{
    private const double Rate = 0.05;

    private readonly RepeatedMedianLine line;

    /// <summary>Puts the line of medians through readings of pulses that scatter by the same mass.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="NoSolutionException">Mass does not rise with pulse width.</exception>
    public RobustCharacterization(IEnumerable<DynamicFlowReading> readings)
        : this(readings, PulseScatter.Constant) { }

    /// <summary>Puts the line of medians through readings.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <param name="scatter">How pulses scatter: a mass, a share of the mass, or both.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> or <paramref name="scatter"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="NoSolutionException">Mass does not rise with pulse width.</exception>
    public RobustCharacterization(IEnumerable<DynamicFlowReading> readings, PulseScatter scatter)
    {
        ArgumentNullException.ThrowIfNull(scatter);
        Readings = ReadingChecks.OneLine(readings, nameof(readings));
        Scatter = scatter;
        double[] x = [.. Readings.Select(r => r.WidthSi)];
        double[] y = [.. Readings.Select(r => r.MassSi)];
        line = new(x, y);
        if (line.Slope <= 0)
        {
            throw new NoSolutionException("a static flow", "Mass does not rise with pulse width.", "", double.NaN, 0);
        }

        // By the line, not by the readings, so that what is off does not set its own weight; where it has nothing, by them.
        double[] masses =
        [
            .. x.Select((at, i) => Math.Max(line.Intercept + (line.Slope * at), 0) is > 0 and var m ? m : y[i]),
        ];
        double[] weights = PulseLine.Weights([.. Readings], masses, scatter);
        Suspects =
        [
            .. MeanShift
                .Suspects(x, y, weights, [.. Readings.Select(PulseLine.Rounding)], Rate)
                .Select(i => Readings[i]),
        ];
    }

    /// <summary>How many of the benches where nothing is off have a suspect, at most.</summary>
    public static Ratio FalseSuspectRate => SiUnits.Ratio(Rate);

    /// <summary>All readings, by rising pulse width.</summary>
    public ImmutableArray<DynamicFlowReading> Readings { get; }

    /// <summary>How pulses were taken to scatter.</summary>
    public PulseScatter Scatter { get; }

    /// <summary>The slope, in kg/s.</summary>
    public MassFlow StaticMassFlow => SiUnits.MassFlow(line.Slope);

    /// <summary>The dead time, in s.</summary>
    public Duration DeadTime => SiUnits.Duration(-line.Intercept / line.Slope);

    /// <summary>Readings farther from the line than scatter puts them, but for the stated rate of false ones.</summary>
    public ImmutableArray<DynamicFlowReading> Suspects { get; }
}
