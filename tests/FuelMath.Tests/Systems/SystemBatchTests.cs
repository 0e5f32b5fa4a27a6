using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Formulas;
using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Points for the test rig, some of which have no state: volts or pressures beyond the tables, too much air.</summary>
public sealed record AnyRigPoint(double Rpm, double Kilopascals, double Volts, double Celsius, int Command)
{
    internal OperatingPoint Point =>
        Workshop.Point(
            Rpm,
            Kilopascals,
            Command switch
            {
                0 => FuelCommand.Cut,
                1 => FuelCommand.AllOpen,
                2 => Workshop.Hold(0.9),
                3 => FuelCommand.FromPulseWidths([Duration.FromMilliseconds(6)]),
                _ => Workshop.Open(1),
            },
            Volts,
            Celsius
        );
}

public static class SystemBatchArbitraries
{
    public static Arbitrary<AnyRigPoint[]> Points() =>
        Gen.Choose(1, 21)
            .SelectMany(count =>
                (
                    from rpm in Gen.Choose(300, 9500)
                    from kilopascals in Gen.Choose(20, 240)
                    from volts in Gen.Choose(70, 155)
                    from celsius in Gen.Choose(-10, 60)
                    from command in Gen.Choose(0, 8)
                    select new AnyRigPoint(rpm, kilopascals, volts / 10.0, celsius, command)
                ).ArrayOf(count)
            )
            .ToArbitrary();
}

/// <summary>
/// Many points at once are what each is alone: a state within what the rounds settle to, or the same refusal in the same
/// words.
/// </summary>
public sealed class SystemBatchTests
{
    /// <summary>
    /// A state is accepted when a round moves no voltage and no pressure by more than 1e-10 of itself, and rounds
    /// contract by more than half, so that either way in lies within 2e-10 of the state: 4e-10 apart at most. Flows
    /// follow pressures by at most a power of one.
    /// </summary>
    private const double Near = 4e-10;

    public static TheoryData<string, FuelCommand.CommandKind> Bundled()
    {
        var data = new TheoryData<string, FuelCommand.CommandKind>();
        foreach (string system in (string[])["time-trial-car", "training-stand"])
        {
            foreach (
                FuelCommand.CommandKind kind in (FuelCommand.CommandKind[])
                    [
                        FuelCommand.CommandKind.HoldLambda,
                        FuelCommand.CommandKind.OpenLoop,
                        FuelCommand.CommandKind.Cut,
                        FuelCommand.CommandKind.AllOpen,
                    ]
            )
            {
                data.Add(system, kind);
            }
        }

        return data;
    }

