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
}
