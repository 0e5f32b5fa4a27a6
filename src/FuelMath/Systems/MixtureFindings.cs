namespace FuelMath;

/// <summary>What there is to say of the mixture of a state.</summary>
internal sealed class MixtureFindings(SolvedSystem solved)
{
    internal void Look()
    {
        // Nothing is metered at fuel cut and in a static flow test.
        if (solved.Point.Command.Kind is FuelCommandKind.Cut or FuelCommandKind.AllOpen)
        {
            return;
        }

        var judgment = new MixtureJudgement(
            solved.System.Fuel,
            solved.Parts.Target,
            solved.System.Limits.MixtureDeviation.InSi(),
            solved.System.Limits.SourceOf(LimitKind.MixtureDeviation),
            ""
        );
        foreach (FuelMath.Finding finding in judgment.Of(solved.Parts.Chambers, solved.Parts.Lambda))
        {
            solved.Add(finding);
        }
    }
}