    /// <summary>From below idle to beyond peak power, so that some corners have no state.</summary>
    [Theory]
    [MemberData(nameof(Bundled))]
    public void Sweep_OverABundledSystem_IsWhatSolveGivesAlone(string name, FuelCommand.CommandKind kind)
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System(name));
        foreach (OperatingPoint listed in OperatingListDocument.Read(TestFiles.Points(name)))
        {
            OperatingPoint point = listed.WithCommand(
                kind switch
                {
                    FuelCommand.CommandKind.HoldLambda => Workshop.Hold(0.85),
                    FuelCommand.CommandKind.OpenLoop => Workshop.Open(0.85),
                    FuelCommand.CommandKind.Cut => FuelCommand.Cut,
                    _ => FuelCommand.AllOpen,
                }
            );
            RotationalSpeed[] speeds = [.. new[] { 250.0, 900, 3100, 7000, 12000 }.Select(Workshop.Rpm)];
            AbsolutePressure[] manifolds = [.. new[] { 30.0, 95, 180, 260, 900 }.Select(Workshop.Kilopascals)];

            var sweep = new Sweep(system, point, speeds, manifolds, CancellationToken.None);

            Assert.Equal(25, sweep.Points.Length);
            foreach (Sweep.Point found in sweep.Points)
            {
                AreAlike(Alone(system, point.At(found.Speed, found.Manifold)), (found.State, found.Refusal));
            }
        }
    }

    [Property(Arbitrary = [typeof(SystemBatchArbitraries)], MaxTest = 40)]
    public void Run_AnyPoints_AreWhatSolveGivesAlone(AnyRigPoint[] at)
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint[] points = [.. at.Select(p => p.Point)];

        List wide = List.Of<WideLane>(system, points);
        List narrow = List.Of<Lane>(system, points);

        for (int i = 0; i < points.Length; i++)
        {
            (SystemState? State, Exception? Refusal) alone = Alone(system, points[i]);
            AreAlike(alone, wide.Found[i]);
            AreAlike(alone, narrow.Found[i]);
        }
    }

    /// <summary>A point's bits depend neither on its neighbors nor on its place, refused ones among them.</summary>
    [Property(Arbitrary = [typeof(SystemBatchArbitraries)], MaxTest = 20)]
    public void Run_OtherNeighbors_LeaveTheSameBits(AnyRigPoint[] at)
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint[] points = [.. at.Select(p => p.Point)];

        List all = List.Of<WideLane>(system, points);

        for (int i = 0; i < points.Length; i++)
        {
            (SystemState? state, Exception? refusal) = List.Of<WideLane>(system, [points[i]]).Found[0];
            Assert.Equal(refusal?.Message, all.Found[i].Refusal?.Message);
            Assert.Equal(Numbers(state), Numbers(all.Found[i].State));
        }
    }

    /// <summary>The points above do bring both states and refusals, and refusals of several kinds.</summary>
    [Fact]
    public void Run_MixedPoints_RefusesSomeForSeveralReasons()
    {
        AnyRigPoint[] at =
        [
            new(3000, 100, 13.8, 20, 2),
            new(3000, 100, 7, 20, 2),
            new(9500, 100, 13.8, 20, 2),
            new(3000, 100, 13.8, 200, 2),
            new(3000, 100, 13.8, 20, 1),
        ];

        List found = List.Of<WideLane>(Workshop.Four(), [.. at.Select(p => p.Point)]);

        Assert.Equal([true, false, false, false, true], found.Found.Select(f => f.State is not null));
        Assert.Equal(3, found.Found.Select(f => f.Refusal?.Message).OfType<string>().Distinct().Count());
    }

    private static void AreAlike(
        (SystemState? State, Exception? Refusal) alone,
        (SystemState? State, Exception? Refusal) found
    )
    {
        Assert.Equal(alone.Refusal?.GetType(), found.Refusal?.GetType());
        Assert.Equal(alone.Refusal?.Message, found.Refusal?.Message);
        if (alone.State is null || found.State is null)
        {
            Assert.Equal(alone.State is null, found.State is null);
            return;
        }

        Assert.Equal(
            alone.State.Findings.Select(f => (f.Severity, f.What)),
            found.State.Findings.Select(f => (f.Severity, f.What))
        );
        Assert.Equal(alone.State.Regulators.Select(r => r.State), found.State.Regulators.Select(r => r.State));
        double[][] expected = Numbers(alone.State);
        double[][] actual = Numbers(found.State);
        for (int row = 0; row < expected.Length; row++)
        {
            double scale = expected[row].Max(Math.Abs);
            for (int i = 0; i < expected[row].Length; i++)
            {
                Close.WithinOf(scale, Near, expected[row][i], actual[row][i]);
            }
        }
    }

    /// <summary>All that a state says, one kind of number a row.</summary>
    private static double[][] Numbers(SystemState? state) =>
        state is null
            ? []
            :
            [
                [.. state.Injectors.Select(i => i.DifferentialPressure.InSi())],
                [.. state.Injectors.Select(i => i.MeanFlow.InSi())],
                [.. state.Injectors.Select(i => i.Voltage.InSi())],
                [.. state.Stages.Select(s => s.PulseWidth.InSi())],
                [.. state.Pumps.Select(p => p.Voltage.InSi())],
                [.. state.Pumps.Select(p => p.Current.InSi())],
                [.. state.Pumps.Select(p => p.Flow.InSi())],
                [.. state.Pumps.Select(p => p.PressureRise.InSi())],
                [.. state.Regulators.Select(r => r.Inlet!.Value.Si)],
                [.. state.Regulators.Select(r => r.BypassedFlow.InSi())],
                [.. state.Chambers.Select(c => c.Lambda?.ToRatio() ?? 0)],
            ];

    private static (SystemState? State, Exception? Refusal) Alone(FuelSystem system, OperatingPoint point)
    {
        try
        {
            return (system.Solve(point), null);
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            return (null, refusal);
        }
    }

    /// <summary>Any points, in lanes of one width.</summary>
    private sealed class List(OperatingPoint[] points) : ISystemPoints
    {
        internal (SystemState? State, Exception? Refusal)[] Found { get; } =
            new (SystemState?, Exception?)[points.Length];

        internal static List Of<T>(FuelSystem system, OperatingPoint[] points)
            where T : struct, ILane<T>
        {
            var list = new List(points);
            SystemBatch.RunIn<T>(system.Path, list, points.Length, null, CancellationToken.None);
            return list;
        }

        public void Begin(int point, SolverState state) => state.Begin(points[point], null);

        public void Solved(int point, SettledSolve solve) => Found[point] = (new SystemState(solve.Keep()), null);

        public void Refused(int point, Exception why) => Found[point] = (null, why);
    }
}
