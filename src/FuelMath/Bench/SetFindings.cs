using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Bench;

/// <summary>The findings of a set report.</summary>
internal static class SetFindings
{
    private static readonly DataSource EqualVariances = new("ISO-5725-2", "section 7.3.3, Cochran's test");

    private static readonly DataSource Median = new("Common-practice", "coil against the median of its set");

    internal static ImmutableArray<Finding> Of(SetReport report) =>
        [
            .. Set(report),
            .. report.Members.SelectMany(m => Member(m, report.Limits, report.Rating)),
            .. Scattering(report),
            .. Unread(report),
        ];

    private static IEnumerable<Finding> Set(SetReport report)
    {
        AcceptanceLimits limits = report.Limits;
        if (report.SpreadVerdict == BenchVerdict.Rejected)
        {
            yield return new Finding(
                FindingCode.SetNotMatched,
                Severity.Warning,
                "set",
                "The set is not matched: (largest - smallest) / mean",
                Percent(report.Spread),
                Percent(limits.Spread),
                limits.Source,
                "Clean or replace the injectors that stand apart."
            ).WithQuantities(report.Spread, limits.Spread);
        }

        if (report.SpreadVerdict == BenchVerdict.Undecided)
        {
            Ratio least = report.LeastSpread;
            yield return new Finding(
                FindingCode.BenchTooCoarse,
                Severity.Warning,
                "bench",
                "The bench repeats too poorly to judge the spread: the least spread that it can show",
                Percent(least),
                Percent(limits.Spread),
                limits.Source,
                "Collect for longer, or take more repeats; where they agree, read a finer instrument."
            )
                .WithQuantities(least, limits.Spread)
                .AsNotKnown();
        }
    }

    /// <summary>One finding for all unread injectors: without a reading, tightness is not known.</summary>
    private static IEnumerable<Finding> Unread(SetReport report)
    {
        SetReport.Member[] unread = [.. report.Members.Where(m => m.Leakage is null)];
        if (unread.Length == 0)
        {
            yield break;
        }

        bool all = unread.Length == report.Members.Length;
        AcceptanceLimits.LeakageLimit limit = report.Limits.Leakage;
        yield return new Finding(
            FindingCode.LeakageNotRead,
            Severity.Note,
            all ? "set" : unread[0].Name,
            all
                ? "Leakage was not read: nothing says that these injectors are tight"
                : $"Leakage of {string.Join(", ", unread.Select(m => $"'{m.Name}'"))} was not read: nothing says that they are tight",
            "not read",
            limit.ToString(),
            limit.Source,
            "Watch each of them, shut, at the highest pressure that it will see, before it is fitted."
        ).AsNotKnown();
    }

    private static IEnumerable<Finding> Scattering(SetReport report)
    {
        foreach (SetReport.Member one in report.Members)
        {
            if (one.Scatter is not { } scatter)
            {
                continue;
            }

            double critical = scatter.Test.Critical(scatter.IsOutlier ? CochranTest.Outlier : CochranTest.Straggler);
            var finding = new Finding(
                FindingCode.InjectorScatters,
                scatter.IsOutlier ? Severity.Warning : Severity.Note,
                one.Name,
                $"The repeats of injector '{one.Name}' scatter more than those of the others",
                $"{Percent(SiUnits.Ratio(scatter.Test.Share))} of the sum of squares of all: its readings scatter by {Percent(one.Repeatability!.Value)}, those of the others by {Percent(report.Repeatability!.Value)}",
                $"{Percent(SiUnits.Ratio(critical))}, which chance exceeds in {(scatter.IsOutlier ? "1 %" : "5 %")} of sets",
                EqualVariances,
                "Clean it and read it again, oftener: a needle that sticks, or a reading that went wrong. Until then its interval is that of its own repeats."
            ).WithQuantities(SiUnits.Ratio(scatter.Test.Share), SiUnits.Ratio(critical));
            yield return scatter.IsOutlier ? finding.AsNotKnown() : finding;
        }
    }

