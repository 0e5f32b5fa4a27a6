using System.Globalization;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>One row of a bench report: a collected volume, or a dead time at a voltage.</summary>
internal sealed record BenchReading(
    string Stage,
    int Chamber,
    string Injector,
    StaticFlowReading? StaticFlow,
    DeadTimeReading? DeadTime
);

/// <summary>Reads a bench report: comma-separated, one header line, <c>#</c> for remarks, numbers in the header's units.</summary>
internal static class BenchReport
{
    private const string Header =
        "stage,chamber,injector,reading,fluid,differential pressure (kPa),fluid temperature (degC),collected volume (cm3),collection time (s),voltage (V),dead time (ms)";

    /// <summary>The steps that the remarks of the reports state.</summary>
    private static readonly Volume GlassStep = Volume.FromCubicCentimeters(0.1);
    private static readonly Duration DeadTimeStep = Duration.FromMicroseconds(1);

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
            var held = new BenchConditions(
                Pressure.FromKilopascals(Positive(5)),
                fluid,
                Temperature.FromDegreesCelsius(Number(6)),
                new DataSource("Workshop-class", $"bench report {Path.GetFileName(path)}")
            );
            int chamber =
                int.TryParse(cells[1], NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number > 0
                    ? number
                    : throw Wrong(1, "a whole number from 1");
            return cells[3] switch
            {
                "static flow" => new(
                    cells[0],
                    chamber,
                    cells[2],
                    new(
                        CollectedFuel.FromVolume(Volume.FromCubicCentimeters(Positive(7)), GlassStep),
                        Duration.FromSeconds(Positive(8)),
                        held
                    ),
                    null
                ),
                "dead time" => new(
                    cells[0],
                    chamber,
                    cells[2],
                    null,
                    new(
                        ElectricPotential.FromVolts(Positive(9)),
                        Duration.FromMilliseconds(Positive(10)),
                        DeadTimeStep,
                        held
                    )
                ),
                _ => throw Wrong(3, "'static flow' or 'dead time'"),
            };
        }

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
