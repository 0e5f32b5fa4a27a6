using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// Robust slope and dead time, which tolerate outliers in nearly half of the readings, and the outliers.
/// </summary>
/// <remarks>
/// <para>
/// It finds outliers and removes none. A short pulse below the linear range also shows as an outlier without being
/// misread. The scatter is at least the resolution of the instrument over the square root of twelve.
/// </para>
/// <para>
/// Among sets without outliers at most the stated fraction has a suspect, for any number of readings at any widths, if
/// the scatter is normal and as specified. With four or five readings only a large error can be told from scatter; with
/// three, none can.
/// </para>
/// <para>
/// Source: [Siegel-1982] the line; [Cook-Weisberg-1982] section 2.2, the test of outliers; [JCGM-100] section F.2.2.1,
/// resolution.
/// </para>
/// </remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed class RobustCharacterization
{
    private const double Rate = 0.05;

    private readonly RepeatedMedianLine line;

    /// <summary>Fits the line of repeated medians to readings of pulses with constant scatter.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="NoSolutionException">Mass does not rise with pulse width.</exception>
    public RobustCharacterization(IEnumerable<DynamicFlowReading> readings)
        : this(readings, PulseCharacterization.PulseScatter.Constant) { }

    /// <summary>Fits the line of repeated medians to readings.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <param name="scatter">The scatter of pulses: constant, proportional to the mass, or both.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> or <paramref name="scatter"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="NoSolutionException">Mass does not rise with pulse width.</exception>
    public RobustCharacterization(IEnumerable<DynamicFlowReading> readings, PulseCharacterization.PulseScatter scatter)
    {
        ArgumentNullException.ThrowIfNull(scatter);
        Readings = ReadingChecks.OneLine(readings, nameof(readings));
        Scatter = scatter;
        double[] x = [.. Readings.Select(r => r.WidthSi)];
        double[] y = [.. Readings.Select(r => r.MassSi)];
        line = new(x, y);
        if (line.Slope <= 0)
        {
            throw Guard.NoSolution(RefusalCode.MustRise, "a static flow", "Mass does not rise with pulse width.");
        }

        // Masses come from the line, not from the readings, so that an outlier does not set its own weight; from the
        // readings where the line is not positive.
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

    /// <summary>The largest fraction of sets without outliers that have a suspect.</summary>
    public static Ratio FalseSuspectRate => SiUnits.Ratio(Rate);

    /// <summary>All readings, by rising pulse width.</summary>
    public ImmutableArray<DynamicFlowReading> Readings { get; }

    /// <summary>The assumed scatter of pulses.</summary>
    public PulseCharacterization.PulseScatter Scatter { get; }

    /// <summary>The slope, in kg/s.</summary>
    public MassFlow StaticMassFlow => SiUnits.MassFlow(line.Slope);

    /// <summary>The dead time, in s.</summary>
    public Duration DeadTime => SiUnits.Duration(-line.Intercept / line.Slope);

    /// <summary>
    /// Readings farther from the line than scatter explains, apart from the stated rate of false suspects.
    /// </summary>
    public ImmutableArray<DynamicFlowReading> Suspects { get; }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{StaticMassFlow}, dead time {DeadTime}, {Suspects.Length} suspects");
}