    private static IEnumerable<Finding> Member(SetReport.Member one, AcceptanceLimits limits, FlowRating rating)
    {
        if (!one.IsFlowAccepted)
        {
            yield return Finding
                .Of(
                    FindingCode.FlowOffRating,
                    Severity.Warning,
                    one.Name,
                    $"Injector '{one.Name}' is off its rating",
                    Shown.FinePercent(one.FromRating.InSi()),
                    Shown.FinePercent(limits.FromRating.InSi()).As(n => $"±{n}"),
                    limits.Source,
                    "Clean and read it again, or replace it."
                )
                .WithQuantities(one.FromRating, limits.FromRating);
        }

        if (one.IsFlowClear == false)
        {
            yield return Finding
                .Of(
                    FindingCode.FlowUndecided,
                    Severity.Note,
                    one.Name,
                    $"The readings of injector '{one.Name}' do not settle whether it is within the limit",
                    Shown.FinePercent(one.FromRating.InSi()),
                    Shown.FinePercent(limits.FromRating.InSi()).As(n => $"±{n}"),
                    limits.Source,
                    "Take more repeats before accepting or rejecting it."
                )
                .WithQuantities(one.FromRating, limits.FromRating)
                .AsNotKnown();
        }

        if (one.Leakage is { Verdict: not BenchVerdict.Accepted } leak)
        {
            bool rejected = leak.Verdict == BenchVerdict.Rejected;
            var leaks = new Finding(
                rejected ? FindingCode.InjectorLeaks : FindingCode.LeakageUndecided,
                rejected ? Severity.Danger : Severity.Warning,
                one.Name,
                rejected
                    ? $"Injector '{one.Name}' leaks"
                    : $"The leakage of injector '{one.Name}' was not watched for long enough to accept it",
                leak + (leak is { RestsOnDropVolume: true, Drop.IsEstimate: true } ? " (drop volume estimated)" : ""),
                leak.Limit.ToString(),
                leak.Limit.Source,
                rejected
                    ? "Do not fit it: it can fill a cylinder with fuel."
                    : "Do not fit it before it is decided: read for longer at that pressure."
            ).WithQuantities(leak.ShareOfLimit, SiUnits.Ratio(1));
            yield return rejected ? leaks : leaks.AsNotKnown();
        }

        if (!one.IsLeakageWatched)
        {
            yield return new Finding(
                FindingCode.LeakageUndecided,
                Severity.Warning,
                one.Name,
                $"The leakage of injector '{one.Name}' was watched only below the pressure of its rating",
                Show.Bar(one.Leakage!.HighestDifferentialPressure.InSi()),
                $"{Show.Bar(rating.DifferentialPressure.InSi())} or more",
                one.Leakage.Limit.Source,
                "Read it again at the highest pressure that the injector will see: more pressure can open a leak."
            )
                .WithQuantities(one.Leakage.HighestDifferentialPressure, rating.DifferentialPressure)
                .AsNotKnown();
        }

        if (one.Coil is { Verdict: not BenchVerdict.Accepted } coil)
        {
            var outside = new Finding(
                coil.Verdict == BenchVerdict.Rejected ? FindingCode.CoilOutsideBand : FindingCode.CoilUndecided,
                Severity.Warning,
                one.Name,
                coil.Verdict == BenchVerdict.Rejected
                    ? $"The coil of injector '{one.Name}' is outside its band at 20 °C"
                    : $"The meter is too coarse to place the coil of injector '{one.Name}' in its band",
                Ohms(coil.AtTwentyCelsius),
                $"{Ohms(coil.Band.Least)} to {Ohms(coil.Band.Most)}",
                coil.Band.Source,
                "Measure it again, leads subtracted and rested; then replace it."
            ).WithQuantities(coil.AtTwentyCelsius, NearerEnd(coil));
            yield return coil.Verdict == BenchVerdict.Rejected ? outside : outside.AsNotKnown();
        }

        if (one.CoilFromMedian is { } away && Math.Abs(away.InSi()) > limits.CoilFromMedian.InSi())
        {
            yield return Finding
                .Of(
                    FindingCode.CoilUnlikeSet,
                    Severity.Warning,
                    one.Name,
                    $"The coil of injector '{one.Name}' differs from the median of the set",
                    Shown.FinePercent(away.InSi()),
                    Shown.FinePercent(limits.CoilFromMedian.InSi()).As(n => $"±{n}"),
                    Median,
                    "Look for another type among the set, shorted turns, or a coil that was still hot."
                )
                .WithQuantities(away, limits.CoilFromMedian);
        }
    }

    private static ElectricResistance NearerEnd(CoilVerdict coil)
    {
        (ElectricResistance least, ElectricResistance most) = (coil.Band.Least, coil.Band.Most);
        return coil.AtTwentyCelsius.InSi() < (least.InSi() + most.InSi()) / 2 ? least : most;
    }

    private static string Percent(Ratio ratio) => Show.FinePercent(ratio.InSi(), 0);

    private static string Ohms(ElectricResistance value) => Guard.Show(value, ElectricResistanceUnit.Ohm);
}
