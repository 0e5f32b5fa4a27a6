using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>A table of dead time in which some pairs of voltage and pressure were estimated from the others.</summary>
/// <remarks>
/// <para>
/// Each reading is fitted, by least squares, as the sum or the product of a term for its voltage and one for its
/// pressure. Real injectors follow such a pattern only roughly. Pairs that were read keep their readings. Every
/// estimate is marked in the table. Source: [Scheffe-1959] section 4.4, two-way layout with missing readings.
/// </para>
/// <para>Made by <see cref="DeadTimeSeries"/>.</para>
/// </remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class FilledDeadTimes
{
    internal FilledDeadTimes(
        DeadTimeGrid grid,
        FillPattern pattern,
        OutsideRange outside,
        DataSource source,
        string paramName
    )
    {
        Pattern = pattern;
        bool proportional = pattern == FillPattern.Proportional;
        if (proportional && !grid.AllPositive)
        {
            throw new RefusedArgumentException(
                RefusalCode.OutOfRange,
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
            throw new RefusedArgumentException(
                RefusalCode.NothingToFill,
                "Must have a pair that was not read; all of them were.",
                paramName
            );
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

    /// <summary>How dead time was assumed to change.</summary>
    public FillPattern Pattern { get; }

    /// <summary>Number of estimated values.</summary>
    public int Estimates { get; }

    /// <summary>
    /// The residual standard deviation of the readings about the pattern, in s: no estimate is better than that. Null
    /// where the readings are just enough, so that the pattern can't be tested.
    /// </summary>
    public Duration? Scatter { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Table}, {Estimates} estimated");

    private static void RefuseNegative(double seconds, string voltage, string pressure)
    {
        if (seconds < 0)
        {
            throw Guard.NoSolution(
                RefusalCode.EstimateNegative,
                "an estimate of dead time",
                $"At {voltage:voltage} and {pressure:pressure} it would be {Amount.Milliseconds(seconds):value}: read that pair."
            );
        }
    }
}
