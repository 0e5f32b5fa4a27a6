using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Each limit of the wiring at its own value and just beside it.</summary>
public sealed class WiringLimitTests
{
    private static readonly WiringMesh.Source Battery = WiringMesh.Source.Battery(
        "battery",
        "+",
        "-",
        Volts(12),
        Ohms(0.01)
    );

    // 24 A through half an ohm take the whole 12 V.
    [Fact]
    public void VoltageAtLoad_NothingLeft_IsRefused()
    {
        var circuit = new Circuit("thin", [], [], Ohms(0.5));

        Assert.Throws<RefusedValueException>(
            "current",
            () => circuit.VoltageAtLoad(Volts(12), ElectricCurrent.FromAmperes(24))
        );
        Close.Within(1e-12, 0.05, circuit.VoltageAtLoad(Volts(12), ElectricCurrent.FromAmperes(23.9)).Volts);
    }

    // The working shows each conductor's resistance, in this order: 10 + 20 mΩ out, 30 mΩ back, 4 mΩ of contacts, at 10 A.
    [Fact]
    public void DropWorkingAt_OfWiresBothWays_AddsThemUp()
    {
        Temperature cold = Temperature.FromDegreesCelsius(20);
        Conductor one = new(WireSize.FromAwg(12), Length.FromMeters(2), cold);
        Conductor two = new(WireSize.FromAwg(10), Length.FromMeters(1), cold);
        var circuit = new Circuit("pump", [one, two], [two], ElectricResistance.FromMilliohms(4));
        double ohms = one.Resistance.Ohms + two.Resistance.Ohms + two.Resistance.Ohms + 0.004;

        Working working = circuit.DropWorkingAt(ElectricCurrent.FromAmperes(10));

        Close.Within(1e-13, 10 * ohms, working.Value);
        Assert.Contains(working.Lines, s => Math.Abs(s.Value - ohms) < 1e-13 * ohms);
    }

    [Fact]
    public void FuseCheck_ShareOfNothing_IsRefused() =>
        Assert.Throws<RefusedValueException>(
            "share",
            () => FuseCheck.Of(Amperes(20), Amperes(30), Amperes(5), Ratio.Zero, Source)
        );

    // A fuse of 20 A with a share of 80 % carries 16 A; a conductor for 20 A carries 20 A and takes a fuse of 20 A.
    [Theory]
    [InlineData(20, 20, 16)]
    [InlineData(20, 20, 16.01, FindingCode.FuseLoaded)]
    [InlineData(20.01, 20, 16, FindingCode.FuseTooLarge)]
    [InlineData(40, 20, 20, FindingCode.FuseTooLarge)]
    [InlineData(40, 20, 20.01, FindingCode.ConductorOverloaded, FindingCode.FuseTooLarge)]
    public void FuseCheck_AtAndAboveEachLimit_FindsWhatIsAbove(
        double fuse,
        double wire,
        double steady,
        params FindingCode[] codes
    ) =>
        Assert.Equal(
            [.. codes, FindingCode.ProtectionNotDesigned],
            FuseCheck
                .Of(Amperes(fuse), Amperes(wire), Amperes(steady), FuseCheck.UsualShare, Source)
                .Select(f => f.Code)
        );

    [Fact]
    public void Mesh_FourAlternators_IsAllowed()
    {
        WiringMesh.Source[] alternators =
        [
            .. Enumerable
                .Range(0, 4)
                .Select(i => WiringMesh.Source.Alternator($"a{i}", $"n{i}", "-", Volts(14), Amperes(9))),
        ];
        WiringMesh.Branch[] wires =
        [
            .. Enumerable.Range(0, 4).Select(i => WiringMesh.Branch.FromResistance($"w{i}", $"n{i}", "+", Ohms(0.1))),
        ];

        // 14 V against 12 V behind 10 mΩ would be 57 A: all four give their 9 A.
        WiringMesh.State state = new WiringMesh("m", "-", wires, [Battery, .. alternators], []).Solve();

        Close.Within(1e-10, -36, state.CurrentFrom("battery").Amperes);
        Assert.Equal(WiringMesh.AlternatorCondition.AtLimit, state.StateOf("a3"));
    }

