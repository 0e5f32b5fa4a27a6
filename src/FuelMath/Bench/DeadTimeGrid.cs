using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>Dead-time readings by voltage and pressure.</summary>
internal sealed class DeadTimeGrid
{
    private readonly ImmutableArray<DeadTimeReading> readings;

    internal DeadTimeGrid(ImmutableArray<DeadTimeReading> readings, string paramName)
    {
        Guard.AtLeast(2, readings.Length, "A dead-time table", paramName);
        if (readings.FirstOrDefault(r => (r.Conditions.Widths & WidthCorrections.Voltage) != 0) is { } corrected)
        {
            throw new RefusedArgumentException(
                RefusalCode.CorrectedAlready,
                $"Must come from widths that were not corrected for voltage, else it is what the correction leaves over; one has {corrected.AtInjector:voltage}, {corrected.Conditions.Driven:given}.",
                paramName
            );
        }

        if (readings.FirstOrDefault(r => !SameDriver(r, readings[0])) is { } other)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"Must share one driver; one has {other.Conditions.Driven:given}; another {readings[0].Conditions.Driven:other}.",
                paramName
            );
        }

        this.readings = readings;
        Volts = [.. readings.Select(r => r.VoltageSi).Distinct().Order()];
        Pascals = [.. readings.Select(r => r.Conditions.PressureSi).Distinct().Order()];
    }

    internal ImmutableArray<double> Volts { get; }

    internal ImmutableArray<double> Pascals { get; }

    internal void RefuseMissing(bool refuseRepeats, string paramName)
    {
        foreach (double volts in Volts)
        {
            foreach (double pascals in Pascals)
            {
                int found = At(volts, pascals).Count();
                if (found == 0 || (refuseRepeats && found > 1))
                {
                    throw new RefusedArgumentException(
                        RefusalCode.Count,
                        $"Must hold {1:exactly} for each voltage and pressure; {found:value} at {Voltage(volts):voltage} and {Differential(pascals):pressure}.",
                        paramName
                    );
                }
            }
        }
    }

    /// <summary>The mean of each pair, s; NaN where none was read.</summary>
    internal double[,] Means()
    {
        var means = new double[Volts.Length, Pascals.Length];
        for (int i = 0; i < Volts.Length; i++)
        {
            for (int j = 0; j < Pascals.Length; j++)
            {
                double[] all = [.. At(Volts[i], Pascals[j]).Select(r => r.DeadTime.InSi())];
                means[i, j] = all.Length == 0 ? double.NaN : Averages.Mean(all);
            }
        }

        return means;
    }

    internal DeadTimeTable ToTable(double[,] seconds, OutsideRange outside, DataSource source)
    {
        var values = new Duration[Volts.Length, Pascals.Length];
        for (int i = 0; i < Volts.Length; i++)
        {
            for (int j = 0; j < Pascals.Length; j++)
            {
                values[i, j] = SiUnits.Duration(seconds[i, j]);
            }
        }

        return Pascals.Length == 1
            ? DeadTimeTable.FromVoltage(
                Volts.Select(SiUnits.ElectricPotential),
                SiUnits.Pressure(Pascals[0]),
                values.Cast<Duration>(),
                outside,
                source
            )
            : new(Volts.Select(SiUnits.ElectricPotential), Pascals.Select(SiUnits.Pressure), values, outside, source);
    }

    /// <summary>Every reading as voltage row and pressure column of a layout.</summary>
    internal AdditiveLayout Layout(bool logarithms) =>
        new AdditiveLayout(
            readings.Select(r => Voltage(r.VoltageSi)),
            readings.Select(r => Differential(r.Conditions.PressureSi)),
            readings.Select(r => logarithms ? Math.Log(r.DeadTime.InSi()) : r.DeadTime.InSi())
        ).WithLeastDeviation(
            Averages.RootMeanSquare(
                readings.Select(r => r.Resolution.InSi() / (logarithms ? r.DeadTime.InSi() : 1) / Math.Sqrt(12))
            )
        );

    internal string Row(int voltage) => Voltage(Volts[voltage]);

    internal string Column(int pressure) => Differential(Pascals[pressure]);

    internal bool AllPositive => readings.All(r => r.DeadTime.InSi() > 0);

    private IEnumerable<DeadTimeReading> At(double volts, double pascals) =>
        readings.Where(r => r.VoltageSi == volts && r.Conditions.PressureSi == pascals);

    private static bool SameDriver(DeadTimeReading one, DeadTimeReading other) =>
        one.Conditions.Driver is { } driver
            ? other.Conditions.Driver is { } second && driver.Matches(second)
            : other.Conditions.Driver is null;

    private static string Voltage(double volts) => FormattableString.Invariant($"{volts} V");

    private static string Differential(double pascals) => FormattableString.Invariant($"{pascals / 1000} kPa");
}
