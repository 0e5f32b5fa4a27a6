namespace FuelMath;

/// <summary>What there is to say of the mixture of a state.</summary>
internal sealed class MixtureFindings(SolvedSystem solved)
{
    internal void Find()
    {
        // Nothing is metered at fuel cut, in a static flow test, and where widths of zero keep every stage shut.
        if (
            solved.Point.Command.Kind is FuelCommand.CommandKind.Cut or FuelCommand.CommandKind.AllOpen
            || (
                solved.Point.Command.Kind == FuelCommand.CommandKind.PulseWidths
                && solved.Parts.Stages.All(s => s.IsShut)
            )
        )
        {
            return;
        }

        foreach (BankResult bank in solved.Parts.Banks)
        {
            LookAtCorrection(bank);
            var judgement = new MixtureJudgement(
                solved.System.Fuel,
                solved.Parts.Target,
                solved.System.Limits.MixtureDeviation.InSi(),
                solved.System.Limits.SourceOf(Limits.Kind.MixtureDeviation),
                "",
                solved.Parts.Banks.Length > 1 ? bank.Bank : null
            );
            foreach (
                FuelMath.Finding finding in judgement.Of(
                    [.. bank.Chambers.Select(c => solved.Parts.Chambers[c - 1])],
                    bank.Lambda
                )
            )
            {
                solved.Add(finding);
            }
        }
    }

    /// <summary>
    /// A state in which a sensor holds the mixture is one with whatever correction that needs. A controller has a limit.
    /// </summary>
    private void LookAtCorrection(BankResult bank)
    {
        MixtureLimits limits = MixtureLimits.CommonPractice;
        (double least, double most) = (limits.LowestCorrection.InSi(), limits.HighestCorrection.InSi());
        if (bank.Correction?.InSi() is not { } needed || (needed >= least && needed <= most))
        {
            return;
        }

        bool lean = needed > most;
        string left = Show.Percent(Math.Abs((needed / (lean ? most : least)) - 1));
        string part = solved.Parts.Banks.Length > 1 ? $"bank {bank.Bank}" : "mixture";
        solved.Add(
            FindingCode.CorrectionAtLimit,
            lean ? Severity.Danger : Severity.Warning,
            part,
            solved.Parts.Banks.Length > 1
                ? $"Bank {bank.Bank} needs more correction than controllers give"
                : "The mixture needs more correction than controllers give",
            Shown.Percent(needed).As($"{Show.Percent(needed)} of the fuel that it would give by itself"),
            Shown.Percent(lean ? most : least).As($"{Show.Percent(least)} to {Show.Percent(most)}"),
            lean
                ? $"Do not load the engine: at that limit the mixture stays {left} leaner than asked for. Correct what the controller was told of injectors, pressure and fuel."
                : $"At that limit the mixture stays {left} richer than asked for. Correct what the controller was told of injectors, pressure and fuel.",
            limits.Source
        );
    }
}
