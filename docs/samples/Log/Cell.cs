using DuckDB.NET.Data;
using FuelMath.Formulas;

namespace FuelMath.Samples.Log;

/// <summary>The means of a log's rows near one speed and load.</summary>
/// <param name="Rpm">Mean speed, rpm.</param>
/// <param name="Bar">Mean manifold pressure, bar absolute.</param>
/// <param name="Volts">Mean supply, V.</param>
/// <param name="Differential">Mean pressure across the injectors, bar.</param>
/// <param name="Milliseconds">Mean pulse width, ms.</param>
/// <param name="Error">Mean of lambda over the lambda that was meant, less one.</param>
/// <param name="Scatter">Standard deviation of a single row.</param>
/// <param name="Rows">Rows with a result.</param>
/// <param name="BadRows">Rows without one.</param>
internal sealed record Cell(
    double Rpm,
    double Bar,
    double Volts,
    double Differential,
    double Milliseconds,
    double Error,
    double Scatter,
    long Rows,
    long BadRows
)
{
    /// <summary>One statement: each row by the formulas of FuelMath, then means, counts and scatter by cell.</summary>
    private const string Statement = """
        WITH by_row AS (
            SELECT *, sensor_lambda / meant_lambda(air_mg * 1e-6, delivered_mass(width_ms / 1000, supply_v, differential_bar * 1e5))
                AS ratio
            FROM read_parquet($file)
        )
        SELECT avg(speed_rpm), avg(manifold_bar), avg(supply_v), avg(differential_bar),
            avg(width_ms) FILTER (NOT isnan(ratio)), avg(ratio - 1) FILTER (NOT isnan(ratio)),
            stddev_samp(ratio) FILTER (NOT isnan(ratio)), count(*) FILTER (NOT isnan(ratio)), count(*) FILTER (isnan(ratio))
        FROM by_row
        GROUP BY round(speed_rpm / 500), round(manifold_bar / 0.25)
        HAVING count(*) FILTER (NOT isnan(ratio)) >= 100
        ORDER BY avg(speed_rpm), avg(manifold_bar)
        """;

    /// <summary>Makes the formulas functions of the database. A row that a checked call would refuse gives "not a number".</summary>
    internal static void Register(DuckDBConnection database)
    {
        (double flow, double rated, double density) = (
            WorkshopCar.RatedMassFlow,
            WorkshopCar.RatedDensity,
            WorkshopCar.FuelDensity
        );
        FormulaInfo delivered = WorkshopCar.DeliveredMass;
        database.RegisterScalarFunction<double, double, double, double>(
            "delivered_mass",
            (width, volts, pascals) => Checked(delivered, [flow, 3e5, rated, width, volts, pascals, density])
        );
        FormulaInfo lambda = FormulaCatalog.Named("Combustion.Lambda");
        double stoichiometric = WorkshopCar.StoichiometricRatio;
        database.RegisterScalarFunction<double, double, double>(
            "meant_lambda",
            (air, fuel) => Checked(lambda, [air, fuel, stoichiometric])
        );
    }

    internal static List<Cell> Read(DuckDBConnection database, string file)
    {
        using DuckDBCommand command = database.CreateCommand();
        command.CommandText = Statement;
        command.Parameters.Add(new DuckDBParameter("file", file));
        using DuckDBDataReader reader = command.ExecuteReader();
        var cells = new List<Cell>();
        while (reader.Read())
        {
            double[] means = [.. Enumerable.Range(0, 7).Select(reader.GetDouble)];
            cells.Add(
                new(
                    means[0],
                    means[1],
                    means[2],
                    means[3],
                    means[4],
                    means[5],
                    means[6],
                    reader.GetInt64(7),
                    reader.GetInt64(8)
                )
            );
        }

        return cells;
    }

    private static double Checked(FormulaInfo formula, ReadOnlySpan<double> arguments) =>
        formula.TryCalculate(FormulaInfo.CallUnits.Si, arguments, out double value, out _) ? value : double.NaN;
}
