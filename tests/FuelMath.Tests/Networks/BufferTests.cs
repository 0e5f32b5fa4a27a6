using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>A buffer that is filled again and again.</summary>
public sealed class BufferTests
{
    [Fact]
    public void Solve_IntoABufferAgainAndAgain_AllocatesNothing()
    {
        Network network = TwoRails.Network;
        var buffer = new Network.Buffer(network);
        Run();
        Run();
        long before = GC.GetAllocatedBytesForCurrentThread();
        double sum = Run();

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);

        double Run()
        {
            double flows = 0;
            for (int i = 0; i < 30; i++)
            {
                buffer.SetFluid(
                    Density.FromKilogramsPerCubicMeter(720 + i),
                    DynamicViscosity.FromPascalSeconds(4e-4 + (1e-6 * i))
                );
                buffer.SetPressure("manifold", new GaugePressure(Pressure.FromPascals(1e3 * i)));
                buffer.SetReference("regulator", new GaugePressure(Pressure.FromPascals(1e3 * i)));
                buffer.SetCommandedFlow("A front", VolumeFlow.FromCubicMetersPerSecond(1e-7 * i));
                buffer.SetDraw("join", VolumeFlow.FromCubicMetersPerSecond(1e-8 * i));
                network.Solve(buffer);
                flows += buffer.FlowIn("return").CubicMetersPerSecond + buffer.PressureAt("join").AboveAmbient.Pascals;
            }

            return flows;
        }
    }

    /// <summary>The first solve starts cold, so that it has the bits of a state; the next starts from it.</summary>
    [Fact]
    public void Solve_IntoABuffer_GivesTheState()
    {
        NetworkState expected = TwoRails.Network.Solve();
        var buffer = new Network.Buffer(TwoRails.Network);

        TwoRails.Network.Solve(buffer);

        Assert.True(buffer.HasState);
        Assert.Equal(expected.Iterations, buffer.Iterations);
        Assert.Equal(expected.WorstMassImbalance.CubicMetersPerSecond, buffer.WorstMassImbalance.CubicMetersPerSecond);
        Assert.Equal(expected.WorstPressureResidual.Pascals, buffer.WorstPressureResidual.Pascals);
        NetworkState copied = buffer.ToState();
        Assert.All(expected.LineNames, l => Assert.Equal(expected.LitersPerHourIn(l), buffer.FlowIn(l).LitersPerHour));
        Assert.All(expected.LineNames, l => Assert.Equal(expected.LitersPerHourIn(l), copied.LitersPerHourIn(l)));
        Assert.All(expected.LineNames, l => Assert.Equal(expected.ConditionOf(l), buffer.ConditionOf(l)));
        Assert.All(
            expected.JunctionNames,
            n => Assert.Equal(expected.KilopascalsAt(n), buffer.PressureAt(n).AboveAmbient.Kilopascals)
        );

        buffer.SetPressure("manifold", Make.Gauge(1));
        TwoRails.Network.Solve(buffer);
        Assert.InRange(buffer.Iterations, 1, expected.Iterations - 1);
        Assert.All(expected.LineNames, l => Assert.Equal(expected.LitersPerHourIn(l), copied.LitersPerHourIn(l)));
    }

    [Fact]
    public void Reset_AfterSettings_BringsBackTheDescription()
    {
        var buffer = new Network.Buffer(TwoRails.Network);
        TwoRails.Network.Solve(buffer);
        double before = buffer.FlowIn("pump").LitersPerHour;
        buffer.SetPump("pump", TwoRails.Curve.AtSpeed(Ratio.FromDecimalFractions(0.8)));
        TwoRails.Network.Solve(buffer);
        Assert.InRange(buffer.FlowIn("pump").LitersPerHour, 1, before - 1);

        buffer.Reset();
        Assert.False(buffer.HasState);
        TwoRails.Network.Solve(buffer);

        Assert.Equal(before, buffer.FlowIn("pump").LitersPerHour);
    }

    [Fact]
    public void FlowIn_BeforeASolveOrAfterARefusal_IsRefused()
    {
        var buffer = new Network.Buffer(TwoRails.Network);
        Empty();
        TwoRails.Network.Solve(buffer);
        buffer.SetDraw("join", Make.LitersPerHour(5000));
        Empty();
        _ = Assert.Throws<NoSolutionException>(() => TwoRails.Network.Solve(buffer));
        Empty();
        buffer.SetDraw("join", VolumeFlow.Zero);
        TwoRails.Network.Solve(buffer);
        Assert.Equal(TwoRails.Network.Solve().LitersPerHourIn("pump"), buffer.FlowIn("pump").LitersPerHour);

        void Empty()
        {
            Assert.Equal(
                "The buffer holds no state: solve the network into it.",
                Assert.Throws<InvalidOperationException>(() => buffer.FlowIn("pump")).Message
            );
        }
    }

    /// <summary>A refusal looks for what could be drawn at most; the next solve is asked for as much as before.</summary>
    [Fact]
    public void Solve_AfterARefusal_HasTheSameSettings()
    {
        var buffer = new Network.Buffer(TwoRails.Network);
        buffer.SetDraw("join", Make.LitersPerHour(5000));
        string first = Assert.Throws<NoSolutionException>(() => TwoRails.Network.Solve(buffer)).Message;

        string second = Assert.Throws<NoSolutionException>(() => TwoRails.Network.Solve(buffer)).Message;

        Assert.Contains("Draws need 5000 L/h", first, StringComparison.Ordinal);
        Assert.Equal(first, second);
    }

    [Fact]
    public void Solve_IntoTheBufferOfAnother_IsRefused()
    {
        Network other = Make.Fuel(Make.Fixed("a", 1), Make.Fixed("b", 0), Make.Linear("link", "a", "b", 1));
        ArgumentException e = Assert.Throws<ArgumentException>(() => TwoRails.Network.Solve(new Network.Buffer(other)));
        Assert.StartsWith(
            "Must be a buffer of this network; it belongs to another.",
            e.Message,
            StringComparison.Ordinal
        );
        Assert.Throws<ArgumentException>(() =>
            new Network.Buffer(TwoRails.Network).SetPump(
                "pump",
                PlainPump.Power(Make.Kilopascals(400), Make.Point(100, 200), Ratio.FromDecimalFractions(2))
            )
        );
        Assert.Throws<ArgumentException>(() =>
            new Network.Buffer(TwoRails.Network).SetPump(
                "pump",
                Make.Straight(OutsideRange.Extend, (0, 900), (450, 400))
            )
        );
    }
}
