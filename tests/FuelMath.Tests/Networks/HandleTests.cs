using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>Handles say the same as names, without a search; and a node that is cut off is told without an exception.</summary>
public sealed class HandleTests
{
    [Fact]
    public void Handles_OfANetwork_SayWhatItsNamesSay()
    {
        Network.NodeHandle join = TwoRails.Network.FindNode("join");
        Network.LineHandle regulator = TwoRails.Network.FindLine("regulator");
        NetworkState state = TwoRails.Network.Solve();
        Network.Buffer buffer = new(TwoRails.Network);
        TwoRails.Network.Solve(buffer);
        NetworkBatch.Result batch = new NetworkBatch(TwoRails.Network, 1).Solve(null, CancellationToken.None);

        Assert.Equal(("join", "regulator"), (join.Name, regulator.ToString()));
        Assert.Equal(state.PressureAt("join"), state.PressureAt(join));
        Assert.Equal(state.FlowIn("regulator"), state.FlowIn(regulator));
        Assert.Equal(state.ConditionOf("regulator"), state.ConditionOf(regulator));
        Assert.Equal(state.PressureDifferenceOver("regulator"), state.PressureDifferenceOver(regulator));
        Assert.Equal(buffer.PressureAt("join"), buffer.PressureAt(join));
        Assert.Equal(buffer.FlowIn("regulator"), buffer.FlowIn(regulator));
        Assert.Equal(buffer.ConditionOf("regulator"), buffer.ConditionOf(regulator));
        Assert.Equal(batch.PressureAt("join", 0), batch.PressureAt(join, 0));
        Assert.Equal(batch.FlowIn("regulator", 0), batch.FlowIn(regulator, 0));
        Assert.Equal(batch.ConditionOf("regulator", 0), batch.ConditionOf(regulator, 0));
    }

    /// <summary>Each setter by handle against the one by name.</summary>
    [Fact]
    public void Handles_InABuffer_SetWhatNamesSet()
    {
        Network network = TwoRails.Network;
        PlainPump slower = TwoRails.Curve.AtSpeed(Ratio.FromDecimalFractions(0.9));
        Network.Buffer named = new(network);
        named.SetPressure("manifold", Make.Gauge(50));
        named.SetReference("regulator", Make.Gauge(50));
        named.SetCommandedFlow("A front", Make.LitersPerHour(12));
        named.SetDraw("join", Make.LitersPerHour(7));
        named.SetPump("pump", slower);
        Network.Buffer handled = new(network);
        handled.SetPressure(network.FindNode("manifold"), Make.Gauge(50));
        handled.SetReference(network.FindLine("regulator"), Make.Gauge(50));
        handled.SetCommandedFlow(network.FindLine("A front"), Make.LitersPerHour(12));
        handled.SetDraw(network.FindNode("join"), Make.LitersPerHour(7));
        handled.SetPump(network.FindLine("pump"), slower);

        network.Solve(named);
        network.Solve(handled);

        Assert.All(network.Lines, l => Assert.Equal(named.FlowIn(l.Name), handled.FlowIn(l.Name)));
        Words.Refused<ArgumentException>(
            "node",
            "'tank'",
            () => handled.SetDraw(network.FindNode("tank"), VolumeFlow.Zero)
        );
    }

    [Fact]
    public void Handles_InALoop_AllocateNothing()
    {
        Network network = TwoRails.Network;
        Network.NodeHandle join = network.FindNode("join");
        Network.LineHandle injector = network.FindLine("A front");
        Network.Buffer buffer = new(network);
        Run();
        Run();
        long before = GC.GetAllocatedBytesForCurrentThread();
        double sum = Run();

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);

