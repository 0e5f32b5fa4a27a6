using System.Globalization;
using DuckDB.NET.Data;
using FuelMath;
using FuelMath.Samples.Log;
using UnitsNet;

// Usage: Log [rows [folder]]
// Makes an invented log as a Parquet file, reads it with an embedded column engine whose functions are formulas of FuelMath,
// and asks what explains the errors of lambda by cell. Ends with 0 when it finds what was put into the log, else with 1.
int rows = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 200_000;
string folder = Directory.CreateDirectory(args.Length > 1 ? args[1] : Path.Combine("out", "log")).FullName;
string file = Path.Combine(folder, "log.parquet");

using var database = new DuckDBConnection("Data Source=:memory:");
database.Open();
InventedLog.Write(database, file, rows, seed: 20261129);
Cell.Register(database);
List<Cell> cells = Cell.Read(database, file);
foreach (Cell cell in cells)
{
    Print(
        $"{cell.Rpm, 6:0} rpm, {cell.Bar:0.00} bar: {cell.Rows, 6} rows and {cell.BadRows} without a result, {cell.Milliseconds:0.00} ms, lambda off by {100 * cell.Error, 5:0.00} %, a row scatters by {100 * cell.Scatter:0.00} %"
    );
}

// The mean of many rows scatters less, but what they share (the sensor itself) does not: half a percent at the least.
var diagnosis = new MixtureDiagnosis(
    WorkshopCar.Presumed(),
    cells.Select(cell => new MixtureObservation(
        string.Create(CultureInfo.InvariantCulture, $"{cell.Rpm:0} rpm, {cell.Bar:0.00} bar"),
        Duration.FromMinutes(2 / cell.Rpm),
        Lambda.Stoichiometric,
        new AbsolutePressure(Pressure.FromBars(cell.Bar)),
        WorkshopCar.Ambient,
        new InjectorConditions(
            [Pressure.FromBars(cell.Differential)],
            WorkshopCar.FuelTemperature,
            ElectricPotential.FromVolts(cell.Volts)
        ),
        [
            new MixtureObservation.BankReading(
                1,
                [Duration.FromMilliseconds(cell.Milliseconds)],
                Ratio.FromPercent(100),
                Lambda.FromRatio(1 + cell.Error),
                Ratio.FromDecimalFractions(Math.Max(0.005, cell.Scatter / Math.Sqrt(cell.Rows)))
            ),
        ]
    ))
);
MixtureDiagnosis.RankedCause first = diagnosis.Causes[0];
MixtureDiagnosis.Estimate estimate = first.Estimates[0];
Print($"First cause: {first.Name}: {estimate.What} {estimate.Value}, from {estimate.Low} to {estimate.High}");
foreach (MixtureDiagnosis.InseparableCause rival in first.CannotBeToldFrom)
{
    Print($"Cannot be told from: {rival.Name}");
}

string chart = Path.Combine(folder, "cells.svg");
CellChart.Write(chart, cells);
Print($"Chart: {chart}");
bool isFound =
    first.Cause == MixtureDiagnosis.Cause.DeadTime
    && estimate.Value is Duration later
    && Math.Abs(later.Seconds - WorkshopCar.OpensLaterBy) < 0.01e-3;
return isFound ? 0 : 1;

static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
