using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>One network at many points: each comes out as if it were alone.</summary>
public sealed class BatchTests
{
    private const int Count = 203;

    /// <summary>Fuel cut, idle, cruise, full, held open, and one that asks for more than the pump gives.</summary>
    private static NetworkBatch Batch
    {
        get
        {
            var random = new Random(7);
            double[] draws = [.. Enumerable.Range(0, Count).Select(i => i % 50 == 49 ? 5000 : 0.0)];
            GaugePressure[] manifold =
            [
                .. Enumerable.Range(0, Count).Select(_ => Make.Gauge(-60 + (210 * random.NextDouble()))),
            ];
            NetworkBatch batch = new NetworkBatch(TwoRails.Network, Count)
                .WithFluid(
                    Enumerable
                        .Range(0, Count)
                        .Select(_ => Density.FromKilogramsPerCubicMeter(720 + (50 * random.NextDouble()))),
                    Enumerable
                        .Range(0, Count)
                        .Select(_ => DynamicViscosity.FromMillipascalSeconds(0.4 + (0.4 * random.NextDouble())))
                )
                .WithPressure("manifold", manifold)
                .WithReference("regulator", manifold)
                .WithDraw("join", draws.Select(Make.LitersPerHour))
                .WithPump(
                    "pump",
                    Enumerable
                        .Range(0, Count)
                        .Select(_ =>
                            TwoRails.Curve.AtSpeed(Ratio.FromDecimalFractions(0.8 + (0.3 * random.NextDouble())))
                        )
                );
            foreach (string injector in TwoRails.Injectors)
            {
                double[] commanded = [.. Enumerable.Range(0, Count).Select(i => i % 9 * 6.0)];
                batch = batch.WithInjectors(
                    injector,
                    commanded.Select(_ => Make.LitersPerHour(30 + (10 * random.NextDouble()))),
                    Make.Kilopascals(300),
                    commanded.Select(Make.LitersPerHour)
                );
            }

            return batch;
        }
    }

    [Fact]
    public void Solve_ManyPoints_GivesTheBitsOfEachAlone()
    {
        NetworkBatch batch = Batch;
        Compare(batch, batch.Solve(null, CancellationToken.None), batch.StateAt);
    }

    [Fact]
    public void Solve_ManyPointsFromAState_GivesTheBitsOfEachAlone()
    {
        NetworkBatch batch = Batch;
        NetworkState start = TwoRails.Network.Solve();
        Compare(batch, batch.Solve(start, null, CancellationToken.None), i => batch.StateAt(i, start));
    }

    [Fact]
    public void Run_InVectorsOfEitherWidth_GivesTheSameBits()
    {
        BatchNumbers wide = Batch.Runner(null).RunIn<WideLane>(Count, null, CancellationToken.None);
        BatchNumbers narrow = Batch.Runner(null).RunIn<Lane>(Count, null, CancellationToken.None);

        int[] solved = [.. Enumerable.Range(0, Count).Where(i => wide.Refusal[i] is null)];
        Assert.InRange(solved.Length, Count / 2, Count - 1);
        Assert.All(
            solved,
            i =>
            {
                Assert.All(
                    Enumerable.Range(0, TwoRails.Network.Lines.Length),
                    e => Assert.Equal(wide.FlowRow(e)[i], narrow.FlowRow(e)[i])
                );
                Assert.Equal(wide.Iterations[i], narrow.Iterations[i]);
            }
        );
    }

