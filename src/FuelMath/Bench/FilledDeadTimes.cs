using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>A table of dead time of which some pairs of voltage and pressure were estimated from the others.</summary>
/// <remarks>
/// <para>
/// By least squares, each reading is a voltage's share and a pressure's share together: added, or multiplied. That is a
/// pattern that real injectors follow roughly, not a law. Pairs that were read keep what was read. Every estimate is marked
/// in the table. Source: [Scheffe-1959] section 4.4, two-way layout with missing readings.
/// </para>
/// <para>Made by <see cref="DeadTimeSeries"/>.</para>
/// </remarks>
public sealed class FilledDeadTimes
{
    internal FilledDeadTimes(
        DeadTimeGrid grid,
        DeadTimePattern pattern,
        OutsideRange outside,
        DataSource source,
        string paramName
    )
    {
        Pattern = pattern;
        bool proportional = pattern == DeadTimePattern.Proportional;
        if (proportional && !grid.AllPositive)
        {
            throw new ArgumentException(
                "Must be greater than zero, each of them, for a pattern that multiplies.",
                paramName
            );
        }

        double[,] seconds = grid.Means();
        AdditiveLayout layout = grid.Layout(proportional);
        var marks = new bool[seconds.GetLength(0), seconds.GetLength(1)];
        for (int i = 0; i < marks.GetLength(0); i++)
        {
            for (int j = 0; j < marks.GetLength(1); j++)
            {
                if (double.IsNaN(seconds[i, j]))
                {
                    double estimate = layout.At(grid.Row(i), grid.Column(j));
                    seconds[i, j] = proportional ? Math.Exp(estimate) : estimate;
                    marks[i, j] = true;
                    Estimates++;
                    RefuseNegative(seconds[i, j], grid.Row(i), grid.Column(j));
                }
            }
        }

        if (Estimates == 0)
        {
            throw new ArgumentException("Must have a pair that was not read; all of them were.", paramName);
        }

        Table = grid.ToTable(seconds, outside, source).WithEstimates(marks);
        if (layout.DegreesOfFreedom > 0)
        {
            double scatter = layout.ErrorStandardDeviation();
            Scatter = SiUnits.Duration(proportional ? scatter * Math.Exp(layout.Mean) : scatter);
        }
    }

    /// <summary>The table, with its estimates marked.</summary>
    public DeadTimeTable Table { get; }

    /// <summary>How dead time was taken to change.</summary>
    public DeadTimePattern Pattern { get; }

    /// <summary>How many values are estimates.</summary>
    public int Estimates { get; }

    /// <summary>
    /// How far the readings lie off the pattern, one standard deviation, in s: an estimate is no better than that. None where
    /// there are just enough readings, so that nothing speaks for or against the pattern.
    /// </summary>
    public Duration? Scatter { get; }

    private static void RefuseNegative(double seconds, string voltage, string pressure)
    {
        if (seconds < 0)
        {
            throw Guard.NoSolution(
                "an estimate of dead time",
                FormattableString.Invariant(
                    $"At {voltage} and {pressure} it would be {seconds * 1000:0.###} ms: read that pair."
                )
            );
        }
    }
}
