using DuckDB.NET.Data;

namespace FuelMath.Samples.Log;

/// <summary>A log made from a seed: the controller meters for lambda 1, and injectors open later than it was told.</summary>
internal static class InventedLog
{
    private static readonly (double Rpm, double Bar, double AirMilligrams)[] Places =
    [
        (900, 0.35, 150),
        (2500, 0.50, 230),
        (2500, 0.95, 470),
        (4000, 1.30, 680),
        (6000, 1.80, 950),
    ];

    /// <summary>Writes the log as a Parquet file.</summary>
    internal static void Write(DuckDBConnection database, string file, int rows, int seed)
    {
        using DuckDBCommand command = database.CreateCommand();
        command.CommandText =
            "CREATE TABLE log (speed_rpm DOUBLE, manifold_bar DOUBLE, supply_v DOUBLE, differential_bar DOUBLE, "
            + "width_ms DOUBLE, air_mg DOUBLE, sensor_lambda DOUBLE)";
        command.ExecuteNonQuery();
        using (DuckDBAppender appender = database.CreateAppender("log"))
        {
            var random = new Random(seed);
            for (int i = 0; i < rows; i++)
            {
                Append(appender, random);
            }
        }

        command.CommandText = $"COPY log TO '{file}' (FORMAT parquet)";
        command.ExecuteNonQuery();
        command.CommandText = "DROP TABLE log";
        command.ExecuteNonQuery();
    }

    private static void Append(DuckDBAppender appender, Random random)
    {
        (double rpm, double bar, double air) = Places[random.Next(Places.Length)];
        double load = 1 + (0.04 * Normal(random));
        (double volts, double differential) = (13.8 + (0.15 * Normal(random)), 3 + (0.02 * Normal(random)));
        double flow =
            WorkshopCar.RatedMassFlow
            * Math.Sqrt(differential / 3 * (WorkshopCar.FuelDensity / WorkshopCar.RatedDensity));
        double meant = air * load * 1e-6 / WorkshopCar.StoichiometricRatio;
        double width = (meant / flow) + DeadTime(volts);
        double delivered = flow * (width - DeadTime(volts) - WorkshopCar.OpensLaterBy);
        double lambda = air * load * 1e-6 / (WorkshopCar.StoichiometricRatio * delivered);
        appender
            .CreateRow()
            .AppendValue(rpm * (1 + (0.01 * Normal(random))))
            .AppendValue(bar * load)
            .AppendValue(volts)
            .AppendValue(differential)
            .AppendValue(random.Next(200) == 0 ? double.NaN : 1e3 * width) // gaps, as in any log
            .AppendValue(air * load)
            .AppendValue(lambda * (1 + (0.015 * Normal(random))))
            .EndRow();
    }

    private static double DeadTime(double volts)
    {
        int at = Array.FindLastIndex(WorkshopCar.Volts, WorkshopCar.Volts.Length - 2, v => v <= volts);
        double part = (volts - WorkshopCar.Volts[at]) / (WorkshopCar.Volts[at + 1] - WorkshopCar.Volts[at]);
        return ((1 - part) * WorkshopCar.DeadTimes[at]) + (part * WorkshopCar.DeadTimes[at + 1]);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