    /// <summary>The lanes' logarithm differs in the last place, and Newton's last step squares what is left.</summary>
    [Fact]
    public void Solve_ManyPoints_AgreesWithABufferAtTheSameSettings()
    {
        GaugePressure[] manifold = [.. Enumerable.Range(0, 30).Select(i => Make.Gauge(5 * i))];
        NetworkBatch.Result result = new NetworkBatch(TwoRails.Network, 30)
            .WithPressure("manifold", manifold)
            .WithReference("regulator", manifold)
            .WithCommandedFlow("A front", manifold.Select((_, i) => Make.LitersPerHour(i)))
            .Solve(null, CancellationToken.None);
        var buffer = new Network.Buffer(TwoRails.Network);
        for (int i = 0; i < manifold.Length; i++)
        {
            buffer.Reset();
            buffer.SetPressure("manifold", manifold[i]);
            buffer.SetReference("regulator", manifold[i]);
            buffer.SetCommandedFlow("A front", Make.LitersPerHour(i));
            TwoRails.Network.Solve(buffer);
            double scale = buffer.FlowIn("pump").LitersPerHour;
            Assert.All(
                TwoRails.Network.Lines,
                l =>
                    Close.WithinOf(
                        scale,
                        1e-11,
                        buffer.FlowIn(l.Name).LitersPerHour,
                        result.FlowIn(l.Name, i).LitersPerHour
                    )
            );
        }
    }

    /// <summary>
    /// Pump behind a check that shuts: those points are cut off or filled, and say so as a single state does.
    /// </summary>
    [Fact]
    public void Solve_PointsBehindAShutCheck_AreThoseOfEachAlone()
    {
        Network network = Make.Fuel(
            Make.Fixed("low", 100),
            Make.Fixed("high", 200),
            Make.Junction("rail"),
            Make.Junction("between"),
            Make.Check("first", "low", "rail", 0),
            Make.Hose("hose", "rail", "between", 1, 8),
            Make.Check("second", "between", "high", 0)
        );
        NetworkBatch batch = new NetworkBatch(network, 20).WithPressure(
            "low",
            Enumerable.Range(0, 20).Select(i => Make.Gauge(150 + (5 * i)))
        );

        NetworkBatch.Result result = batch.Solve(null, CancellationToken.None);

        Assert.Equal(20, result.SolvedCount);
        Compare(batch, result, batch.StateAt);
        Assert.Equal(0, result.FlowIn("hose", 0).LitersPerHour, 1e-6);
        Assert.Equal(150, result.PressureAt("between", 0).AboveAmbient.Kilopascals, 1e-6);
    }

    [Fact]
    public void Solve_PowerPumpAtManySpeeds_FollowsTheSpeeds()
    {
        PlainPump pump = PlainPump.Power(Make.Kilopascals(400), Make.Point(100, 200), Ratio.FromDecimalFractions(2));
        Network Of(PlainPump p) =>
            Make.Fuel(
                Make.Fixed("tank", 0),
                Make.Fixed("end", 0),
                Make.Junction("out"),
                OwnLine.Pump("pump", "tank", "out", p),
                Make.Linear("loss", "out", "end", 100)
            );
        PlainPump[] pumps =
        [
            .. Enumerable.Range(0, 11).Select(i => pump.AtSpeed(Ratio.FromDecimalFractions(0.5 + (0.1 * i)))),
        ];

        NetworkBatch.Result result = new NetworkBatch(Of(pump), 11)
            .WithPump("pump", pumps)
            .Solve(null, CancellationToken.None);

        for (int i = 0; i < pumps.Length; i++)
        {
            // The power of vectors is within some units in the last place.
            Close.Within(1e-11, Of(pumps[i]).Solve().LitersPerHourIn("pump"), result.FlowIn("pump", i).LitersPerHour);
        }
    }

    [Fact]
    public void PressureAt_NodeOfFixedPressure_IsTheOneGiven()
    {
        GaugePressure[] manifold = [Make.Gauge(-40), Make.Gauge(120)];
        NetworkBatch.Result result = new NetworkBatch(TwoRails.Network, 2)
            .WithPressure("manifold", manifold)
            .Solve(null, CancellationToken.None);

        Assert.Equal(manifold[0], result.PressureAt("manifold", 0));
        Assert.Equal(manifold[1], result.PressureAt("manifold", 1));
        Assert.Equal(0, result.PressureAt("tank", 1).AboveAmbient.Kilopascals);
        Assert.True(result.TryPressureAt("tank", 1, out _));
    }

