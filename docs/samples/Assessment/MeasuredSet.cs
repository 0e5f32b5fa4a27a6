using FuelMath.Injectors;
using FuelMath.Sources;
using FuelMath.Systems;
using FuelMath.Tables;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>One injector as the bench saw it, carried to the conditions of its rating.</summary>
internal sealed record MeasuredInjector(
    string Name,
    string Stage,
    int Chamber,
    VolumeFlow Flow,
    VolumeFlow FlowUncertainty,
    double ShareOfRating,
    IReadOnlyList<(ElectricPotential Voltage, Duration Value)> DeadTimes,
    Injector Injector
);

/// <summary>A bench report turned into fitted injectors, and what they do to a controller that keeps assuming the rating.</summary>
internal sealed class MeasuredSet
{
    private MeasuredSet(
        DataSource source,
        IReadOnlyList<MeasuredInjector> injectors,
        FuelSystem fitted,
        IReadOnlyList<SolvedPoint> points
    )
    {
        Source = source;
        Injectors = injectors;
        LeanLimit = fitted.Limits.MixtureDeviation.DecimalFractions;
        OpenLoop =
        [
            .. points
                .Where(p => p.Point.Command.Lambda is not null)
                .Select(p =>
                    (
                        p,
                        SolvedPoint.Of(fitted, p.Point.WithCommand(FuelCommand.OpenLoop(p.Point.Command.Lambda!.Value)))
                    )
                )
                .Select(both => (both.p, both.Item2.State, both.Item2.Refusal)),
        ];
    }

    internal DataSource Source { get; }

    /// <summary>By what share a cylinder may run leaner than asked for.</summary>
    internal double LeanLimit { get; }

    internal IReadOnlyList<MeasuredInjector> Injectors { get; }

    /// <summary>Every point that asks for a lambda, uncorrected, with the measured injectors and the old belief.</summary>
    internal IReadOnlyList<(SolvedPoint Point, SystemState? State, Exception? Refusal)> OpenLoop { get; }

    /// <summary>The same as solved points.</summary>
    internal IReadOnlyList<SolvedPoint> Uncorrected =>
        [.. OpenLoop.Select(o => new SolvedPoint(o.Point.Point, o.State, o.Refusal))];

    internal static MeasuredSet Of(
        FuelSystem system,
        IReadOnlyList<BenchReading> readings,
        string file,
        IReadOnlyList<SolvedPoint> points
    )
    {
        var source = new DataSource("Workshop-class", $"bench report {file}");
        var all = new List<MeasuredInjector>();
        FuelSystem fitted = system;
        foreach (InjectorStage stage in system.Stages)
        {
            MeasuredInjector[] set = [.. stage.Seats.Select(seat => Measure(stage, seat, readings, source))];
            all.AddRange(set);
            fitted = fitted.WithInjectors(stage.Name, set.Select(m => m.Injector));
        }

        return new(source, all, fitted, points);
    }

    internal double ShareOfStageMean(MeasuredInjector one) =>
        one.Flow.CubicMetersPerSecond
        / Injectors.Where(i => i.Stage == one.Stage).Average(i => i.Flow.CubicMetersPerSecond);

    internal double Spread(string stage)
    {
        double[] flows = [.. Injectors.Where(i => i.Stage == stage).Select(i => i.Flow.CubicMetersPerSecond)];
        return (flows.Max() - flows.Min()) / flows.Average();
    }

    private static MeasuredInjector Measure(
        InjectorStage stage,
        InjectorSeat seat,
        IReadOnlyList<BenchReading> readings,
        DataSource source
    )
    {
        BenchReading[] own = [.. readings.Where(r => r.Stage == stage.Name && r.Chamber == seat.Chamber)];
        FlowRating rating = stage.Belief.Injector.Rating;

        // Each collected volume, carried from its own pressure, fluid and temperature to those of the rating.
        double[] flows =
        [
            .. own.Where(r => r.StaticFlow is not null)
                .Select(r =>
                    FlowRating
                        .FromVolume(r.StaticFlow!.Value, r.DifferentialPressure, r.Fluid, r.FluidTemperature, source)
                        .VolumeFlowAt(rating.DifferentialPressure, rating.FluidDensity)
                        .CubicCentimetersPerMinute
                ),
        ];
        if (flows.Length < 2)
        {
            throw new FormatException(
                $"The bench report has {flows.Length} static-flow readings for chamber {seat.Chamber} of stage '{stage.Name}'; at least 2 are needed."
            );
        }

        VolumeFlow mean = VolumeFlow.FromCubicCentimetersPerMinute(flows.Mean());
        double student = StudentT.InvCDF(0, 1, flows.Length - 1, 0.975);
        VolumeFlow uncertainty = VolumeFlow.FromCubicCentimetersPerMinute(
            student * flows.StandardDeviation() / Math.Sqrt(flows.Length)
        );
        Injector injector = seat.Injector.WithRating(
            own[0].Injector,
            FlowRating.FromVolume(mean, rating.DifferentialPressure, rating.Fluid, rating.FluidTemperature, source)
        );
        BenchReading[] dead = [.. own.Where(r => r.DeadTime is not null).OrderBy(r => r.DeadTime!.Value.Voltage.Volts)];
        if (dead.Length >= 2)
        {
            injector = injector.WithDeadTime(
                own[0].Injector,
                DeadTimeTable.FromVoltage(
                    dead.Select(r => r.DeadTime!.Value.Voltage),
                    dead[0].DifferentialPressure,
                    dead.Select(r => r.DeadTime!.Value.Value),
                    OutsideRange.Refuse,
                    source
                )
            );
        }

        return new(
            own[0].Injector,
            stage.Name,
            seat.Chamber,
            mean,
            uncertainty,
            mean.CubicMetersPerSecond / rating.StaticVolumeFlow.CubicMetersPerSecond,
            [.. dead.Select(r => r.DeadTime!.Value)],
            injector
        );
    }
}
