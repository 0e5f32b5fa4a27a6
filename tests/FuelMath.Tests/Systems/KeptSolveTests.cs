using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// A state keeps numbers of its own and no room of the solver, which serves the next solve: later solves and other threads
/// change nothing in it, and it is small.
/// </summary>
public sealed class KeptSolveTests
{
    /// <summary>Bytes of a solve, its result included.</summary>
    private const long Most = 2000;

    public static TheoryData<string> Bundled => ["time-trial-car", "training-stand", "circuit-car"];

    [Theory]
    [MemberData(nameof(Bundled))]
    public void State_AskedAfterAllOtherPoints_SaysWhatItSaidAtOnce(string name)
    {
        (FuelSystem system, OperatingPoint[] points) = Read(name);
        string[][] atOnce = [.. points.Select(p => Said(() => system.Solve(p)))];

        Func<SystemState>[] kept = [.. points.Select(p => Solved(system, p))];

        Assert.Equal(atOnce, kept.Select(Said));
    }

    [Theory]
    [MemberData(nameof(Bundled))]
    public void States_OfOneSystemOnManyThreads_SayWhatTheySayAlone(string name)
    {
        (FuelSystem system, OperatingPoint[] points) = Read(name);
        string[][] alone = [.. points.Select(p => Said(() => system.Solve(p)))];
        string[][] found = new string[20 * points.Length][];

        Parallel.For(0, found.Length, i => found[i] = Said(Solved(system, points[i % points.Length])));

        Assert.All(found.Index(), f => Assert.Equal(alone[f.Index % points.Length], f.Item));
    }

    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    public void Solve_OfAPreparedSystem_TakesLessThanTwoKilobytes(string name)
    {
        (FuelSystem system, OperatingPoint[] points) = Read(name);
        OperatingPoint point = points.First(p => p.Name == "peak power");
        FuelCommand[] commands =
        [
            point.Command,
            FuelCommand.HoldLambda(Lambda.FromRatio(0.82)),
            FuelCommand.OpenLoop(Lambda.FromRatio(0.82)),
            FuelCommand.Cut,
        ];

        Assert.All(commands, c => Assert.InRange(BytesOf(system, point.WithCommand(c)), 1, Most));
    }

    /// <summary>The least of some: the first solves make what later ones use again.</summary>
    private static long BytesOf(FuelSystem system, OperatingPoint point)
    {
        long least = long.MaxValue;
        for (int i = 0; i < 50; i++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            GC.KeepAlive(system.Solve(point));
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }

    private static (FuelSystem System, OperatingPoint[] Points) Read(string name)
    {
        OperatingPoint[] points = [.. OperatingListDocument.Read(TestFiles.Points(name))];
        return (
            SystemDocument.Read(TestFiles.System(name)),
            [
                .. points,
                .. points.Select(p => p.WithCommand(FuelCommand.Cut)),
                .. points.Select(p => p.WithCommand(FuelCommand.AllOpen)),
            ]
        );
    }

    /// <summary>Solves at once, and gives the state or the refusal later.</summary>
    private static Func<SystemState> Solved(FuelSystem system, OperatingPoint point)
    {
        try
        {
            SystemState state = system.Solve(point);
            return () => state;
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return () => throw refusal;
        }
    }

    /// <summary>All that a state says, or its refusal.</summary>
    private static string[] Said(Func<SystemState> given)
    {
        try
        {
            SystemState state = given();
            return
            [
                state.Verdict.ToString(),
                .. state.Findings.Select(f => f.ToString()),
                .. state.Injectors.Select(i => $"{i.DifferentialPressure.Pascals:R}, {i.Pulse.Mass.Kilograms:R}"),
                .. state.Stages.Select(s => $"{s.PulseWidth.Seconds:R}, {s.DutyCycle.DecimalFractions:R}"),
                .. state.Pumps.Select(p =>
                    $"{p.Voltage.Volts:R}, {p.Current.Amperes:R}, {p.PressureRise.Pascals:R}, {p.Flow.CubicMetersPerSecond:R}"
                ),
                .. state.Regulators.Select(r => $"{r.State}, {r.BypassedFlow.CubicMetersPerSecond:R}"),
                .. state.Chambers.Select(c => $"{c.Lambda}, {c.Fuel.Kilograms:R}"),
                .. state.Network.LineNames.Select(l =>
                    $"{state.Network.ConditionOf(l)}, {state.Network.FlowIn(l).CubicMetersPerSecond:R}"
                ),
                .. state.Network.JunctionNames.Select(n =>
                    state.Network.TryPressureAt(n, out GaugePressure found) ? $"{found.AboveAmbient.Pascals:R}" : n
                ),
                $"{state.PumpReserve?.CubicMetersPerSecond:R}, {state.Evidence.Rounds}, {state.Evidence.Iterations}",
            ];
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return [refusal.Message];
        }
    }
}
