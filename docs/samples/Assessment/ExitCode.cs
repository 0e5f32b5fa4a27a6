namespace FuelMath.Samples.Assessment;

/// <summary>What the program answers to a script: 0 holds, 1 act first or do not run, 2 not known or refused.</summary>
internal static class ExitCode
{
    internal const int Refused = 2;

    internal static int Of(VerdictKind kind) =>
        kind switch
        {
            VerdictKind.Holds => 0,
            VerdictKind.ActFirst or VerdictKind.DoNotRun => 1,
            _ => Refused,
        };
}
