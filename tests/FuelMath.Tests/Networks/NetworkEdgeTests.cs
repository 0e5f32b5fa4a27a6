using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>What a network refuses with which code, what it finds by name, and that one solve does not mind another.</summary>
public sealed class NetworkEdgeTests
{
    private static readonly NetworkConditions Petrol = new(
        Density.FromKilogramsPerCubicMeter(740),
        DynamicViscosity.FromPascalSeconds(3.7e-4)
    );
    private static readonly NetworkConditions Thick = new(
        Density.FromKilogramsPerCubicMeter(820),
        DynamicViscosity.FromPascalSeconds(2e-3)
    );

    private static readonly PlainPump Peaked = Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100));

    [Fact]
    public void Constructor_Refusals_HaveTheirCodes()
    {
        Line ab = Plain("ab", "a", "b");

        Code(RefusalCode.Count, "nodes", "", () => new Network([], [ab]));
        Code(RefusalCode.Count, "lines", "", () => new Network([Fixed("a", 0)], []));
        Code(RefusalCode.FixedPressureNeeded, "nodes", "", () => new Network([Junction("a"), Junction("b")], [ab]));
        Code(RefusalCode.NotThere, "lines", "'ab', 'a'", () => new Network([Fixed("b", 0)], [ab]));
        Code(RefusalCode.NotThere, "lines", "'ab', 'b'", () => new Network([Fixed("a", 0)], [ab]));
        Code(RefusalCode.PumpNeeded, "pumpSwitch", "'ab'", () => ab.SwitchedBy(By("a")));
        Code(RefusalCode.Blank, "line", "", () => Petrol.WithCommandedFlow(" ", VolumeFlow.Zero));
    }

    /// <summary>Three pumps may join and leave; a fourth is refused.</summary>
    [Theory]
    [InlineData(3, true)]
    [InlineData(4, false)]
    public void Constructor_SwitchedPumps_AreThreeAtMost(int pumps, bool taken)
    {
        Network Make() =>
            new(
                [Fixed("a", 0), Fixed("b", 0)],
                Enumerable.Range(0, pumps).Select(i => new Line($"p{i}", "a", "b", Peaking).SwitchedBy(By("b")))
            );

        if (taken)
        {
            Assert.Equal(pumps, Make().Lines.Length);
        }
        else
        {
            Code(RefusalCode.Count, "lines", "3, 4", Make);
        }
    }

    [Fact]
    public void Names_AreFoundOrRefusedWithAll()
    {
        Network network = new(
            [Fixed("b", 1), Junction("c"), Fixed("a", 0)],
            [Plain("z", "a", "b"), Plain("y", "b", "c")]
        );
        Network other = new([Fixed("b", 1), Fixed("a", 0)], [Plain("z", "a", "b")]);
        NetworkState state = network.Solve(Petrol);

        Assert.Equal([0, 1, 2], new[] { "b", "c", "a" }.Select(network.PlaceOf));
        Assert.Equal([0, 1], new[] { "z", "y" }.Select(network.LineOf));
        Code(RefusalCode.NotOneOf, "node", "'x'", () => network.PlaceOf("x"));
        Code(RefusalCode.NotOneOf, "line", "'x'", () => network.LineOf("x"));
        Assert.Equal(["a", "b", "c"], Allowed(() => state.PressureAt("x")));
        Assert.Equal(["y", "z"], Allowed(() => state.FlowIn("x")));
        Assert.Equal(["c"], state.JunctionNames.AsEnumerable());
        Assert.Equal(["z", "y"], state.LineNames.AsEnumerable());
        Code(RefusalCode.Missing, "node", "", () => state.PressureAt(default(Network.NodeHandle)));
        Code(RefusalCode.Missing, "line", "", () => state.FlowIn(default(Network.LineHandle)));
        Code(RefusalCode.OfAnother, "node", "'a'", () => state.PressureAt(other.FindNode("a")));
        Code(RefusalCode.OfAnother, "line", "'z'", () => state.FlowIn(other.FindLine("z")));

        static IEnumerable<string> Allowed(Func<object?> ask) =>
            Refusal.Of(Assert.Throws<ArgumentException>(ask))!.Allowed;
    }

    /// <summary>A network takes the handles of one that it begins with: by nodes and by lines.</summary>
    [Fact]
    public void Names_OfAPart_MustBegin()
    {
        Network.Node[] nodes = [Fixed("a", 0), Fixed("b", 0)];
        Line[] lines = [Plain("ab", "a", "b"), Plain("ba", "b", "a")];
        NetworkNames one = new(nodes, lines[..1], null);
        NetworkNames all = new(nodes, lines, one);

        Assert.Equal(0, all.Node(new Network.NodeHandle(one, 0)));
        Assert.Equal(0, all.Line(new Network.LineHandle(one, 0)));
        Assert.Throws<InvalidOperationException>(() => _ = new NetworkNames(nodes, lines[1..], one));
        Assert.Throws<InvalidOperationException>(() => _ = new NetworkNames([nodes[1], nodes[0]], lines, one));
        Assert.True(all.IsLike(new NetworkNames(nodes, lines, null)));
        Assert.False(all.IsLike(one));
        Assert.False(all.IsLike(new NetworkNames([nodes[1], nodes[0]], lines, null)));
        Assert.False(one.IsLike(new NetworkNames([nodes[0], Junction("b")], lines[..1], null)));
    }

    /// <summary>What was solved before at other conditions changes no bit, nor how long it takes.</summary>
    [Fact]
    public void Solve_AfterOtherConditions_HasTheSameBits()
    {
        Network network = new(
            [Fixed("supply", 300), Junction("a"), Fixed("end", 0)],
            [Pipe("first", "supply", "a"), Pipe("second", "a", "end")]
        );
        NetworkState before = network.Solve(Petrol);
        NetworkState other = network.Solve(Thick);

        NetworkState again = network.Solve(Petrol);

        Assert.NotEqual(before.FlowIn("first"), other.FlowIn("first"));
        Assert.Equal(before.FlowIn("first"), again.FlowIn("first"));
        Assert.Equal(before.PressureAt("a"), again.PressureAt("a"));
        Assert.Equal(before.Iterations, again.Iterations);
        Assert.Same(network, network.After(before));
        Assert.Same(network, network.Under(default));
    }

    /// <summary>A network that may have several states is asked for one in the same way at conditions given with the solve.</summary>
    [Fact]
    public void Solve_SeveralStatesAtConditions_IsRefused()
    {
        Network network = new(
            [Fixed("tank", 0), Junction("out"), Fixed("high", 320)],
            [
                new Line("pump", "tank", "out", Peaked),
                new Line(
                    "line",
                    "out",
                    "high",
                    new PlainFilter(
                        LitersPerHour(100),
                        Pressure.Zero,
                        Kilopascals(100),
                        Petrol.Density,
                        Petrol.Viscosity
                    )
                ),
            ]
        );

        Assert.Equal(
            RefusalCode.SeveralStates,
            Refusal.Of(Assert.Throws<NoSolutionException>(() => network.Solve(Petrol)))!.Code
        );
        Assert.Equal(3, network.At(Petrol).SolveAll().Length);
        Words.Refused<ArgumentException>("network", "'pump'", () => _ = new Network.Buffer(network.At(Petrol)));
    }

    /// <summary>A pump with a hump between two tanks is a region of its own, whatever its name: here that of a junction.</summary>
    [Fact]
    public void Constructor_HumpsInRegionsOfTheirOwn_AreTaken()
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Fixed("high", 450),
            Junction("out"),
            OwnLine.Pump("out", "tank", "high", Peaked),
            OwnLine.Pump("pump", "tank", "out", Peaked),
            Linear("load", "out", "tank", 400)
        );

        // 300 + 200 u = 450 at 0.75, 900 - 400 u = 450 at 1.125, and it stalls against 450.
        Assert.Equal([0, 75, 112.5], network.SolveAll().Select(s => Math.Round(s.State.LitersPerHourIn("out"), 6)));
        Assert.Throws<HumpedCurvesException>(() =>
            Fuel(
                Fixed("tank", 0),
                Junction("out"),
                OwnLine.Pump("one", "tank", "out", Peaked),
                OwnLine.Pump("pump", "tank", "out", Peaked),
                Linear("load", "out", "tank", 400)
            )
        );
    }

    /// <summary>Each line goes elsewhere with its switch.</summary>
    [Fact]
    public void Ending_KeepsTheSwitch()
    {
        Line plain = new("pump", "a", "b", Peaking);
        PumpSwitch by = By("b");

        Assert.Null(plain.Ending("c").Switch);
        Assert.Same(by, plain.SwitchedBy(by).Ending("c").Switch);
        Assert.Equal(("pump", "a", "c"), (plain.Ending("c").Name, plain.Ending("c").From, plain.Ending("c").To));
    }

    /// <summary>A curve is a power law by one point, humped where it does not fall from point to point.</summary>
    [Fact]
    public void Given_SaysWhatCurveItIs()
    {
        Assert.True(PlainPump.Power(Kilopascals(400), Point(100, 200), Ratio.FromDecimalFractions(2)).Given.IsPower);
        Assert.False(Peaking.Given.IsPower);
        Assert.True(Peaked.HasHump);
        Assert.False(Peaking.HasHump);
        Assert.True(Straight(OutsideRange.Refuse, (0, 300), (100, 300), (200, 100)).HasHump);
        Assert.Equal(4, Straight(OutsideRange.Refuse, (0, 300), (100, 300), (200, 100)).Law.HumpedCurve.Length);
    }

    [Fact]
    public void Numbers_InWords_HaveTheirUnits()
    {
        Assert.Equal("12.5 kPa", NetworkVerdict.Kilopascals(12_500));
        Assert.Equal("3.6 L/h", NetworkVerdict.LitersPerHour(1e-6));
    }

    /// <summary>A loss table is read a billionth beyond its end, and by what counts as no flow more.</summary>
    [Fact]
    public void CheckFlow_AtTheEnd_HasBothTolerances()
    {
        LossTableSettings law = new("part", [new(0, 0, 1, 0, 0)], LitersPerHour(1), 800, 1e-6);

        law.CheckFlow(1 + 1e-9 + 0.9e-6, 1, 1e-6);
        law.CheckFlow(-1 - 1e-9 - 0.9e-6, 1, 1e-6);
        law.CheckFlow(1 + 0.9e-9, 1, 0);
        Assert.Throws<OutsideTableException>(() => law.CheckFlow(1 + 1e-9 + 1.1e-6, 1, 1e-6));
        Assert.Throws<OutsideTableException>(() => law.CheckFlow(-1 - 1.1e-9, 1, 0));
    }

    /// <summary>Ways are open where pressures of both ends follow from each other; not at a commanded flow.</summary>
    [Theory]
    [InlineData(0.4e-5, true)]
    [InlineData(1e-5, false)]
    [InlineData(0, false)]
    public void IsOpen_AnInjector_IsWhereItsPressureDecides(double flow, bool expected)
    {
        Network network = new Network(
            [Fixed("a", 0), Fixed("b", 0)],
            [new Line("jet", "a", "b", new LawPart(new CappedSettings(1e-7, 1e-5)))]
        ).At(Petrol);
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        work.Flow[0] = new(flow);

        Assert.Equal(expected, work.IsOpen(0, 1e-9));
    }

    private static PlainPump Peaking => Straight(OutsideRange.Extend, (0, 300), (100, 200));

    private static PumpSwitch By(string node) => PumpSwitch.PressureBelow(node, Gauge(100), Gauge(200), false);

    private static Line Plain(string name, string from, string to) =>
        new(name, from, to, new PlainFitting(Length.FromMillimeters(5), Ratio.FromDecimalFractions(1)));

    private static Line Pipe(string name, string from, string to) =>
        new(
            name,
            from,
            to,
            new Pipe(
                Length.FromMeters(1),
                Length.FromMillimeters(6),
                Length.FromMicrometers(1.5),
                Ratio.Zero,
                FuelMath.Pipe.FrictionLaw.ColebrookStraightPassage
            )
        );

    private static void Code(RefusalCode code, string paramName, string facts, Func<object?> act)
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(act);
        Assert.Equal((code, paramName), (Refusal.Of(refusal)!.Code, refusal.ParamName));
        Words.Says(facts, refusal);
    }
}
