using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>What circuits, fuses and meshes state besides their results: limits, refusals, sums, and the bounds of states.</summary>
public sealed class WiringStatedTests
{
    private static readonly ElectricResistance Milliohm = ElectricResistance.FromMilliohms(1);

    /// <summary>13 V behind 0.1 ohm can give less than 130 A: the refusal says so, just below is taken.</summary>
    [Fact]
    public void VoltageAtLoad_MoreThanTheWiringGives_SaysTheCurrent()
    {
        var circuit = new Circuit("pump", [], [], ElectricResistance.FromMilliohms(100));
        ElectricPotential source = ElectricPotential.FromVolts(13);

        var error = Words.Refused<ArgumentOutOfRangeException>(
            "current",
            "130 A, 140 A",
            () => circuit.VoltageAtLoad(source, ElectricCurrent.FromAmperes(140))
        );
        Assert.Equal((130, "A"), (Math.Round(Refusal.Of(error)!.Maximum!.Value, 9), Refusal.Of(error)!.Unit));
        Close.WithinOf(13, 1e-9, 0, circuit.VoltageAtLoad(source, ElectricCurrent.FromAmperes(130 - 1e-8)).Volts);
    }

    /// <summary>A fuse of 20 A that may carry 80 % for long is loaded above 16 A, and that is the limit that the finding states.</summary>
    [Theory]
    [InlineData(16, false)]
    [InlineData(16.001, true)]
    [InlineData(19, true)]
    public void FuseLoaded_AboveItsShare_StatesTheShareOfTheRating(double amperes, bool found)
    {
        Finding[] findings =
        [
            .. FuseCheck
                .Of(
                    ElectricCurrent.FromAmperes(20),
                    ElectricCurrent.FromAmperes(25),
                    ElectricCurrent.FromAmperes(amperes),
                    Ratio.FromPercent(80),
                    new DataSource("Workshop-class", "test")
                )
                .Where(f => f.Code == FindingCode.FuseLoaded),
        ];

        Assert.Equal(found ? 1 : 0, findings.Length);
        foreach (Finding finding in findings)
        {
            Close.Within(1e-12, amperes, ((ElectricCurrent)finding.ValueQuantity!).Amperes);
            Close.Within(1e-12, 16, ((ElectricCurrent)finding.LimitQuantity!).Amperes);
        }
    }

    /// <summary>A load that asks for no power takes none, wherever it hangs: also where there is no voltage for it.</summary>
    [Fact]
    public void Solve_ALoadOfNoPower_DrawsNothing()
    {
        WiringMesh.State state = Row(12, 0, new WiringMesh.PowerLoad("idle", "post", "post 2", Power.Zero)).Solve();

        Assert.Equal(0, state.CurrentInto("idle").Amperes);
        Close.Within(1e-12, 12, state.VoltageAt("plus").Volts);
    }