    [Theory]
    [InlineData(300, true)]
    [InlineData(301, false)]
    public void Mesh_OfNodes_IsAllowedUpToTheLimit(int nodes, bool allowed)
    {
        WiringMesh.Branch[] chain =
        [
            .. Enumerable
                .Range(1, nodes - 2)
                .Select(i => WiringMesh.Branch.FromResistance($"w{i}", i == 1 ? "+" : $"n{i - 1}", $"n{i}", Ohms(1))),
        ];
        WiringMesh Make() => new("m", "-", chain, [Battery], []);

        if (allowed)
        {
            Close.Within(1e-10, 12, Make().Solve().VoltageAt("n298").Volts);
        }
        else
        {
            Words.Refused<ArgumentException>("branches", "300, 301", () => _ = Make());
        }
    }

    // A lamp alone ties the node behind it: no current, no drop. 12 V over 0.01 + 1 + 1 Ω.
    [Fact]
    public void Mesh_NodeTiedByAResistanceLoadAlone_IsSolved()
    {
        WiringMesh.State state = new WiringMesh(
            "m",
            "-",
            [WiringMesh.Branch.FromResistance("back", "lamp", "-", Ohms(1))],
            [Battery],
            [
                new WiringMesh.ResistanceLoad("lamp", "+", "lamp", Ohms(1)),
                new WiringMesh.ResistanceLoad("b", "x", "-", Ohms(3)),
            ]
        ).Solve();

        Close.Within(1e-12, 12 / 2.01, state.CurrentInto("lamp").Amperes);
        Close.WithinOf(12, 1e-15, 0, state.VoltageAt("x").Volts);
    }

    // 12 A through 1 Ω take all of 12 V: nothing is left for the load. A load that draws nothing needs nothing.
    [Theory]
    [InlineData(12, false)]
    [InlineData(11.9, true)]
    public void Solve_CurrentThatTakesTheWholeVoltage_IsRefused(double amperes, bool solved)
    {
        var mesh = new WiringMesh(
            "m",
            "-",
            [WiringMesh.Branch.FromResistance("feed", "+", "pump", Ohms(1))],
            [WiringMesh.Source.Held("supply", "+", "-", Volts(12))],
            [new WiringMesh.CurrentLoad("pump", "pump", "-", Amperes(amperes))]
        );

        if (solved)
        {
            Close.Within(1e-12, 0.1, mesh.Solve().VoltageAcross("pump").Volts);
        }
        else
        {
            Assert.Equal(RefusalCode.WiringTakesAll, Refusal.Of(Assert.Throws<NoSolutionException>(mesh.Solve))!.Code);
        }
    }

    [Fact]
    public void Solve_LoadOfNoCurrentAtNoVoltage_IsSolved()
    {
        WiringMesh.State state = new WiringMesh(
            "m",
            "-",
            [WiringMesh.Branch.FromResistance("strap", "body", "-", Ohms(1))],
            [Battery],
            [new WiringMesh.CurrentLoad("off", "body", "-", Amperes(0))]
        ).Solve();

        Close.WithinOf(12, 1e-15, 0, state.VoltageAcross("off").Volts);
    }

    // A load of power where no source is: it has no volt before it draws anything.
    [Fact]
    public void Solve_PowerWithoutAnyVoltage_IsRefused()
    {
        var mesh = new WiringMesh(
            "m",
            "-",
            [WiringMesh.Branch.FromResistance("strap", "body", "-", Ohms(1))],
            [Battery],
            [new WiringMesh.PowerLoad("dead", "body", "-", Power.FromWatts(1))]
        );

        Words.Says("'dead', 0 V", Assert.Throws<NoSolutionException>(mesh.Solve));
    }

