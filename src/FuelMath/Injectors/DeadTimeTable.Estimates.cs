using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <content>Values that were estimated from the others.</content>
public sealed partial class DeadTimeTable
{
    /// <summary>Whether a dead time of the table was estimated from the others.</summary>
    /// <param name="voltageIndex">The index in <see cref="Voltages"/>.</param>
    /// <param name="pressureIndex">The index in <see cref="DifferentialPressures"/>.</param>
    /// <returns>True when it was estimated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An index is outside the table.</exception>
    public bool IsEstimated(int voltageIndex, int pressureIndex) =>
        grid.ValueAt(voltageIndex, pressureIndex) >= 0 && estimated?[voltageIndex, pressureIndex] == true;

    /// <summary>
    /// Whether the dead time at a voltage and pressure is interpolated from values of which one or more were estimated.
    /// </summary>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <param name="differentialPressure">Inlet less discharge pressure; not negative.</param>
    /// <returns>True when it depends on an estimate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public bool RestsOnEstimateAt(ElectricPotential atInjector, Pressure differentialPressure)
    {
        double volts = Guard.Positive(atInjector, atInjector.InSi(), part: injector);
        double pascals = Guard.NotNegative(differentialPressure, differentialPressure.InSi(), part: injector);
        return HoldsEstimates
            && (
                from i in Around(grid.First.Knots, volts)
                from j in Around(grid.Second.Knots, pascals)
                select estimated![i, j]
            ).Contains(true);
    }

    /// <summary>The same table with some of its values marked as estimated from the others.</summary>
    /// <param name="estimated">
    /// True for each estimated value: a row for each voltage and a column for each pressure; one or more true. Copied.
    /// </param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="estimated"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// The marks differ in shape from the table, or none or all are set.
    /// </exception>
    public DeadTimeTable WithEstimates(bool[,] estimated)
    {
        ArgumentNullException.ThrowIfNull(estimated);
        if (estimated.GetLength(0) != Voltages.Length || estimated.GetLength(1) != DifferentialPressures.Length)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must have a row for each of {Voltages.Length:rows} voltages and a column for each of {DifferentialPressures.Length:columns} pressures; there are {estimated.GetLength(0):givenRows} rows and {estimated.GetLength(1):givenColumns} columns.",
                nameof(estimated),
                injector
            );
        }

        int marks = estimated.Cast<bool>().Count(e => e);
        return marks > 0 && marks < estimated.Length
            ? new(this, (bool[,])estimated.Clone())
            : throw new RefusedArgumentException(
                RefusalCode.AllAlike,
                "Must mark some values and not all of them.",
                nameof(estimated),
                injector
            );
    }

    /// <summary>The neighboring knots of a value; a single one where it lies on a knot.</summary>
    private static IEnumerable<int> Around(ImmutableArray<double> knots, double at)
    {
        int on = knots.IndexOf(at);
        int above = Math.Clamp(knots.Count(k => k <= at), 1, knots.Length - 1);
        return on >= 0 ? [on] : [above - 1, above];
    }
}
