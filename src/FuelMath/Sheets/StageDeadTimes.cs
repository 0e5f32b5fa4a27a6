using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>The dead times of one stage: the controller's belief, and the mean of the measured ones.</summary>
internal sealed class StageDeadTimes(InjectorStage stage, InjectorStage? fitted)
{
    private const double Bar = 1e5;
    private readonly DeadTimeTable told = stage.Belief!.Injector.DeadTime;
    private readonly Pressure pressure = stage.Belief!.DifferentialPressure;

    /// <summary>Dead time over voltage and pressure by the controller's belief.</summary>
    internal SheetTable AsTold(string name)
    {
        DeadTimeTable table = told;
        Pressure[] across = table.DependsOnPressure
            ?
            [
                .. table
                    .DifferentialPressures.Append(pressure)
                    .Where(p => Known(table, p))
                    .DistinctBy(p => Math.Round(p.InSi() / 100))
                    .OrderBy(p => p.InSi()),
            ]
            : [table.DifferentialPressures[0]];
        return SheetTable.Of(
            name,
            $"Dead time of {stage.Name} over voltage at the injector and pressure across it, as told ({StageTables.Show(TuningSheet.UncertaintyMeaning.NotStated)})",
            table.DependsOnPressure
                ? table.HoldsEstimates
                    ? "Some of these values are estimates from the others."
                    : ""
                : "Taken at this pressure only: how it changes with pressure is not known. It grows with pressure.",
            [
                SheetTable.Column.Numbers("voltage", "V", 2),
                .. across.Select(p =>
                    SheetTable.Column.Numbers(
                        string.Create(CultureInfo.InvariantCulture, $"{p.InSi() / Bar:0.00} bar"),
                        "ms",
                        3
                    )
                ),
            ],
            table.Voltages.Select(
                object?[] (v) => [v.InSi(), .. across.Select(p => (object?)(table.At(v, p).InSi() * 1e3))]
            )
        );
    }

    private static bool Known(DeadTimeTable table, Pressure p) =>
        table.Outside != OutsideRange.Refuse
        || (p.InSi() >= table.DifferentialPressures[0].InSi() && p.InSi() <= table.DifferentialPressures[^1].InSi());

    /// <summary>
    /// Mean and half spread at each voltage, where all injectors were measured at the same voltages and pressures.
    /// </summary>
    internal SheetTable? Measured(string name) =>
        Mean() is not { } mean
            ? null
            : SheetTable.Of(
                name,
                $"Dead time of {stage.Name} as measured, mean of the set",
                mean.DependsOnPressure
                    ? ""
                    : string.Create(
                        CultureInfo.InvariantCulture,
                        $"At {mean.DifferentialPressures[0].InSi() / Bar:0.00} bar; how it changes with pressure was not measured."
                    ),
                [
                    SheetTable.Column.Numbers("voltage", "V", 2),
                    SheetTable.Column.Numbers("mean", "ms", 3),
                    SheetTable.Column.Numbers("+/-", "ms", 3),
                    SheetTable.Column.Words("means"),
                ],
                mean.Voltages.Select(
                    (v, i) =>
                    {
                        double[] all = [.. fitted!.Seats.Select(s => 1e3 * s.Injector.DeadTime.ValueAt(i, 0).InSi())];
                        return (object?[])
                            [
                                v.InSi(),
                                all.Average(),
                                (all.Max() - all.Min()) / 2,
                                StageTables.Show(TuningSheet.UncertaintyMeaning.HalfSpread),
                            ];
                    }
                )
            );

    /// <summary>
    /// The mean of the injectors' tables; null where they were not measured at the same voltages and pressures.
    /// </summary>
    internal DeadTimeTable? Mean()
    {
        if (fitted is null)
        {
            return null;
        }

        DeadTimeTable[] all = [.. fitted!.Seats.Select(s => s.Injector.DeadTime).Distinct()];
        return all.Length < 2 || all.Any(t => t.DependsOnPressure) || !all.All(t => Alike(t, all[0]))
            ? null
            : DeadTimeTable.FromVoltage(
                all[0].Voltages,
                all[0].DifferentialPressures[0],
                all[0]
                    .Voltages.Select(
                        (_, i) => SiUnits.Duration(fitted.Seats.Average(s => s.Injector.DeadTime.ValueAt(i, 0).InSi()))
                    ),
                all[0].Outside,
                all[0].Source
            );
    }

    private static bool Alike(DeadTimeTable one, DeadTimeTable other) =>
        one.Voltages.Select(v => v.InSi()).SequenceEqual(other.Voltages.Select(v => v.InSi()));
}