        double Run()
        {
            double pressures = 0;
            for (int i = 0; i < 30; i++)
            {
                buffer.SetDraw(join, VolumeFlow.FromCubicMetersPerSecond(1e-8 * i));
                buffer.SetCommandedFlow(injector, VolumeFlow.FromCubicMetersPerSecond(1e-7 * i));
                network.Solve(buffer);
                pressures +=
                    buffer.TryPressureAt(join, out GaugePressure found) && buffer.ConditionOf(injector) > 0
                        ? found.AboveAmbient.Pascals
                        : 0;
            }

            return pressures;
        }
    }

    /// <summary>The network at other conditions, in a car that speeds up, and after a state is still that network.</summary>
    [Fact]
    public void Handles_OfANetworkThatMoved_StillHold()
    {
        Network network = new(
            [
                Network.Node.FixedPressure("tank", Make.Gauge(0), Length.Zero),
                Network.Node.Junction("rail", Length.Zero),
            ],
            [
                new Line(
                    "pump",
                    "tank",
                    "rail",
                    PlainPump.Straight([Make.Point(0, 900), Make.Point(900, 100)], OutsideRange.Extend)
                ).SwitchedBy(PumpSwitch.PressureBelow("rail", Make.Gauge(0), Make.Gauge(1e4), true)),
                new Line(
                    "back",
                    "rail",
                    "tank",
                    new PlainFitting(Length.FromMillimeters(6), Ratio.FromDecimalFractions(100))
                ),
            ]
        );
        Network.NodeHandle rail = network.FindNode("rail");
        NetworkConditions fuel = new(
            Density.FromKilogramsPerCubicMeter(740),
            DynamicViscosity.FromMillipascalSeconds(0.4)
        );
        NetworkState state = network.Solve(fuel);
        Network moved = network
            .Under(new VehicleAcceleration(Acceleration.FromStandardGravity(1), Acceleration.Zero, Acceleration.Zero))
            .After(state)
            .At(fuel);

        Assert.Equal(state.PressureAt("rail"), state.PressureAt(rail));
        Assert.Equal(moved.Solve().PressureAt("rail"), moved.Solve().PressureAt(rail));
    }

    [Fact]
    public void Handles_OfAnotherNetwork_AreRefused()
    {
        Network other = Make.Fuel(Make.Fixed("a", 1), Make.Fixed("b", 0), Make.Linear("link", "a", "b", 1));
        NetworkState state = TwoRails.Network.Solve();

        Words.Refused<ArgumentException>("node", "'a'", () => state.PressureAt(other.FindNode("a")));
        Words.Refused<ArgumentException>("line", "'link'", () => state.FlowIn(other.FindLine("link")));
        Words.Refused<ArgumentException>("node", () => state.PressureAt(default(Network.NodeHandle)));
        Words.Refused<ArgumentException>("name", "'nowhere'", () => other.FindNode("nowhere"));
        Words.Refused<ArgumentException>("name", "'nowhere'", () => other.FindLine("nowhere"));
    }

    /// <summary>Between two check valves that shut against each other, a lower pressure on both sides: nothing fills it.</summary>
    [Fact]
    public void TryPressureAt_NodeThatIsCutOff_SaysSo()
    {
        Network network = Make.Fuel(
            Make.Fixed("low", 0),
            Make.Fixed("high", 300),
            Make.Junction("between"),
            Make.Check("out", "between", "high", 0),
            Make.Check("other", "between", "low", 0),
            Make.Linear("past", "high", "low", 100)
        );
        NetworkState state = network.Solve();
        Network.Buffer buffer = new(network);
        network.Solve(buffer);

        Assert.Equal("between", Assert.Single(state.CutOffNodeNames));
        Assert.False(state.TryPressureAt("between", out _));
        Assert.False(state.TryPressureAt(network.FindNode("between"), out _));
        Assert.False(state.TryPressureDifferenceOver("out", out _));
        Assert.False(state.TryPressureDifferenceOver(network.FindLine("out"), out _));
        Assert.False(buffer.TryPressureAt("between", out _));
        Assert.True(state.TryPressureDifferenceOver("past", out Pressure over));
        Assert.Equal(300, over.Kilopascals, 1e-9);
        Assert.True(state.TryPressureAt("high", out GaugePressure high));
        Assert.Equal(300, high.AboveAmbient.Kilopascals, 1e-9);
    }

    /// <summary>A system solves its path with the injectors as further lines; handles of the path hold there, too.</summary>
    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("circuit-car")]
    public void Handles_OfTheNetworkOfASystem_ReadItsStates(string name)
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System(name));
        NetworkState state = system.Solve(OperatingListDocument.Read(TestFiles.Points(name))[0]).Network;

        Assert.All(
            system.Network.Nodes,
            n =>
            {
                bool found = state.TryPressureAt(n.Name, out GaugePressure named);
                Assert.Equal(found, state.TryPressureAt(system.Network.FindNode(n.Name), out GaugePressure handled));
                Assert.Equal(named, handled);
            }
        );
        Assert.All(
            system.Network.Lines,
            l => Assert.Equal(state.FlowIn(l.Name), state.FlowIn(system.Network.FindLine(l.Name)))
        );
    }

    [Fact]
    public void Handles_OfAnotherSystem_AreRefused()
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System("circuit-car"));
        FuelSystem twin = SystemDocument.Read(TestFiles.System("circuit-car"));
        NetworkState state = system.Solve(OperatingListDocument.Read(TestFiles.Points("circuit-car"))[0]).Network;

        Assert.Throws<RefusedArgumentException>(
            "line",
            () => state.FlowIn(twin.Network.FindLine(twin.Network.Lines[0].Name))
        );
    }
}