    /// <summary>An alternator that would have to take a current is idle, however small the current is against its limit.</summary>
    [Theory]
    [InlineData(14.2, WiringMesh.AlternatorCondition.Regulating)]
    [InlineData(14.2001, WiringMesh.AlternatorCondition.Idle)]
    [InlineData(15, WiringMesh.AlternatorCondition.Idle)]
    public void Solve_BatteryAboveTheSetVoltage_LeavesTheAlternatorIdle(
        double battery,
        WiringMesh.AlternatorCondition expected
    )
    {
        var mesh = new WiringMesh(
            "car",
            "-",
            [WiringMesh.Branch.FromResistance("ground", "body", "-", Milliohm)],
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "+",
                    "-",
                    ElectricPotential.FromVolts(battery),
                    ElectricResistance.FromMilliohms(20)
                ),
                WiringMesh.Source.Alternator(
                    "alternator",
                    "+",
                    "-",
                    ElectricPotential.FromVolts(14.2),
                    ElectricCurrent.FromAmperes(40)
                ),
            ],
            [new WiringMesh.CurrentLoad("lamps", "+", "body", ElectricCurrent.Zero)]
        );

        WiringMesh.State state = mesh.Solve();

        Assert.Equal(expected, state.StateOf("alternator"));
        Assert.True(state.CurrentFrom("alternator").Amperes >= -1e-6);
        Assert.True(state.VoltageOf("alternator").Volts >= 14.2 * (1 - 1e-9));
    }

    /// <summary>Two batteries side by side give together what the load and the wires take: 12 V and 30 A, 15 A each.</summary>
    [Fact]
    public void PowerFromSources_OfTwoBatteries_IsTheirSum()
    {
        WiringMesh.Source Battery(string name) =>
            WiringMesh.Source.Battery(
                name,
                "+",
                "-",
                ElectricPotential.FromVolts(12.3),
                ElectricResistance.FromMilliohms(20)
            );
        var mesh = new WiringMesh(
            "pair",
            "-",
            [WiringMesh.Branch.FromResistance("ground", "body", "-", Milliohm)],
            [Battery("one"), Battery("two")],
            [new WiringMesh.CurrentLoad("lamps", "+", "body", ElectricCurrent.FromAmperes(30))]
        );

        WiringMesh.State state = mesh.Solve();

        Close.Within(1e-9, 12 * 30, (double)state.PowerFromSources.Watts);
        Close.Within(1e-9, (12 - 0.03) * 30, (double)state.PowerIntoLoads.Watts);
        Close.Within(1e-9, 0.03 * 30, (double)state.HeatInBranches.Watts);
    }

    /// <summary>A resistance that is refused names the branch that it belongs to.</summary>
    [Fact]
    public void FromResistance_NotAboveZero_NamesItsBranch()
    {
        var error = Words.Refused<ArgumentOutOfRangeException>(
            "resistance",
            () => WiringMesh.Branch.FromResistance("wire", "a", "b", ElectricResistance.Zero)
        );
        Assert.Contains("wire", Refusal.Of(error)!.Parts);
    }

    /// <summary>
    /// A load of 100 W between 12 V and a ground, with a tenth of an ohm on either side: U = 12 - 0.2 x 100 / U has the root 10 V,
    /// which is 10 A, and the load's negative side lies a volt above the battery's.
    /// </summary>
    [Fact]
    public void Solve_PowerBehindSupplyAndGround_IsTheRootByHand()
    {
        WiringMesh.State state = Fed(Power.FromWatts(100), "pump", "body").Solve();

        Close.Within(1e-9, 10, state.VoltageAcross("driver").Volts);
        Close.Within(1e-9, 10, state.CurrentInto("driver").Amperes);
        Close.Within(1e-9, 1, state.VoltageAt("body").Volts);
        Assert.InRange(state.Iterations, 1, 60);
    }

    /// <summary>A load of constant power that hangs the wrong way round is refused with the voltage it would have.</summary>
    [Fact]
    public void Solve_PowerTheWrongWayRound_SaysItsVoltage()
    {
        NoSolutionException error = Assert.Throws<NoSolutionException>(() =>
            Fed(Power.FromWatts(10), "body", "pump").Solve()
        );

        Assert.Equal(RefusalCode.WiringTakesAll, Refusal.Of(error)!.Code);
        Words.Says("'driver', -12 V", error);
    }

    /// <summary>
    /// A state that is wrong by hand: the node where most current is left over, and how much. 12 V to 10.8 V are 12 A where the
    /// battery gives 10 A or 12 A; 11 V over a load of 100 W are 9.09 A that a ground at 0 V does not carry on.
    /// </summary>
    [Theory]
    [InlineData(10.8, 1, 10, "+", 2)]
    [InlineData(10.8, 1, 12, "-", 2)]
    [InlineData(11, 0, 10, "-", 10)]
    [InlineData(11, 0, 1, "body", 100 / 11.0)]
    [InlineData(11, 1, 10, null, 0)]
    public void WorstImbalance_OfAWrongState_IsTheLargest(
        double pump,
        double body,
        double battery,
        string? node,
        double amperes
    )
    {
        WiringMesh mesh = Fed(Power.FromWatts(100), "pump", "body");
        Dictionary<string, double> volts = new()
        {
            ["+"] = battery == 1 ? 11.1 : 12,
            ["pump"] = pump,
            ["body"] = body,
            ["-"] = 0,
        };
        var state = new WiringMesh.State(
            mesh,
            [.. mesh.Nodes.Select(n => volts[n])],
            [battery],
            [WiringMesh.AlternatorCondition.Regulating],
            0
        );

        Close.WithinOf(10, 1e-12, amperes, state.WorstImbalance.Amperes);
        Assert.Equal(node ?? state.WorstNode, state.WorstNode);
    }

    /// <summary>Twelve volts, a tenth of an ohm to the load and as much back.</summary>
    private static WiringMesh Fed(Power power, string positive, string negative) =>
        new(
            "fed",
            "-",
            [
                WiringMesh.Branch.FromResistance("supply", "+", "pump", ElectricResistance.FromMilliohms(100)),
                WiringMesh.Branch.FromResistance("ground", "body", "-", ElectricResistance.FromMilliohms(100)),
            ],
            [WiringMesh.Source.Held("battery", "+", "-", ElectricPotential.FromVolts(12))],
            [new WiringMesh.PowerLoad("driver", positive, negative, power)]
        );

    private static WiringMesh Row(double volts, double amperes, WiringMesh.Load load) =>
        new(
            "row",
            "-",
            [
                WiringMesh.Branch.FromResistance("supply", "+", "plus", Milliohm),
                WiringMesh.Branch.FromResistance("one", "post", "-", Milliohm),
                WiringMesh.Branch.FromResistance("two", "post 2", "-", Milliohm),
            ],
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "+",
                    "-",
                    ElectricPotential.FromVolts(volts),
                    ElectricResistance.FromMilliohms(20)
                ),
            ],
            [load, new WiringMesh.CurrentLoad("lamps", "plus", "-", ElectricCurrent.FromAmperes(amperes))]
        );
}
