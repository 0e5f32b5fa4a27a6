using System.Globalization;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath;

/// <summary>The tables of one stage of injectors.</summary>
internal sealed class StageTables(SystemAssessment assessment, InjectorStage stage, SystemAssessment.StageSet? set)
{
    private const double Bar = 1e5;
    private readonly Injector told = stage.Belief!.Injector;
    private readonly Pressure pressure = stage.Belief!.DifferentialPressure;
    private readonly InjectorStage? fitted = assessment.Measured?.Stages.First(s => s.Name == stage.Name);
    private readonly StageDeadTimes deadTimes = new(
        stage,
        assessment.Measured?.Stages.First(s => s.Name == stage.Name)
    );

    internal IEnumerable<SheetTable> All()
    {
        yield return Flows();
        yield return deadTimes.AsTold(Named("dead-time"));
        if (deadTimes.Measured(Named("dead-time-measured")) is { } mean)
        {
            yield return mean;
        }

        if (!told.Correction.EffectiveWidths.IsEmpty)
        {
            yield return ShortPulses();
        }

        yield return Numbers();
        if (fitted is not null && set is not null)
        {
            yield return Injectors();
        }
    }

    /// <summary>Counted from 1, so that names differ for any names of stages.</summary>
    private string Number => (1 + assessment.System.Stages.IndexOf(stage)).ToString(CultureInfo.InvariantCulture);

    private string Named(string table) =>
        string.Concat(
            $"{Number}-{stage.Name}-{table}".ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')
        );

    private SheetTable Flows()
    {
        Fuel fuel = stage.Belief!.Fuel;
        Temperature warm = stage.Belief!.FuelTemperature;
        FlowRating rating = told.Rating;
        var rows = new List<object?[]>
        {
            Flow("rating", rating, rating.Fluid, rating.FluidTemperature, rating.DifferentialPressure, null),
            Flow("rating, as told", rating, fuel, warm, pressure, null),
        };
        if (set is not null)
        {
            FlowRating mean = Mean(rating);
            double? half = set.Report.Members.All(m => m.FlowHalfWidth is not null)
                ? 100 * set.Report.Members.Average(m => m.FlowHalfWidth!.Value.InSi()) / set.Report.MeanFlow.InSi()
                : null;
            rows.Add(
                Flow("measured mean", mean, rating.Fluid, rating.FluidTemperature, rating.DifferentialPressure, half)
            );
            rows.Add(Flow("measured mean, as told", mean, fuel, warm, pressure, half));
        }

        return SheetTable.Of(
            Named("static-flow"),
            $"Static flow of {stage.Name}",
            "As told: in the engine's own fuel, at the pressure and density that the controller is told. The interval is the mean of the injectors' own (95 %); nothing is stated for what carries a flow to another fluid.",
            [
                SheetTable.Column.Words("flow"),
                SheetTable.Column.Words("fluid"),
                SheetTable.Column.Numbers("at", "degC", 1),
                SheetTable.Column.Numbers("across it", "bar", 2),
                SheetTable.Column.Numbers("volume", "cm3/min", 1),
                SheetTable.Column.Numbers("mass", "g/s", 3),
                SheetTable.Column.Numbers("+/-", "%", 2),
                SheetTable.Column.Words("means"),
            ],
            rows
        );
    }

    private FlowRating Mean(FlowRating rating) =>
        FlowRating.FromVolume(
            set!.Report.MeanFlow,
            rating.DifferentialPressure,
            rating.Fluid,
            rating.FluidTemperature,
            rating.Source
        );

    private static object?[] Flow(
        string name,
        FlowRating rating,
        Fuel fluid,
        Temperature at,
        Pressure across,
        double? half
    )
    {
        Density density = fluid.DensityAt(at);
        return
        [
            name,
            fluid.Name,
            SiUnits.CelsiusFromKelvins(at.InSi()),
            across.InSi() / Bar,
            rating.VolumeFlowAt(across, density).InSi() * 6e7,
            rating.MassFlowAt(across, density).InSi() * 1e3,
            half,
            Show(half is null ? TuningSheet.UncertaintyMeaning.NotStated : TuningSheet.UncertaintyMeaning.Interval),
        ];
    }

    private SheetTable ShortPulses() =>
        SheetTable.Of(
            Named("short-pulses"),
            $"Short pulses of {stage.Name}: time to add, by width after dead time ({Show(TuningSheet.UncertaintyMeaning.NotStated)})",
            "Nothing is added beyond the last row.",
            [SheetTable.Column.Numbers("width after dead time", "ms", 3), SheetTable.Column.Numbers("add", "ms", 4)],
            told.Correction.EffectiveWidths.Select(
                (w, i) => (object?[])[w.InSi() * 1e3, told.Correction.Corrections[i].InSi() * 1e3]
            )
        );

