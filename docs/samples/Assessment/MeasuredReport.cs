using FuelMath.Bench;

namespace FuelMath.Samples.Assessment;

/// <summary>Prints what the bench found, and what it does to a controller that keeps assuming the rating.</summary>
internal sealed class MeasuredReport(FuelSystem system, MeasuredSet set, TextWriter to)
{
    internal void Print()
    {
        to.Heading("Injectors on the bench");
        to.WriteLine($"  {set.Source}. Static flow carried to the pressure, fluid and temperature of the rating.");
        var table = new Table(
            "injector",
            "stage",
            "chamber",
            "flow cm3/min",
            "+/- (95 %)",
            "of rating %",
            "of stage mean %"
        );
        foreach (MeasuredInjector one in set.Injectors)
        {
            table.Add(
                one.Name,
                one.Stage,
                Say.Number(one.Chamber, "0"),
                Say.Number(one.Flow.CubicCentimetersPerMinute, "0.0"),
                Say.Number(one.FlowUncertainty.CubicCentimetersPerMinute, "0.0"),
                Say.Number(100 * one.ShareOfRating, "0.0"),
                Say.Number(100 * (1 + one.Member.FromMean.DecimalFractions), "0.0")
            );
        }

        table.Print(to);
        foreach (InjectorStage stage in system.Stages)
        {
            SetReport report = set.Reports[stage.Name];
            to.WriteLine(
                $"  {stage.Name}: {(report.IsAccepted ? "accepted" : "not accepted")}; spread (largest - smallest) / mean = {Say.Percent(report.Spread)} %, "
                    + $"coefficient of variation {Say.Percent(report.CoefficientOfVariation)} %"
            );
            if (report is { Repeatability: { } repeats, LeastDifference: { } least })
            {
                to.WriteLine(
                    $"    the bench repeats to {Say.Number(repeats.Percent, "0.00")} % and can show a difference of {Say.Number(least.Percent, "0.00")} %"
                );
            }

            foreach (Finding finding in report.Findings)
            {
                to.WriteLine($"    {finding}");
            }
        }

        to.Heading("Lambda of each chamber with the measured injectors, if the controller keeps assuming the rating");
        var lambdas = new Table([
            "point",
            "asked for",
            .. Enumerable.Range(1, system.Engine.Chambers).Select(c => $"chamber {c}"),
            "one sensor sees",
            "leanest against asked for %",
        ]);
        foreach ((SolvedPoint solved, SystemState? state, Exception? refusal) in set.OpenLoop)
        {
            if (state is null)
            {
                lambdas.Add([
                    solved.Point.Name,
                    "-",
                    .. Enumerable.Repeat("-", system.Engine.Chambers),
                    "no state",
                    refusal!.GetType().Name,
                ]);
                continue;
            }

            double asked = state.TargetLambda!.Value.ToRatio();
            double leanest = state.Chambers.Max(c => c.Lambda!.Value.ToRatio());
            lambdas.Add([
                solved.Point.Name,
                Say.Mixture(state.TargetLambda),
                .. state.Chambers.Select(c => Say.Mixture(c.Lambda, c.LambdaIfOilUnburned)),
                Say.Mixture(state.Lambda, state.LambdaIfOilUnburned),
                Say.Number(100 * ((leanest / asked) - 1), "+0.0;-0.0"),
            ]);
        }

        lambdas.Print(to);
        to.WriteLine(
            "  Uncorrected at every point, also where a sensor would hold the mean: the sensor takes away what it sees,"
        );
        to.WriteLine(
            "  within its limits, but not the difference of one chamber from the others. A sensor that fails leaves all of it."
        );
        to.WriteLine(
            "  A predicted lambda is never clearance to load an engine: verify with a sensor at light load first."
        );
    }
}
