namespace FuelMath;

/// <summary>
/// The one judgment of a mixture: every chamber, and the mean of those behind one sensor, against the requested lambda.
/// Used for predicted, believed and measured states.
/// </summary>
/// <remarks>
/// The mean and a chamber share one limit: a chamber 4 % above a mean that is 3 % above the request is 7 % too lean,
/// although each alone would pass. Where a sensor holds the mean, the whole limit is left to the chambers; where it
/// does not reach the request, only the rest. Without a requested lambda, chambers are judged against their mean, and a
/// finding says that the mean was not judged.
/// </remarks>
/// <param name="fuel">The fuel burned.</param>
/// <param name="asked">The requested lambda; null when there is none.</param>
/// <param name="limit">The allowed relative excess of lambda.</param>
/// <param name="source">Where the limit comes from.</param>
/// <param name="place">The text for the place: empty, or " at 'idle'".</param>
/// <param name="bank">The bank of the chambers; null where one sensor stands behind all.</param>
internal sealed class MixtureJudgement(
    Fuel fuel,
    Lambda? asked,
    double limit,
    DataSource source,
    string place,
    int? bank
)
{
    private static readonly DataSource NoTarget = new("Definition", "a mixture is judged against the lambda asked for");

    private static readonly DataSource Bounds = new("Definition", "total air over fuel, the oil burned and not burned");

    /// <summary>A smaller part of the limit is not mentioned.</summary>
    private const double Shared = 5e-4;

    private readonly string mixture = bank is { } b ? $"bank {b}" : "mixture";

    private readonly string sensor = bank is { } b ? $"the sensor of bank {b}" : "one sensor for all";

    private readonly string ofBank = bank is { } b ? $" of bank {b}" : "";

    private readonly double edge = limit + Guard.EdgeTolerance;

    internal IEnumerable<Finding> Of(IReadOnlyList<PredictedMixture.ChamberMixture> chambers, Lambda? mean) =>
        chambers.Count == 0 ? []
        : asked is { } target
            ? [.. Mean(chambers, mean, target), .. Chambers(chambers, mean, target), .. Oil(chambers, mean, target)]
        : mean is { } only ? [NotJudged(only), .. Chambers(chambers, mean, only), .. Oil(chambers, mean, only)]
        : [.. chambers.Select(c => WithoutFuel(c.Chamber, "fuel"))];

    private IEnumerable<Finding> Mean(
        IReadOnlyList<PredictedMixture.ChamberMixture> chambers,
        Lambda? mean,
        Lambda target
    )
    {
        // A single chamber that is lean is told as that chamber; one that is rich only here.
        if (
            mean is { } lambda
            && Math.Abs(Over(lambda, target)) > edge
            && lambda > target is var lean
            && (chambers.Count > 1 || !lean)
        )
        {
            yield return Finding.Of(
                lean ? FindingCode.MixtureLean : FindingCode.MixtureRich,
                lean ? Severity.Danger : Severity.Warning,
                mixture,
                $"The mixture{ofBank} is {(lean ? "leaner" : "richer")} than asked for{place}",
                Deviation(lambda, target, ""),
                Shown.Percent(lean ? limit : -limit).As(n => $"{Show.Lambda(target.Si)} within {n}"),
                source,
                lean
                    ? "Do not load the engine: a lean mixture destroys it. Correct the characterization, the pressure or the injector size first."
                    : "Correct the characterization or the pressure before tuning anything else."
            );
        }
    }

    private IEnumerable<Finding> Chambers(
        IReadOnlyList<PredictedMixture.ChamberMixture> chambers,
        Lambda? mean,
        Lambda target
    )
    {
        foreach (PredictedMixture.ChamberMixture chamber in chambers)
        {
            if (chamber.Lambda is not { } lambda)
            {
                yield return WithoutFuel(chamber.Chamber, $"lambda {Show.Lambda(target.Si)}");
                continue;
            }

            // The finding of a lean mean covers all chambers that are no leaner.
            bool said = mean is { } all && Over(all, target) > edge && Over(lambda, all) <= Guard.EdgeTolerance;
            if (Over(lambda, target) > edge && !(said && chambers.Count > 1))
            {
                yield return Lean(chamber.Chamber, lambda, mean ?? lambda, target, chambers.Count > 1);
            }
        }
    }

    private Finding WithoutFuel(int chamber, string asked) =>
        Finding.Of(
            FindingCode.ChamberWithoutFuel,
            Severity.Danger,
            $"chamber {chamber}",
            $"Chamber {chamber} gets no fuel{place}",
            "no fuel",
            asked,
            source,
            "The pulse ends inside the dead time, or the injector is blocked: correct the dead time that the controller was told, or clean the injector."
        );

    private Finding Lean(int chamber, Lambda lambda, Lambda mean, Lambda target, bool hasOthers)
    {
        bool hidden = hasOthers && Over(mean, target) <= edge;
        string against = asked is null ? "than the others" : "than asked for";
        string rest =
            hidden && asked is not null && Math.Abs(Over(mean, target)) >= Shared
                ? $"; the mean of all chambers is {Apart(mean, target)}"
                : "";
        return Finding.Of(
            FindingCode.ChamberLean,
            Severity.Danger,
            $"chamber {chamber}",
            $"Chamber {chamber} runs leaner {against}{place}{(hidden ? $", and {sensor} does not show it" : "")}",
            Deviation(lambda, target, rest),
            Shown.Percent(limit).As(n => $"{Show.Lambda(target.Si)} within {n}"),
            source,
            "Do not load the engine: clean, exchange or individually correct that injector first."
        );
    }

    /// <summary>Both bounds of a premix: a warning where only the lean one exceeds the limit.</summary>
    private IEnumerable<Finding> Oil(
        IReadOnlyList<PredictedMixture.ChamberMixture> chambers,
        Lambda? mean,
        Lambda target
    )
    {
        if (!fuel.HoldsOil || mean is not { } burned)
        {
            yield break;
        }

        PredictedMixture.ChamberMixture leanest = chambers
            .Where(c => c.Lambda is not null)
            .MaxBy(c => c.Lambda!.Value.Si)!;
        if (leanest.LambdaIfOilUnburned is not { } bound)
        {
            yield break;
        }

        bool open = Over(bound, target) > edge && Over(leanest.Lambda!.Value, target) <= edge;
        yield return Finding.Of(
            FindingCode.PremixMixture,
            open ? Severity.Warning : Severity.Note,
            $"chamber {leanest.Chamber}",
            $"How lean a premix runs depends on how much of its oil burns{place}",
            Shown
                .Percent(Over(bound, target))
                .As(_ =>
                    $"lambda {Show.Lambda(leanest.Lambda!.Value.Si)} in chamber {leanest.Chamber} if all of it burns, {Show.Lambda(bound.Si)} if none does"
                ),
            Shown.Percent(limit).As(n => $"{Show.Lambda(target.Si)} within {n}"),
            open ? source : Bounds,
            open
                ? "The lean bound is beyond the limit: ask for a richer mixture until a sensor or the plugs say how much burns."
                : "The truth lies between the two; a sensor in the exhaust does not tell them apart."
        );
    }

    private Finding NotJudged(Lambda mean) =>
        Finding
            .Of(
                FindingCode.MixtureNotJudged,
                Severity.Warning,
                mixture,
                $"The mixture{ofBank} is not judged: no lambda was asked for",
                $"lambda {Show.Lambda(mean.Si)}",
                "none",
                NoTarget,
                "Ask for a lambda, or hold this one against what the engine needs."
            )
            .AsNotKnown();

    private static Shown Deviation(Lambda lambda, Lambda target, string rest) =>
        Shown
            .Percent(Over(lambda, target))
            .As(n => $"lambda {Show.Lambda(lambda.Si)}, {n} {Side(lambda, target)} {Show.Lambda(target.Si)}{rest}");

    private static string Apart(Lambda lambda, Lambda target) =>
        $"{Show.Percent(Math.Abs(Over(lambda, target)))} {Side(lambda, target)}";

    private static string Side(Lambda lambda, Lambda target) => lambda < target ? "below" : "above";

    private static double Over(Lambda lambda, Lambda target) => (lambda.Si / target.Si) - 1;
}
