using System.Globalization;
using FuelMath.Fuels;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>One row of a bench report: a collected volume, or a dead time at a voltage.</summary>
internal sealed record BenchReading(
    string Stage,
    int Chamber,
    string Injector,
    Fuel Fluid,
    Pressure DifferentialPressure,
    Temperature FluidTemperature,
    VolumeFlow? StaticFlow,
    (ElectricPotential Voltage, Duration Value)? DeadTime
);

/// <summary>Reads a bench report: comma-separated, one header line, <c>#</c> for remarks, numbers in the header's units.</summary>
internal static class BenchReport
{
    private const string Header =
        "stage,chamber,injector,reading,fluid,differential pressure (kPa),fluid temperature (degC),collected volume (cm3),collection time (s),voltage (V),dead time (ms)";

    private static readonly Fuel[] Fluids =
    [
        StandardFuels.NHeptane,
        StandardFuels.IsoOctane,
        StandardFuels.PumpGasoline,
    ];

    internal static IReadOnlyList<BenchReading> Read(string path)
    {
        var readings = new List<BenchReading>();
        bool headed = false;
        int number = 0;
        foreach (string line in File.ReadLines(path))
        {
            number++;
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            if (!headed)
            {
                headed =
                    line == Header
                        ? true
                        : throw new FormatException(
                            $"{path}, line {number}: the header must be '{Header}'; it was '{line}'."
                        );
                continue;
            }

            readings.Add(new Row(path, number, line.Split(',')).ToReading());
        }

        return readings.Count > 0 ? readings : throw new FormatException($"{path}: there is no reading.");
    }

    private sealed class Row
    {
        private readonly string path;
        private readonly int number;
        private readonly string[] cells;

        internal Row(string path, int number, string[] cells)
        {
            (this.path, this.number, this.cells) = (path, number, cells);
            if (cells.Length != Header.Split(',').Length)
            {
                throw new FormatException(
                    $"{path}, line {number}: {Header.Split(',').Length} columns are expected; there are {cells.Length}."
                );
            }
        }

        internal BenchReading ToReading()
        {
            Fuel fluid =
                Fluids.FirstOrDefault(f => f.Name == cells[4])
                ?? throw Wrong(4, $"one of: {string.Join(", ", Fluids.Select(f => f.Name))}");
            return cells[3] switch
            {
                "static flow" => Common(fluid) with
                {
                    StaticFlow = Volume.FromCubicCentimeters(Positive(7)) / Duration.FromSeconds(Positive(8)),
                },
                "dead time" => Common(fluid) with
                {
                    DeadTime = (ElectricPotential.FromVolts(Positive(9)), Duration.FromMilliseconds(Positive(10))),
                },
                _ => throw Wrong(3, "'static flow' or 'dead time'"),
            };
        }

        private BenchReading Common(Fuel fluid) =>
            new(
                cells[0],
                int.TryParse(cells[1], NumberStyles.None, CultureInfo.InvariantCulture, out int chamber) && chamber > 0
                    ? chamber
                    : throw Wrong(1, "a whole number from 1"),
                cells[2],
                fluid,
                Pressure.FromKilopascals(Positive(5)),
                Temperature.FromDegreesCelsius(Number(6)),
                null,
                null
            );

        private double Positive(int column) =>
            Number(column) is > 0 and var value ? value : throw Wrong(column, "greater than zero");

        private double Number(int column) =>
            double.TryParse(
                cells[column],
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out double value
            )
                ? value
                : throw Wrong(column, "a number, with a point for decimals");

        private FormatException Wrong(int column, string allowed) =>
            new(
                $"{path}, line {number}, column '{Header.Split(',')[column]}': must be {allowed}; it was '{cells[column]}'."
            );
    }
}
