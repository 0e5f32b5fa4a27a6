using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Every way to solve one network, which has a link of each kind: what it allocates, and on many threads.</summary>
public sealed class SolveOverloadTests
{
    private static readonly Network Network = EveryKind();

    [Fact]
    public void EveryKind_IsInTheNetwork() =>
        Assert.Equal(Enum.GetValues<OwnKind>(), Network.Lines.Select(l => OwnKinds.Of(l.Part)).Distinct().Order());

    [Fact]
    public void Solve_IntoABuffer_AllocatesNothing()
    {
        var buffer = new Network.Buffer(Network);

        Assert.Equal(
            0,
            Bytes(() =>
            {
                buffer.SetPressure("rail space", Gauge(buffer.HasState ? 1 : 0));
                Network.Solve(buffer);
            })
        );
        Assert.Equal(
            0,
            Bytes(() =>
            {
                buffer.Reset();
                Network.Solve(buffer);
            })
        );
    }

    /// <summary>A solve that hands out a state allocates what copying one out of a buffer does, and no more.</summary>
    [Fact]
    public void Solve_ToAState_AllocatesTheStateAlone()
    {
        var buffer = new Network.Buffer(Network);
        Network.Solve(buffer);
        NetworkState near = buffer.ToState();
        long state = Bytes(() => buffer.ToState());

        Assert.True(state > 0);
        Assert.Equal(state, Bytes(() => Network.Solve()));
        Assert.Equal(state, Bytes(() => Network.Solve(near)));
        Assert.Equal(state, Bytes(() => Network.Solve(PlainPump.ApproachSide.FreeFlow)));
    }

    [Fact]
    public void Solve_OneNetworkOnManyThreads_GivesTheSameBits()
    {
        NetworkState cold = Network.Solve();
        NetworkState warm = Network.Solve(cold);

        Parallel.For(
            0,
            400,
            i =>
            {
                NetworkState found =
                    i % 3 == 0 ? Network.Solve()
                    : i % 3 == 1 ? Network.Solve(PlainPump.ApproachSide.NoFlow)
                    : Network.Solve(cold);
                NetworkState expected = i % 3 == 2 ? warm : cold;
                Assert.Equal(expected.Iterations, found.Iterations);
                Assert.Equal(expected.WorstPressureResidual, found.WorstPressureResidual);
                Assert.All(expected.LineNames, l => Assert.Equal(expected.FlowIn(l), found.FlowIn(l)));
                Assert.All(expected.LineNames, l => Assert.Equal(expected.ConditionOf(l), found.ConditionOf(l)));
                Assert.All(
                    expected.JunctionNames,
                    n => Assert.Equal(expected.PressureAt(n).AboveAmbient, found.PressureAt(n).AboveAmbient)
                );
            }
        );
    }

    /// <summary>What a call allocates on this thread once it has run often enough to be compiled.</summary>
    private static long Bytes(Action call)
    {
        for (int i = 0; i < 5; i++)
        {
            call();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        call();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static Network EveryKind()
    {
        PlainPump power = PlainPump.Power(Kilopascals(700), Point(200, 300), Ratio.FromDecimalFractions(1.6));
        PlainPump lift = Straight(OutsideRange.Extend, (0, 90), (150, 60), (250, 10));
        return Fuel(
            Fixed("tank", 0),
            Fixed("rail space", 0),
            Junction("pot"),
            Junction("out"),
            Junction("filtered"),
            Junction("end"),
            Junction("rail"),
            Junction("return"),
            OwnLine.Pump("lift", "tank", "pot", lift),
            OwnLine.Pump("pump", "pot", "out", power),
            OwnLine.CheckValve("relief", "out", "pot", Kilopascals(550), Kilopascals(20), LitersPerHour(100)),
            OwnLine.Filter("filter", "out", "filtered", LitersPerHour(100), Kilopascals(10), Kilopascals(5)),
            Check("check", "filtered", "end", 2),
            OwnLine.CurvedPipe(
                "coil",
                "end",
                "rail",
                Length.FromMeters(2),
                Length.FromMillimeters(7),
                Length.Zero,
                Ratio.Zero,
                Length.FromMillimeters(300)
            ),
            Hose("hose", "end", "rail", 2, 6),
            OwnLine.CheckPipe(
                "back",
                "rail",
                "filtered",
                Length.FromMeters(1),
                Length.FromMillimeters(6),
                Length.Zero,
                Ratio.Zero,
                Pipe.FrictionLaw.SwameeJainCubicPassage
            ),
            OwnLine.BypassRegulator("bypass", "rail", "return", Regulator(300)),
            OwnLine.Fitting("fitting", "return", "tank", Length.FromMillimeters(6), Ratio.FromDecimalFractions(2)),
            OwnLine.ReducingRegulator("reducing", "rail", "low", Regulator(200)),
            Junction("low"),
            OwnLine.Orifice(
                "jet",
                "low",
                "rail space",
                LitersPerHour(20),
                Kilopascals(100),
                InjectorDraw.Backflow.Prevented
            ),
            Injector("injectors", "rail", "rail space", 60, 25)
        );
    }

    private static OwnRegulator Regulator(double set) =>
        new(Kilopascals(set), Gauge(0), Kilopascals(20), LitersPerHour(100));
}
