namespace FuelMath.Samples.Assessment;

/// <summary>What the program answers to a script: 0 holds, 1 act first or do not run, 2 not known or refused.</summary>
internal static class ExitCode
{
    internal const int Refused = 2;

    internal static int Of(Verdict.Outcome kind) =>
        kind switch
        {
            Verdict.Outcome.Holds => 0,
            Verdict.Outcome.ActFirst or Verdict.Outcome.DoNotRun => 1,
            _ => Refused,
        };
}
