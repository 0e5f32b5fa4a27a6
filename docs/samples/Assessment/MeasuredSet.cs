using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>One injector as the bench saw it, carried to the conditions of its rating.</summary>
internal sealed record MeasuredInjector(
    string Stage,
    int Chamber,
    SetReport.Member Member,
    IReadOnlyList<(ElectricPotential Voltage, Duration Value)> DeadTimes,
    Injector Injector
)
{
    internal string Name => Member.Name;

    internal VolumeFlow Flow => Member.Flow;

    /// <summary>Half of Student's interval; the report asks for two readings or more.</summary>
    internal VolumeFlow FlowUncertainty => Member.FlowHalfWidth!.Value;

    internal double ShareOfRating => 1 + Member.FromRating.DecimalFractions;
}

/// <summary>A bench report turned into fitted injectors, and what they do to a controller that keeps assuming the rating.</summary>
internal sealed class MeasuredSet
{
    private MeasuredSet(
        IReadOnlyList<MeasuredInjector> injectors,
        IReadOnlyDictionary<string, SetReport> reports,
        FuelSystem fitted
    )
    {
        Injectors = injectors;
        Reports = reports;
        Fitted = fitted;
    }

    internal IReadOnlyList<MeasuredInjector> Injectors { get; }

    /// <summary>The system with the injectors as measured.</summary>
    internal FuelSystem Fitted { get; }

    /// <summary>The sets for the assessment.</summary>
    internal IEnumerable<SystemAssessment.StageSet> Sets =>
        Reports.Select(r => new SystemAssessment.StageSet(r.Key, r.Value));

    /// <summary>What the bench says of each stage's set, by the name of the stage.</summary>
    internal IReadOnlyDictionary<string, SetReport> Reports { get; }

    internal static MeasuredSet Of(FuelSystem system, IReadOnlyList<BenchReading> readings, string file)
    {
        var source = new DataSource("Workshop-class", $"bench report {file}");
        var all = new List<MeasuredInjector>();
        var reports = new Dictionary<string, SetReport>();
        FuelSystem fitted = system;
        foreach (InjectorStage stage in system.Stages)
        {
            BenchReading[][] own =
            [
                .. stage.Seats.Select(seat =>
                    readings.Where(r => r.Stage == stage.Name && r.Chamber == seat.Chamber).ToArray()
                ),
            ];
            var report = new SetReport(
                Wanted(stage),
                own.Select((r, i) => Benched(stage, stage.Seats[i], r)),
                AcceptanceLimits.CommonPractice,
                Ratio.FromPercent(95)
            );
            MeasuredInjector[] set =
            [
                .. stage.Seats.Select((seat, i) => Fit(stage, seat, report.Members[i], own[i], source)),
            ];
            all.AddRange(set);
            reports.Add(stage.Name, report);
            fitted = fitted.WithInjectors(stage.Name, set.Select(m => m.Injector));
        }

        return new(all, reports, fitted);
    }

    /// <summary>The rating that the set is measured against: what the controller was told, or that of the first seat.</summary>
    private static FlowRating Wanted(InjectorStage stage) => (stage.Belief?.Injector ?? stage.Seats[0].Injector).Rating;

    private static BenchedInjector Benched(InjectorStage stage, InjectorStage.Seat seat, BenchReading[] own)
    {
        StaticFlowReading[] flows = [.. own.Select(r => r.StaticFlow).OfType<StaticFlowReading>()];
        return flows.Length < 2
            ? throw new FormatException(
                $"The bench report has {flows.Length} static-flow readings for chamber {seat.Chamber} of stage '{stage.Name}'; at least 2 are needed."
            )
            : BenchedInjector.FromSeries(
                own[0].Injector,
                new BenchedInjector.Series(flows, [], own.Select(r => r.DeadTime).OfType<DeadTimeReading>(), [], [])
            );
    }

    private static MeasuredInjector Fit(
        InjectorStage stage,
        InjectorStage.Seat seat,
        SetReport.Member member,
        BenchReading[] own,
        DataSource source
    )
    {
        FlowRating rating = Wanted(stage);
        Injector injector = seat.Injector.WithRating(
            member.Name,
            FlowRating.FromVolume(
                member.Flow,
                rating.DifferentialPressure,
                rating.Fluid,
                rating.FluidTemperature,
                source
            )
        );
        DeadTimeReading[] dead =
        [
            .. own.Select(r => r.DeadTime).OfType<DeadTimeReading>().OrderBy(r => r.AtInjector.Volts),
        ];
        if (dead.Length >= 2)
        {
            injector = injector.WithDeadTime(
                member.Name,
                DeadTimeSeries.FromReadings(dead, OutsideRange.Refuse, source)
            );
        }

        return new(stage.Name, seat.Chamber, member, [.. dead.Select(r => (r.AtInjector, r.DeadTime))], injector);
    }
}