    // Weak: 12 V behind 1.01 Ω gives at most 35.6 W, 50 W are asked for. Strong: 60 mΩ gives 600 W, 100 W are asked for.
    [Theory]
    [InlineData("weak", "strong")]
    [InlineData("strong", "weak")]
    public void Solve_TooMuchPowerAtOneOfTwo_NamesThatOne(string first, string second)
    {
        WiringMesh.Load Load(string name) =>
            new WiringMesh.PowerLoad(name, name, "-", Power.FromWatts(name == "weak" ? 50 : 100));
        var mesh = new WiringMesh(
            "m",
            "-",
            [
                WiringMesh.Branch.FromResistance("thin", "+", "weak", Ohms(1)),
                WiringMesh.Branch.FromResistance("thick", "+", "strong", Ohms(0.05)),
            ],
            [Battery],
            [Load(first), Load(second)]
        );

        Words.Says("'weak', 50 W", Assert.Throws<NoSolutionException>(mesh.Solve));
    }

    // The alternator's 30 A are just what the lamps draw at 14 V: it holds its voltage and is not at its limit yet.
    [Fact]
    public void StateOf_AtItsLimitButHoldingItsVoltage_Regulates()
    {
        WiringMesh.Source[] sources =
        [
            WiringMesh.Source.Battery("battery", "+", "-", Volts(14), Ohms(0.02)),
            WiringMesh.Source.Alternator("alternator", "+", "-", Volts(14), Amperes(30)),
        ];
        WiringMesh.State State(double amperes) =>
            new WiringMesh(
                "car",
                "-",
                [],
                sources,
                [new WiringMesh.CurrentLoad("lamps", "+", "-", Amperes(amperes))]
            ).Solve();

        Assert.Equal(WiringMesh.AlternatorCondition.Regulating, State(30).StateOf("alternator"));
        Assert.Equal(WiringMesh.AlternatorCondition.Regulating, State(0).StateOf("alternator"));
        Assert.Equal(WiringMesh.AlternatorCondition.AtLimit, State(30.001).StateOf("alternator"));
        Close.Within(1e-6, 14 - (0.001 * 0.02), State(30.001).VoltageAt("+").Volts);
    }

    /// <summary>A drop that is just allowed is allowed.</summary>
    [Fact]
    public void WireChoice_AtTheAllowedDrop_TakesThatSize()
    {
        Temperature warm = Temperature.FromDegreesCelsius(50);
        Length way = Length.FromMeters(3);
        double drop = 8 * new Conductor(WireSize.FromAwg(12), way, warm).Resistance.Ohms;
        WireSize[] sizes = [WireSize.FromAwg(10), WireSize.FromAwg(12), WireSize.FromAwg(14)];
        WireChoice At(double volts) =>
            WireChoice.Smallest(sizes, way, Length.Zero, warm, ElectricResistance.Zero, Amperes(8), Volts(volts));

        Assert.Equal("12 AWG", At(drop).Size.Name);
        Assert.Equal("10 AWG", At(drop * (1 - 1e-12)).Size.Name);
    }

    [Fact]
    public void ToNearestAwg_OfEachGauge_IsThatGauge() =>
        Assert.All(Enumerable.Range(-3, 44), gauge => Assert.Equal(gauge, WireSize.FromAwg(gauge).ToNearestAwg()));

    [Fact]
    public void WorstImbalance_OfASolvedMesh_IsRounding()
    {
        WiringMesh.State state = new WiringMesh(
            "m",
            "-",
            [
                WiringMesh.Branch.FromResistance("a", "+", "n", Ohms(0.1)),
                WiringMesh.Branch.FromResistance("b", "n", "-", Ohms(3)),
            ],
            [Battery],
            [new WiringMesh.PowerLoad("pump", "n", "-", Power.FromWatts(20))]
        ).Solve();

        Assert.InRange(state.WorstImbalance.Amperes, 0, 1e-10);
        Assert.Contains(state.WorstNode, state.Mesh.Nodes);
    }

    private static readonly DataSource Source = new("Workshop-class", "test");

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);

    private static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