    private SheetTable Numbers() =>
        SheetTable.Of(
            Named("numbers"),
            $"Other numbers of {stage.Name}, as told ({Show(TuningSheet.UncertaintyMeaning.NotStated)})",
            "",
            [
                SheetTable.Column.Words("what"),
                SheetTable.Column.Numbers("value", "as named", 3),
                SheetTable.Column.Words("unit"),
            ],
            [
                ["pressure across the injectors", pressure.InSi() / Bar, "bar"],
                ["least repeatable width after dead time", told.SmallestRepeatableWidth.InSi() * 1e3, "ms"],
                ["pulses in a working cycle", stage.PulsesPerCycle, "-"],
                ["density told", stage.Belief!.Fuel.DensityAt(stage.Belief!.FuelTemperature).InSi(), "kg/m3"],
                [
                    "temperature of that density",
                    SiUnits.CelsiusFromKelvins(stage.Belief!.FuelTemperature.InSi()),
                    "degC",
                ],
            ]
        );

    private SheetTable Injectors()
    {
        Injector entered = told.WithRating("mean of the set", Mean(told.Rating));
        entered = deadTimes.Mean() is { } mean ? entered.WithDeadTime("mean of the set", mean) : entered;
        SystemState[] states =
        [
            .. assessment
                .Points.Select(p => p.Of(SystemAssessment.StateBasis.AsDescribed)?.State)
                .OfType<SystemState>(),
        ];
        ElectricPotential volts = told.DeadTime.Voltages.MinBy(v => Math.Abs(v.InSi() - 14));
        return SheetTable.Of(
            Named("injectors"),
            $"Injectors of {stage.Name}, each by itself",
            string.Create(
                CultureInfo.InvariantCulture,
                $"Flow under the conditions of the rating with its interval (95 %), dead: dead time at {volts.InSi():0.0} V where it was read. Trim: fuel to add for that chamber when the measured means are entered, from flow and dead time over the points; 'without' and 'left' are the largest departures of fuel at one of them without and with it. A rejected injector is better exchanged than trimmed."
            ),
            [
                SheetTable.Column.Numbers("chamber", "-", 0),
                SheetTable.Column.Words("injector"),
                SheetTable.Column.Numbers("flow", "cm3/min", 1),
                SheetTable.Column.Numbers("+/-", "cm3/min", 1),
                SheetTable.Column.Words("means"),
                SheetTable.Column.Numbers("dead", "ms", 3),
                SheetTable.Column.Numbers("trim", "%", 1),
                SheetTable.Column.Numbers("without", "%", 1),
                SheetTable.Column.Numbers("left", "%", 1),
                SheetTable.Column.Words("set"),
            ],
            fitted!.Seats.Select(
                (seat, i) =>
                {
                    SetReport.Member? member = set!.Report.Members.FirstOrDefault(m => m.Name == seat.Injector.Name);
                    var trim = InjectorTrim.Of(
                        entered,
                        seat.Injector,
                        states.Select(s => InjectorUse.Of(assessment.System, s, stage.Name, i)).OfType<InjectorUse>()
                    );
                    return (object?[])
                        [
                            seat.Chamber,
                            seat.Injector.Name,
                            member?.Flow.InSi() * 6e7,
                            member?.FlowHalfWidth?.InSi() * 6e7,
                            Show(
                                member?.FlowHalfWidth is null
                                    ? TuningSheet.UncertaintyMeaning.NotStated
                                    : TuningSheet.UncertaintyMeaning.Interval
                            ),
                            DeadTime(seat.Injector.DeadTime, volts),
                            100 * trim?.Trim,
                            100 * trim?.Before,
                            100 * trim?.Remains,
                            member is null ? "not read" : member.Verdict.ToString().ToLowerInvariant(),
                        ];
                }
            )
        );
    }

    private double? DeadTime(DeadTimeTable table, ElectricPotential volts)
    {
        try
        {
            return 1e3 * table.At(volts, pressure).InSi();
        }
        catch (OutsideTableException)
        {
            return null;
        }
    }

    internal static string Show(TuningSheet.UncertaintyMeaning meaning) =>
        meaning switch
        {
            TuningSheet.UncertaintyMeaning.Interval => "interval",
            TuningSheet.UncertaintyMeaning.HalfSpread => "half spread",
            _ => "none stated",
        };
}
