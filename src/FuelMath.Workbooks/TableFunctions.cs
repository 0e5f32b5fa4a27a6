using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Workbooks;

/// <summary>The dead time of an injector from a table in a range of cells.</summary>
internal static class TableFunctions
{
    private static readonly DataSource InCells = new("Definition", "a range of cells");

    private static FormulaQuantity Voltage { get; } =
        FormulaCatalog.Named("PumpPower.Electric").Arguments.First(a => a.Name == "voltage").Quantity;

    private static FormulaQuantity Difference { get; } =
        FormulaCatalog.Named("Orifice.CarriedMassFlow").Arguments.First(a => a.Name == "differentialPressure").Quantity;

    private static FormulaQuantity DeadTime { get; } =
        FormulaCatalog.Named("Pulse.EffectiveWidth").Arguments.First(a => a.Name == "deadTime").Quantity;

    internal static SheetFunction DeadTimeFromTable { get; } =
        new(
            "DeadTimeFromTable",
            "The dead time of an injector, read between the values of a table; nothing beyond its ends",
            [
                new("voltage", "voltage at the injector, in V", "V", false),
                new("differentialPressure", "pressure across the injector, in kPa", "kPa", false),
                new("voltages", "the table's voltages, in V, rising", "V", true),
                new(
                    "differentialPressures",
                    "the table's pressures, in kPa, rising; one for a table over voltage",
                    "kPa",
                    true
                ),
                new(
                    "deadTimes",
                    "the dead times, in ms: a row for each voltage, a column for each pressure",
                    "ms",
                    true
                ),
            ],
            "dead time, in ms",
            "ms",
            "[Definition] straight lines between the values of the table",
            null,
            Prepare
        );

    private static SheetFunction.CellCalculation? Prepare(
        IReadOnlyList<object?> cells,
        IFormatProvider? writer,
        out CellError? error
    )
    {
        if (
            CellRange.Numbers(cells[2], new("voltages", Voltage), writer, out error) is not { } volts
            || CellRange.Numbers(cells[3], new("differentialPressures", Difference), writer, out error)
                is not { } pressures
            || CellRange.Numbers(cells[4], new("deadTimes", DeadTime), writer, out error) is not { } times
        )
        {
            return null;
        }

        DeadTimeTable table;
        try
        {
            table = Table(volts, pressures, times);
        }
        catch (ArgumentException refused)
        {
            error = CellError.Value(refused.Message);
            return null;
        }

        var voltage = new CellNumber("voltage", Voltage);
        var pressure = new CellNumber("differentialPressure", Difference);
        return one => Read(table, voltage.Read(one[0], writer), pressure.Read(one[1], writer));
    }

    private static object Read(DeadTimeTable table, object volts, object kilopascals)
    {
        if (volts is not double v)
        {
            return volts;
        }

        if (kilopascals is not double p)
        {
            return kilopascals;
        }

        try
        {
            return table.At(ElectricPotential.FromVolts(v), Pressure.FromKilopascals(p)).Si() * 1e3;
        }
        catch (OutsideTableException outside)
        {
            return CellError.NotAvailable(outside.Message);
        }
        catch (ArgumentException refused)
        {
            return CellError.Number(refused.Message);
        }
    }

    private static DeadTimeTable Table(double[,] volts, double[,] pressures, double[,] times)
    {
        ElectricPotential[] voltages = [.. volts.Cast<double>().Select(v => ElectricPotential.FromVolts(v))];
        Pressure[] differences = [.. pressures.Cast<double>().Select(p => Pressure.FromKilopascals(p))];
        if (differences.Length == 1 && times.Length == voltages.Length)
        {
            return DeadTimeTable.FromVoltage(
                voltages,
                differences[0],
                times.Cast<double>().Select(t => Duration.FromMilliseconds(t)),
                OutsideRange.Refuse,
                InCells
            );
        }

        var values = new Duration[times.GetLength(0), times.GetLength(1)];
        for (int i = 0; i < values.GetLength(0); i++)
        {
            for (int j = 0; j < values.GetLength(1); j++)
            {
                values[i, j] = Duration.FromMilliseconds(times[i, j]);
            }
        }

        return new(voltages, differences, values, OutsideRange.Refuse, InCells);
    }
}
