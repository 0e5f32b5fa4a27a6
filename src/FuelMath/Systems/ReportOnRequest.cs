using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What a settled solve says of its parts, its evidence and its findings, made when it is first asked for.</summary>
/// <remarks>
/// Most of many points are asked for a few numbers only, and the report takes as long as half the solve. What it is made
/// of no longer changes, so that it is the same whenever it is made; a gate keeps threads from making it at once.
/// </remarks>
internal sealed class ReportOnRequest
{
    private readonly KeptSolve solve;
    private readonly Lock gate = new();
    private volatile SystemParts? parts;
    private volatile SystemState.SolutionEvidence? evidence;
    private volatile FindingList? findings;

    /// <summary>Takes what is kept of a solve.</summary>
    /// <exception cref="OutsideTableException">The data of the pumps do not reach as far as their reserve.</exception>
    internal ReportOnRequest(KeptSolve solve)
    {
        this.solve = solve;
        if (solve.Path.ReserveNeedsCurves)
        {
            // A refusal belongs to the solve.
            _ = Parts;
        }
    }

    internal SystemParts Parts
    {
        get
        {
            if (parts is { } known)
            {
                return known;
            }

            lock (gate)
            {
                if (parts is null)
                {
                    using ReportedSolve reported = solve.ForReport();
                    parts = SystemReport.PartsOf(reported);
                }

                return parts;
            }
        }
    }

    internal SystemState.SolutionEvidence Evidence
    {
        get
        {
            if (evidence is { } known)
            {
                return known;
            }

            lock (gate)
            {
                if (evidence is null)
                {
                    using ReportedSolve reported = solve.ForReport();
                    evidence = SystemReport.EvidenceOf(reported);
                }

                return evidence;
            }
        }
    }

    /// <summary>The gravest first.</summary>
    internal ImmutableArray<Finding> Findings => Found.All;

    internal Verdict Verdict => Found.Verdict;

    private FindingList Found
    {
        get
        {
            if (findings is { } known)
            {
                return known;
            }

            lock (gate)
            {
                if (findings is null)
                {
                    using ReportedSolve reported = solve.ForReport();
                    parts ??= SystemReport.PartsOf(reported);
                    findings = new(SystemFindings.Of(reported, parts));
                }

                return findings;
            }
        }
    }

    private sealed class FindingList(ImmutableArray<Finding> all)
    {
        internal ImmutableArray<Finding> All { get; } = all;

        internal Verdict Verdict { get; } = Verdict.Of(all);
    }
}
