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
        Limits limits = solved.System.Limits;
        (double least, double most) = (limits.LowestCorrection.InSi(), limits.HighestCorrection.InSi());
        if (
            bank.Correction?.InSi() is not { } needed
            || (needed >= least * (1 - Guard.EdgeTolerance) && needed <= most * (1 + Guard.EdgeTolerance))
        )
        {
            return;
        }

        bool isLean = needed > most;
        solved.Add(
            CorrectionJudgement.Of(
                needed,
                isLean,
                least,
                most,
                limits.SourceOf(isLean ? Limits.Kind.HighestCorrection : Limits.Kind.LowestCorrection),
                "",
                solved.Parts.Banks.Length > 1 ? bank.Bank : null
            )
        );
    }
}
