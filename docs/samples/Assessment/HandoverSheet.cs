using FuelMath.Injectors;
using FuelMath.Systems;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>One page of numbers for the person who tunes the engine, each with condition, unit and uncertainty.</summary>
internal static class HandoverSheet
{
    internal static string Text(FuelSystem system, IReadOnlyList<SolvedPoint> points, MeasuredSet? measured)
    {
        using var to = new StringWriter { NewLine = "\n" };
        to.WriteLine($"NUMBERS FOR TUNING: {system.Name}");
        to.WriteLine(
            $"Data: {system.Source}. Uncertainties are for 95 % where they come from repeats; 'none stated' means nobody measured them."
        );
        to.WriteLine();
        Fuel(system, points, to);
        foreach (InjectorStage stage in system.Stages)
        {
            Stage(stage, measured, to);
        }

        Pressures(system, points, to);
        to.WriteLine();
        to.WriteLine(
            "Before load: leak test at rail pressure, sensor reading at light load, then step by step. A predicted"
        );
        to.WriteLine("lambda is no clearance. Makers' data, local codes and licensed practice come first.");
        return to.ToString();
    }

    private static void Fuel(FuelSystem system, IReadOnlyList<SolvedPoint> points, TextWriter to)
    {
        to.WriteLine("FUEL");
        to.WriteLine($"  {system.Fuel.Name}");
        to.WriteLine(
            $"  stoichiometric air-fuel ratio  {system.Fuel.StoichiometricRatio} by mass (from composition; none stated)"
        );
        foreach (double celsius in points.Select(p => p.Point.Fuel.DegreesCelsius).Distinct().Order())
        {
            Density density = system.Fuel.DensityAt(Temperature.FromDegreesCelsius(celsius));
            to.WriteLine(
                $"  density at {Say.Number(celsius, "0"), 3} degC             {Say.Number(density.KilogramsPerCubicMeter, "0.0")} kg/m3 (correlation; a few tenths of a percent)"
            );
        }

        to.WriteLine();
    }

    private static void Stage(InjectorStage stage, MeasuredSet? measured, TextWriter to)
    {
        Injector rated = stage.Belief.Injector;
        Pressure pressure = stage.Belief.DifferentialPressure;
        to.WriteLine($"INJECTORS, {stage.Name} ({stage.Seats.Length} of them, '{rated.Name}')");
        to.WriteLine(
            $"  rated static flow   {Say.Number(rated.Rating.VolumeFlowAt(rated.Rating.DifferentialPressure, rated.Rating.FluidDensity).CubicCentimetersPerMinute, "0.0")} cm3/min at {Say.Bar(rated.Rating.DifferentialPressure)} bar across it, {rated.Rating.Fluid.Name} at {Say.Number(rated.Rating.FluidTemperature.DegreesCelsius, "0")} degC (none stated)"
        );
        if (measured is not null)
        {
            var set = measured.Injectors.Where(i => i.Stage == stage.Name).ToList();
            double mean = set.Average(i => i.Flow.CubicCentimetersPerMinute);
            to.WriteLine(
                $"  measured mean       {Say.Number(mean, "0.0")} cm3/min, same conditions: enter this in place of the rating"
            );
            to.WriteLine($"  {"cylinder", -10}{"injector", -12}{"cm3/min", 10}{"+/- 95 %", 10}{"fuel trim %", 13}");
            foreach (MeasuredInjector one in set.OrderBy(i => i.Chamber))
            {
                double trim = 100 * ((mean / one.Flow.CubicCentimetersPerMinute) - 1);
                to.WriteLine(
                    $"  {one.Chamber, -10}{one.Name, -12}{Say.Number(one.Flow.CubicCentimetersPerMinute, "0.0"), 10}{Say.Number(one.FlowUncertainty.CubicCentimetersPerMinute, "0.0"), 10}{Say.Number(trim, "+0.0;-0.0;0.0"), 13}"
                );
            }

            to.WriteLine(
                "  Fuel trim: extra fuel for that cylinder if the mean is entered. A weak injector is better exchanged."
            );
        }

        to.WriteLine(
            $"  dead time at {Say.Bar(pressure)} bar across the injector, by voltage at the injector (from the characterization; none stated):"
        );
        to.WriteLine(
            "    "
                + string.Join(
                    "   ",
                    rated.DeadTime.Voltages.Select(v =>
                        $"{Say.Number(v.Volts, "0.0")} V {Say.Milliseconds(rated.DeadTime.At(v, pressure))} ms"
                    )
                )
        );
        if (measured is not null)
        {
            DeadTimes([.. measured.Injectors.Where(m => m.Stage == stage.Name)], to);
        }

        to.WriteLine(
            $"  smallest repeatable pulse, after dead time: {Say.Milliseconds(rated.SmallestRepeatableWidth)} ms; pulses in a working cycle: {stage.PulsesPerCycle}"
        );
        to.WriteLine();
    }

    /// <summary>Measured dead times, where every injector of the stage was measured at the same voltages.</summary>
    private static void DeadTimes(IReadOnlyList<MeasuredInjector> set, TextWriter to)
    {
        var voltages = set[0].DeadTimes.Select(d => d.Voltage.Volts).ToList();
        if (voltages.Count == 0 || !set.All(m => m.DeadTimes.Select(d => d.Voltage.Volts).SequenceEqual(voltages)))
        {
            return;
        }

        to.WriteLine(
            "  measured dead time, mean of the set and half the spread between its injectors (one reading each; none repeated):"
        );
        to.WriteLine(
            "    "
                + string.Join(
                    "   ",
                    voltages.Select(
                        (volts, i) =>
                        {
                            double[] values = [.. set.Select(m => m.DeadTimes[i].Value.Milliseconds)];
                            return $"{Say.Number(volts, "0.0")} V {Say.Number(values.Average(), "0.000")} +/- {Say.Number((values.Max() - values.Min()) / 2, "0.000")} ms";
                        }
                    )
                )
        );
    }

    /// <summary>What the controller reckons with at a point, by how its rail is referenced.</summary>
    private static string Told(InjectorStage stage, OperatingPoint point) =>
        stage.Belief.DifferentialPressureAt(
            stage.Discharge == InjectorDischarge.Manifold ? point.Manifold : point.Ambient,
            point.Ambient
        )
            is { } told
            ? Say.Bar(told)
            : "measured";

    private static void Pressures(FuelSystem system, IReadOnlyList<SolvedPoint> points, TextWriter to)
    {
        to.WriteLine("PRESSURES AND DUTY (predicted, steady; no uncertainty computed: verify with a gauge)");
        var table = new Table(
            "point",
            "lowest injector dp bar",
            "told to controller bar",
            "duty %",
            "injector V",
            "reserve L/h"
        );
        foreach (SolvedPoint solved in points)
        {
            if (solved.State is not { } state)
            {
                table.Add(solved.Point.Name, "no state", "-", "-", "-", "-");
                continue;
            }

            table.Add(
                solved.Point.Name,
                Say.Bar(state.Injectors.MinBy(i => i.DifferentialPressure.Pascals)!.DifferentialPressure),
                string.Join(" / ", system.Stages.Select(s => Told(s, solved.Point))),
                string.Join(" / ", state.Stages.Select(s => s.IsShut ? "-" : Say.Percent(s.DutyCycle))),
                Say.Volts(state.Injectors[0].Voltage),
                state.PumpReserve is { } reserve ? Say.Number(reserve.LitersPerHour, "0") : "-"
            );
        }

        table.Print(to);
    }
}
