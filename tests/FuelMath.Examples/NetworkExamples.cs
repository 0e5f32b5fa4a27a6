using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class NetworkExamples
{
    [Fact]
    public void PumpThatJoins()
    {
        #region Switch
        PlainPump pump = PlainPump.Straight(
            [
                new(VolumeFlow.Zero, Pressure.FromKilopascals(500)),
                new(VolumeFlow.FromLitersPerHour(500), Pressure.Zero),
            ],
            OutsideRange.Refuse
        );
        Network.Node[] nodes =
        [
            Network.Node.FixedPressure("tank", new GaugePressure(Pressure.Zero), Length.Zero),
            Network.Node.Junction("rail", Length.Zero),
        ];
        Line second = new Line("second", "tank", "rail", pump).SwitchedBy(
            PumpSwitch.PressureBelow(
                "rail",
                joinBelow: new GaugePressure(Pressure.FromKilopascals(280)),
                leaveAbove: new GaugePressure(Pressure.FromKilopascals(410)),
                wasRunning: false
            )
        );
        Network Loaded(double kilopascals) // at 100 L/h
        {
            PlainFilter load = new(
                VolumeFlow.FromLitersPerHour(100),
                linearLoss: Pressure.FromKilopascals(kilopascals),
                quadraticLoss: Pressure.Zero,
                Warm.Density,
                Warm.Viscosity
            );
            Line[] lines = [new("first", "tank", "rail", pump), second, new("load", "rail", "tank", load)];
            return new Network(nodes, lines).At(Warm);
        }

        // 250 kPa with one pump: the second joins. Then 375 kPa with both: it stays. Then 429 kPa with both: it leaves.
        NetworkState heavy = Loaded(100).Solve();
        NetworkState lighter = Loaded(150).After(heavy).Solve();
        NetworkState light = Loaded(300).After(lighter).Solve();
        NetworkState[] inTurn = [heavy, lighter, light];
        double[] bars = [.. inTurn.Select(s => s.PressureAt("rail").AboveAmbient.Bars)]; // 3.33, 3.75 and 3.75
        string why = lighter.Remarks[0]; // 'second' is running: the pressure at 'rail' is 375 kPa gauge; it joins ...
        #endregion

        Assert.Equal(1000.0 / 3, heavy.PressureAt("rail").AboveAmbient.Kilopascals, 1e-6);
        Assert.Equal(375, lighter.PressureAt("rail").AboveAmbient.Kilopascals, 1e-6);
        Assert.Equal(Network.LineCondition.Stopped, light.ConditionOf("second"));
        Assert.StartsWith(
            "'second' is running: the pressure at 'rail' is 375 kPa gauge; it joins",
            why,
            StringComparison.Ordinal
        );
    }

    private static readonly NetworkConditions Warm = new(
        Density.FromKilogramsPerCubicMeter(740),
        DynamicViscosity.FromMillipascalSeconds(0.5)
    );

    [Fact]
    public void HumpedPump()
    {
        #region Hump
        PlainPump humped = PlainPump.Straight(
            [
                new(VolumeFlow.Zero, Pressure.FromKilopascals(300)),
                new(VolumeFlow.FromLitersPerHour(100), Pressure.FromKilopascals(500)),
                new(VolumeFlow.FromLitersPerHour(200), Pressure.FromKilopascals(100)),
            ],
            OutsideRange.Refuse
        );
        PlainFilter rising = new(
            VolumeFlow.FromLitersPerHour(100),
            linearLoss: Pressure.Zero,
            quadraticLoss: Pressure.FromKilopascals(100),
            Warm.Density,
            Warm.Viscosity
        );
        Network network = new Network(
            [
                Network.Node.FixedPressure("tank", new GaugePressure(Pressure.Zero), Length.Zero),
                Network.Node.Junction("outlet", Length.Zero),
                Network.Node.FixedPressure("high tank", new GaugePressure(Pressure.FromKilopascals(320)), Length.Zero),
            ],
            [new Line("pump", "tank", "outlet", humped), new Line("line", "outlet", "high tank", rising)]
        ).At(Warm);

        foreach (Network.Solution solution in network.SolveAll())
        {
            VolumeFlow flow = solution.State.FlowIn("pump"); // 0, 10.6 and 113 L/h
            bool stays = solution.IsStable; // true, false, true
        }

        NetworkState running = network.Solve(PlainPump.ApproachSide.FreeFlow);
        VolumeFlow most = running.FlowIn("pump"); // 113 L/h
        #endregion

        Assert.Equal([true, false, true], network.SolveAll().Select(s => s.IsStable));
        Assert.Equal(100 * (1 - Math.Sqrt(0.8)), network.SolveAll()[1].State.FlowIn("pump").LitersPerHour, 1e-6);
        Assert.Equal(100 * (Math.Sqrt(9.8) - 2), running.FlowIn("pump").LitersPerHour, 1e-6);
    }

    /// <summary>The loop of docs/images/network-loop.svg: 240 L/h from "in" to "out" by two hoses.</summary>
    [Fact]
    public void OneLoop()
    {
        #region Loop
        var network = new Network(
            [
                Network.Node.FixedPressure("in", new GaugePressure(Pressure.FromBars(3)), Length.Zero),
                Network.Node.Junction("out", Length.Zero, draw: VolumeFlow.FromLitersPerHour(240)),
            ],
            [Run("short", Length.FromMeters(0.5)), Run("long", Length.FromMeters(1.5))]
        );
        NetworkState state = network.Solve(
            new NetworkConditions(Density.FromKilogramsPerCubicMeter(740), DynamicViscosity.FromMillipascalSeconds(0.4))
        );

        var turn = new Symbol("dp_loop", "Pa", "Sum of the losses around the loop");
        var balance = new DataSource("Definition", "a loop ends where it began");
        Traced sum = Traced.Step(Loss("short", 0.5) - Loss("long", 1.5), turn, balance);
        string working = sum.ToWorking().ToString();
        (VolumeFlow shorter, VolumeFlow longer) = (state.FlowIn("short"), state.FlowIn("long")); // 156.4 L/h and 83.6 L/h

        static Line Run(string name, Length length)
        {
            Pipe pipe = new(
                length,
                bore: Length.FromMillimeters(6),
                roughness: Length.FromMicrometers(1.5),
                lossCoefficient: Ratio.Zero,
                Pipe.FrictionLaw.ColebrookStraightPassage
            );
            return new(name, "in", "out", pipe);
        }

        Traced Loss(string hose, double meters)
        {
            Traced bore = Traced.Input(Symbols.Bore, 0.006);
            Traced flow = Traced.Input(Symbols.VolumeFlow, state.FlowIn(hose).CubicMetersPerSecond);
            return Friction.PressureLoss(
                Friction.Velocity(flow, bore),
                bore,
                Traced.Input(Symbols.Length, meters),
                Traced.Input(Symbols.Roughness, 1.5e-6),
                Traced.Input(Symbols.Density, 740),
                Traced.Input(Symbols.DynamicViscosity, 0.4e-3)
            );
        }
        #endregion

        // Only what is left at the end, a rounding error, belongs to one machine.
        string[] printed = File.ReadAllLines(Path.Combine(Checkout.Root, "docs/includes/network-loop.txt"));
        string[] worked = working.TrimEnd('\n').Split('\n');
        Assert.Equal(printed[..^2], worked[..^2]);
        Assert.StartsWith("dp_loop = dp_1 - dp_2 = 1996.8 Pa - 1996.8 Pa = ", worked[^2], StringComparison.Ordinal);
        Assert.InRange(Math.Abs(sum.Value), 0, 1e-3);

        // By another way: 1996.8 Pa from the explicit law of Swamee and Jain, which is within 3 % of Colebrook's here.
        Assert.Equal(1996.8, ByHand(state.FlowIn("short").CubicMetersPerSecond, 0.5), 0.03 * 1996.8);
        Assert.Equal(1996.8, ByHand(state.FlowIn("long").CubicMetersPerSecond, 1.5), 0.03 * 1996.8);

        static double ByHand(double flow, double meters)
        {
            double speed = flow / (Math.PI / 4 * 0.006 * 0.006);
            double reynolds = 740 * speed * 0.006 / 0.4e-3;
            double factor = 0.25 / Math.Pow(Math.Log10((1.5e-6 / 0.006 / 3.7) + (5.74 / Math.Pow(reynolds, 0.9))), 2);
            return factor * meters / 0.006 * 740 * speed * speed / 2;
        }
    }

    [Fact]
    public void TwoRails()
    {
        #region Network
        var network = new Network(
            [
                Network.Node.FixedPressure("feed", new GaugePressure(Pressure.FromBars(3)), Length.Zero),
                Network.Node.Junction("left rail", Length.Zero, draw: VolumeFlow.FromLitersPerHour(60)),
                Network.Node.Junction("right rail", Length.Zero, draw: VolumeFlow.FromLitersPerHour(60)),
            ],
            [
                Run("left branch", "feed", "left rail", Length.FromMeters(0.5)),
                Run("right branch", "feed", "right rail", Length.FromMeters(1.5)),
                Run("link between the rails", "left rail", "right rail", Length.FromMeters(0.3)),
            ]
        );
        var gasoline = new NetworkConditions(
            Density.FromKilogramsPerCubicMeter(740),
            DynamicViscosity.FromMillipascalSeconds(0.5)
        );
        NetworkState state = network.Solve(gasoline);

        VolumeFlow left = state.FlowIn("left branch"); // 73.6 L/h: the shorter way takes the larger part of 120 L/h
        VolumeFlow across = state.FlowIn("link between the rails"); // 13.6 L/h
        Pressure error = state.WorstPressureResidual; // how well the equations hold, and where
        string where = state.WorstPressureResidualLine;

        static Line Run(string name, string from, string to, Length length) =>
            new(
                name,
                from,
                to,
                new Pipe(
                    length,
                    Length.FromMillimeters(6),
                    Length.FromMicrometers(1.5),
                    Ratio.FromDecimalFractions(1.5),
                    Pipe.FrictionLaw.ColebrookStraightPassage
                )
            );
        #endregion

        VolumeFlow right = state.FlowIn("right branch");
        Assert.Equal(120, left.LitersPerHour + right.LitersPerHour, 1e-6);
        Assert.Equal(left.LitersPerHour - 60, across.LitersPerHour, 1e-6);
        Assert.True(left > right);
        Assert.True(error < Pressure.FromPascals(1e-3));
        Assert.Contains(where, state.LineNames);
    }
}
