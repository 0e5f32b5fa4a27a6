using FuelMath.Beliefs;
using FuelMath.Findings;
using FuelMath.Internal;

namespace FuelMath.Systems;

/// <summary>What there is to say of the mixture: the mean, and each chamber against it.</summary>
internal sealed class MixtureFindings(SolvedSystem solved)
{
    internal void Look()
    {
        if (solved.Parts.Target is not { } target)
        {
            return;
        }

        double limit = solved.System.Limits.MixtureDeviation.InSi();
        if (solved.Parts.Lambda is { } lambda && Math.Abs((lambda.Si / target.Si) - 1) is var off && off > limit)
        {
            bool lean = lambda > target;
            solved.Add(
                lean ? Severity.Danger : Severity.Warning,
                lean ? "The mixture is leaner than asked for" : "The mixture is richer than asked for",
                $"lambda {Show.Lambda(lambda.Si)}",
                $"{Show.Lambda(target.Si)} within {Show.Percent(limit)}",
                lean
                    ? "Do not load the engine: a lean mixture destroys it. Correct the characterization, the pressure or the injector size first."
                    : "Correct the characterization or the pressure before tuning anything else."
            );
        }

        foreach (ChamberMixture chamber in solved.Parts.Chambers)
        {
            if (
                chamber.Lambda is { } one
                && solved.Parts.Lambda is { } mean
                && (one.Si / mean.Si) - 1 is var lean
                && lean > limit
            )
            {
                solved.Add(
                    Severity.Danger,
                    $"Chamber {chamber.Chamber} runs leaner than the others",
                    $"lambda {Show.Lambda(one.Si)}, {Show.Percent(lean)} above the mean",
                    Show.Percent(limit),
                    "One sensor sees the mean and hides it. Clean, exchange or individually correct that injector before any load."
                );
            }
        }
    }
}
