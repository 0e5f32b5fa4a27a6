using System.Collections.Immutable;
using System.Runtime.InteropServices;
using FuelMath.Tests.Documents;

namespace FuelMath.Tests.Systems;

/// <summary>What a state says beyond its numbers is made when it is asked for, once, and is the same whoever asks.</summary>
public sealed class ReportOnRequestTests
{
    [Fact]
    public void State_AskedByManyThreads_GivesOneReport()
    {
        SystemState state = Solve();

        var seen = new (object Findings, object Evidence, object Injectors)[64];
        Parallel.For(0, seen.Length, i => seen[i] = (Array(state.Findings), state.Evidence, Array(state.Injectors)));

        Assert.All(
            seen,
            one =>
            {
                Assert.Same(seen[0].Findings, one.Findings);
                Assert.Same(seen[0].Evidence, one.Evidence);
                Assert.Same(seen[0].Injectors, one.Injectors);
            }
        );
    }

    [Fact]
    public void State_AskedInAnotherOrderAndAfterOtherSolves_SaysTheSame()
    {
        SystemState early = Solve();
        string[] expected = Said(early);

        SystemState late = Solve();
        for (int i = 0; i < 20; i++)
        {
            Solve();
        }

        _ = late.Verdict;
        _ = late.PumpReserve;
        Assert.Equal(expected, Said(late));
    }

    private static T[] Array<T>(ImmutableArray<T> items) => ImmutableCollectionsMarshal.AsArray(items)!;

    private static SystemState Solve() =>
        SystemDocument
            .Read(TestFiles.System("time-trial-car"))
            .Solve(OperatingListDocument.Read(TestFiles.Points("time-trial-car")).Single(p => p.Name == "peak power"));

    private static string[] Said(SystemState state) =>
        [
            state.Verdict.ToString(),
            .. state.Findings.Select(f => f.ToString()),
            .. state.Injectors.Select(i => i.ToString()),
            .. state.Stages.Select(s => s.ToString()),
            .. state.Pumps.Select(p => p.ToString()),
            .. state.Regulators.Select(r => r.ToString()),
            .. state.Chambers.Select(c => c.ToString()),
            $"{state.PumpReserve}, {state.Lambda}, {state.Evidence}",
        ];
}
