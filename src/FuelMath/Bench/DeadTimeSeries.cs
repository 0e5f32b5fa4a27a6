using UnitsNet;

namespace FuelMath.Bench;

/// <summary>Builds a table from dead times at several voltages and, if given, pressures.</summary>
/// <seealso href="../guide/bench.html">Bench</seealso>
public static class DeadTimeSeries
{
    /// <summary>The table of characterizations.</summary>
    /// <param name="series">One characterization for each voltage and pressure, at two or more voltages.</param>
    /// <param name="outside">The behavior beyond the edges.</param>
    /// <param name="source">Where the readings come from.</param>
    /// <returns>The table; nothing in it is estimated.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A pair of voltage and pressure is missing or occurs twice, widths were corrected, drivers differ, or a dead time
    /// is negative or rises with voltage.
    /// </exception>
    public static DeadTimeTable ToTable(
        IEnumerable<PulseCharacterization> series,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(series);
        series = Lists.NoNulls(series);
        ArgumentNullException.ThrowIfNull(source);
        var grid = new DeadTimeGrid([.. series.Select(c => c.ToDeadTimeReading())], nameof(series));
        grid.RefuseMissing(true, nameof(series));
        return grid.ToTable(grid.Means(), outside, source);
    }

    /// <summary>The table of readings; repeats of a pair are averaged.</summary>
    /// <param name="readings">One or more readings for each voltage and pressure, at two or more voltages.</param>
    /// <param name="outside">The behavior beyond the edges.</param>
    /// <param name="source">Where the readings come from.</param>
    /// <returns>The table; nothing in it is estimated.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A pair of voltage and pressure is missing, widths were corrected, drivers differ, or a dead time is negative or rises
    /// with voltage.
    /// </exception>
    public static DeadTimeTable FromReadings(
        IEnumerable<DeadTimeReading> readings,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(readings);
        readings = Lists.NoNulls(readings);
        ArgumentNullException.ThrowIfNull(source);
        var grid = new DeadTimeGrid([.. readings], nameof(readings));
        grid.RefuseMissing(false, nameof(readings));
        return grid.ToTable(grid.Means(), outside, source);
    }

    /// <summary>The table of an incomplete set, its missing pairs estimated from the others.</summary>
    /// <param name="readings">Readings at two or more voltages and two or more pressures, with some pairs missing.</param>
    /// <param name="pattern">How dead time is assumed to change with voltage and pressure.</param>
    /// <param name="outside">The behavior beyond the edges.</param>
    /// <param name="source">Where the readings come from.</param>
    /// <returns>The table, with its estimates marked. Pairs that were read keep their readings.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// No pair is missing; the readings are not connected through common voltages and pressures; widths were corrected;
    /// drivers differ; a dead time is not greater than zero; or the table would rise with voltage.
    /// </exception>
    /// <exception cref="NoSolutionException">An estimate would be negative.</exception>
    public static FilledDeadTimes Fill(
        IEnumerable<DeadTimeReading> readings,
        FilledDeadTimes.FillPattern pattern,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(readings);
        readings = Lists.NoNulls(readings);
        ArgumentNullException.ThrowIfNull(source);
        return new(new DeadTimeGrid([.. readings], nameof(readings)), pattern, outside, source, nameof(readings));
    }
}