    /// <summary>In every state of parts that a batch can come to: each as its state says, refused points apart.</summary>
    [Fact]
    public void ConditionOf_ManyPoints_MeetsEachCondition()
    {
        NetworkBatch.Result result = Batch.Solve(null, CancellationToken.None);
        Network.LineCondition[] injectors =
        [
            .. Enumerable
                .Range(0, Count)
                .Where(i => result.RefusalAt(i) is null)
                .SelectMany(i => TwoRails.Injectors.Select(l => result.ConditionOf(l, i))),
        ];

        Assert.Equal(
            [Network.LineCondition.HeldOpen, Network.LineCondition.Commanded, Network.LineCondition.Shut],
            injectors.Distinct().Order()
        );
        Assert.Throws<InvalidOperationException>(() => result.ConditionOf("pump", 49));
        Assert.False(result.TryFlowIn("pump", 49, out _));
        Assert.False(result.TryPressureAt("join", 49, out _));
        Assert.False(result.TryPressureAt("tank", 49, out _));
    }

    [Fact]
    public void RefusalAt_PointThatAsksTooMuch_SaysWhy()
    {
        NetworkBatch.Result result = Batch.Solve(null, CancellationToken.None);

        NoSolutionException refusal = Assert.IsType<NoSolutionException>(result.RefusalAt(49));
        FuelMath.Tests.Words.Says("5000 L/h", refusal);
        InvalidOperationException asked = Assert.Throws<InvalidOperationException>(() => result.FlowIn("pump", 49));
        Assert.StartsWith("Point 49 has no state.", asked.Message, StringComparison.Ordinal);
        Assert.Same(refusal, asked.InnerException);
    }

    /// <summary>
    /// A linear network: the flow is the supply pressure over the sum of two losses, so that its mean and spread over
    /// uniform losses are known in closed form: E[1/r] = ln(b/a)/(b - a), E[1/r2] = 1/(ab).
    /// </summary>
    [Fact]
    public void Solve_UniformSupply_HasTheSpreadOfTheClosedForm()
    {
        const int points = 20_000;
        var random = new Random(3);
        Network network = Make.Fuel(
            Make.Fixed("supply", 300),
            Make.Fixed("end", 0),
            Make.Junction("middle"),
            Make.Linear("first", "supply", "middle", 100),
            Make.Linear("second", "middle", "end", 100)
        );

        NetworkBatch.Result result = new NetworkBatch(network, points)
            .WithPressure(
                "supply",
                Enumerable.Range(0, points).Select(_ => Make.Gauge(200 + (200 * random.NextDouble())))
            )
            .Solve(null, CancellationToken.None);

        // 100 L/h per 200 kPa: uniform from 100 to 200 L/h, mean 150, deviation 100/sqrt(12); five standard errors.
        double[] flows = [.. Enumerable.Range(0, points).Select(i => result.FlowIn("second", i).LitersPerHour)];
        double mean = flows.Average();
        double deviation = Math.Sqrt(flows.Sum(f => (f - mean) * (f - mean)) / (points - 1));
        Assert.Equal(points, result.SolvedCount);
        Assert.Equal(150, mean, 5 * 28.87 / Math.Sqrt(points));
        Assert.Equal(28.87, deviation, 5 * 28.87 / Math.Sqrt(2.0 * points));
    }

    [Fact]
    public void Solve_WithProgress_ReportsRisingCountsToTheEnd()
    {
        List<int> reports = [];
        var batch = new NetworkBatch(TwoRails.Network, 3000);

        _ = batch.Solve(new Direct(reports.Add), CancellationToken.None);

        Assert.Equal(3000, reports[^1]);
        Assert.True(reports.Count > 1);
        Assert.Equal(reports.Order(), reports);
    }

    [Fact]
    public void Solve_Cancelled_Stops()
    {
        using var source = new CancellationTokenSource();
        var batch = new NetworkBatch(TwoRails.Network, 100_000);
        int done = 0;

        Assert.ThrowsAny<OperationCanceledException>(() =>
            batch.Solve(
                new Direct(n =>
                {
                    done = n;
                    source.Cancel();
                }),
                source.Token
            )
        );
        Assert.InRange(done, 1, 99_999);
    }

    [Fact]
    public void With_WhatIsNotThere_IsRefused()
    {
        var batch = new NetworkBatch(TwoRails.Network, 2);
        GaugePressure[] two = [Make.Gauge(0), Make.Gauge(1)];

        Words(
            () => batch.WithPressure("join", two),
            "Must be a node of fixed pressure; the pressure of 'join' is sought."
        );
        Words(() => batch.WithDraw("tank", [default, default]), "Must be a junction; the pressure of 'tank' is fixed");
        Words(() => batch.WithReference("feed", two), "Must hold a regulator; 'feed' holds a Pipe.");
        Words(() => batch.WithCommandedFlow("feed", [default, default]), "Must hold injectors; 'feed' holds a Pipe.");
        Words(() => batch.WithPump("feed", [TwoRails.Curve, TwoRails.Curve]), "Must hold a pump; 'feed' holds a Pipe.");
        Words(() => batch.WithPressure("tank", [two[0]]), "Must hold one value a point, 2; it held 1.");
        Words(
            () => batch.WithPump("pump", [TwoRails.Curve, Make.Straight(OutsideRange.Extend, (0, 900), (450, 400))]),
            "The pump in the place of 'pump' must treat what lies beyond the ends of its points as the network's own does."
        );
        Words(() => new NetworkBatch(TwoRails.Network, 0), "from 1 to 100000000");
        Words(() => batch.StateAt(2), "from 0 to 1");
        Words(
            () => batch.Solve(Make.Fuel([.. SomeNetwork]).Solve(), null, CancellationToken.None),
            "Must be a state of a network with the same nodes and links."
        );
    }

    private static object[] SomeNetwork => [Make.Fixed("a", 1), Make.Fixed("b", 0), Make.Linear("link", "a", "b", 1)];

    private static void Words(Func<object> call, string words) =>
        Assert.Contains(words, Assert.ThrowsAny<ArgumentException>(call).Message, StringComparison.Ordinal);

    private static void Compare(NetworkBatch batch, NetworkBatch.Result result, Func<int, NetworkState> alone)
    {
        for (int i = 0; i < batch.Count; i++)
        {
            if (result.RefusalAt(i) is { } refusal)
            {
                Assert.Equal(refusal.Message, Assert.ThrowsAny<Exception>(() => alone(i)).Message);
                continue;
            }

            NetworkState state = alone(i);
            Assert.Equal(state.Iterations, result.IterationsAt(i));
            Assert.All(state.LineNames, l => Assert.Equal(state.LitersPerHourIn(l), result.FlowIn(l, i).LitersPerHour));
            Assert.All(state.LineNames, l => Assert.Equal(state.ConditionOf(l), result.ConditionOf(l, i)));
            Assert.All(
                state.JunctionNames,
                n => Assert.Equal(!state.CutOffNodeNames.Contains(n), result.TryPressureAt(n, i, out _))
            );
            Assert.All(
                state.JunctionNames.Except(state.CutOffNodeNames),
                n => Assert.Equal(state.KilopascalsAt(n), result.PressureAt(n, i).AboveAmbient.Kilopascals)
            );
            Assert.All(
                state.CutOffNodeNames,
                n => Assert.Throws<InvalidOperationException>(() => result.PressureAt(n, i))
            );
        }
    }

    /// <summary>Progress told at once, on the thread that reports.</summary>
    private sealed class Direct(Action<int> told) : IProgress<int>
    {
        public void Report(int value) => told(value);
    }
}
