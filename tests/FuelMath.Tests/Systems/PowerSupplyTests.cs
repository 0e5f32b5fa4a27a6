using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A system fed by a mesh, and what its wiring costs it.</summary>
public sealed class PowerSupplyTests
{
    // Each of the test rig's circuits has 50 mΩ of contacts and two meters of 12 AWG, 5.2 mΩ each.
    private static readonly ElectricResistance EachWay = ((PowerSupply.TwoCircuits)Workshop.Four().Power)
        .Pumps
        .Resistance;

    /// <summary>A mesh of two rows that share nothing is the two circuits.</summary>
    [Theory]
    [InlineData(2500, 60)]
    [InlineData(6000, 180)]
    public void Solve_TwoRowsAsAMesh_IsTheTwoCircuits(double rpm, double kilopascals)
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint point = Workshop.Point(rpm, kilopascals, Workshop.Open(0.9));

        SystemState expected = system.Solve(point);
        SystemState state = system.WithPower(Mesh(EachWay, default, [])).Solve(point);

        Close.Within(1e-8, expected.Pumps[0].Voltage.Volts, state.Pumps[0].Voltage.Volts);
        Close.Within(1e-8, expected.Pumps[0].Flow.LitersPerHour, state.Pumps[0].Flow.LitersPerHour);
        Close.Within(1e-8, expected.Injectors[0].Voltage.Volts, state.Injectors[0].Voltage.Volts);
        Close.Within(1e-8, expected.Lambda!.Value.ToRatio(), state.Lambda!.Value.ToRatio());
    }

    /// <summary>A pump on a circuit of its own runs at the voltage that its own current leaves: Ohm's law.</summary>
    [Fact]
    public void Solve_PumpsOnCircuitsOfTheirOwn_EachHasItsVoltage()
    {
        FuelSystem system = PlumbingRig.With([
            .. PlumbingRig.Usual(),
            new("second", "tank", "pump outlet", Workshop.Pump(0.6)),
        ]);
        var thick = new Circuit("thick", [], [], ElectricResistance.FromMilliohms(20));
        FuelSystem apart = system.WithPower(system.Power.WithFeeds([new("second", thick)]));
        OperatingPoint point = Workshop.Point(6000, 100, Workshop.Hold(0.9));
        SystemState state = apart.Solve(point);
        double supply = point.Supply.Volts;

        Assert.Equal(["pump", "second"], state.Pumps.Select(p => p.Line));
        Close.Within(1e-8, supply - (state.Pumps[0].Current.Amperes * EachWay.Ohms), state.Pumps[0].Voltage.Volts);
        Close.Within(1e-8, supply - (state.Pumps[1].Current.Amperes * 0.02), state.Pumps[1].Voltage.Volts);
        Assert.True(state.Pumps[0].Voltage > system.Solve(point).Pumps[0].Voltage);

        string text = SystemDocument.Write(apart);
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
        Assert.Equal(state.Pumps[1].Voltage, SystemDocument.Read(text).Solve(point).Pumps[1].Voltage);
    }

    /// <summary>A mesh with a row for each pump is a circuit for each.</summary>
    [Fact]
    public void Solve_LoadsOfTheirOwnInAMesh_AreCircuitsOfTheirOwn()
    {
        FuelSystem system = PlumbingRig.With([
            .. PlumbingRig.Usual(),
            new("second", "tank", "pump outlet", Workshop.Pump(0.6)),
        ]);
        WiringMesh both = Mesh(EachWay, default, []).Mesh!;
        var thick = ElectricResistance.FromMilliohms(20);
        WiringMesh mesh = new(
            "rig",
            "post",
            [.. both.Branches, WiringMesh.Branch.FromResistance("to the second", "plus", "at the second", thick)],
            both.Sources,
            [.. both.Loads, new WiringMesh.CurrentLoad("second pump", "at the second", "post", default)]
        );
        PowerSupply.Meshed usual = Mesh(EachWay, default, []);
        FuelSystem meshed = system.WithPower(
            new PowerSupply.Meshed(mesh, usual.Source, usual.PumpLoad, usual.InjectorLoad).WithFeeds([
                new("second", "second pump"),
            ])
        );
        FuelSystem apart = system.WithPower(
            system.Power.WithFeeds([new("second", new Circuit("thick", [], [], thick))])
        );
        OperatingPoint point = Workshop.Point(6000, 100, Workshop.Hold(0.9));
        SystemState expected = apart.Solve(point);
        SystemState state = meshed.Solve(point);

        foreach ((SystemState.PumpResult one, SystemState.PumpResult other) in expected.Pumps.Zip(state.Pumps))
        {
            Close.Within(1e-7, one.Voltage.Volts, other.Voltage.Volts);
        }

        string text = SystemDocument.Write(meshed);
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
    }

    [Fact]
    public void WithFeeds_ThatDoNotFit_AreRefused()
    {
        FuelSystem four = Workshop.Four();
        var circuit = new Circuit("own", [], [], default);

        Words.Refused<ArgumentException>(
            "feeds",
            "'pump'",
            () => four.Power.WithFeeds([new("pump", circuit), new("pump", circuit)])
        );
        Words.Refused<ArgumentException>("feeds", "'pump'", () => four.Power.WithFeeds([new("pump", "load")]));
        Words.Refused<ArgumentException>(
            "feeds",
            "'pump'",
            () => Mesh(EachWay, default, []).WithFeeds([new("pump", circuit)])
        );
        Words.Refused<ArgumentException>(
            "feeds",
            "'pump', 'pumps'",
            () => Mesh(EachWay, default, []).WithFeeds([new("pump", "pumps")])
        );
        Words.Refused<ArgumentException>(
            "power",
            "'feed'",
            () => four.WithPower(four.Power.WithFeeds([new("feed", circuit)]))
        );
    }

    /// <summary>The mesh of the state carries the pump's current and meets Kirchhoff's law.</summary>
    [Fact]
    public void Solve_Mesh_IsInTheState()
    {
        SystemState state = Workshop
            .Four()
            .WithPower(Mesh(EachWay, ElectricResistance.FromMilliohms(20), []))
            .Solve(Workshop.Point(6000, 180, Workshop.Open(0.9)));

        WiringMesh.State wiring = state.Wiring!;
        Close.Within(1e-8, state.Pumps[0].Current.Amperes, wiring.CurrentInto("pumps").Amperes);
        Close.Within(1e-8, state.Pumps[0].Voltage.Volts, wiring.VoltageAcross("pumps").Volts);

        // An injector that opens has its own coil's full current in the wires; the mesh carries the mean of all.
        double mean = wiring.VoltageAcross("injectors").Volts * 4 / 12 * state.Stages[0].DutyCycle.DecimalFractions;
        Close.Within(1e-6, mean, wiring.CurrentInto("injectors").Amperes);
        Assert.InRange(wiring.VoltageAcross("injectors").Volts - state.Injectors[0].Voltage.Volts, 0, 0.2);
        Assert.InRange(wiring.WorstImbalance.Amperes, 0, 1e-9);
        Assert.Null(Workshop.Four().Solve(Workshop.Point(6000, 180, Workshop.Open(0.9))).Wiring);
    }

    /// <summary>A ground that both share lets the pump's current lower the injectors' voltage.</summary>
    [Fact]
    public void Solve_SharedGround_LowersBoth()
    {
        OperatingPoint point = Workshop.Point(6000, 180, Workshop.Open(0.9));
        SystemState apart = Workshop.Four().WithPower(Mesh(EachWay, default, [])).Solve(point);
        SystemState shared = Workshop
            .Four()
            .WithPower(Mesh(EachWay, ElectricResistance.FromMilliohms(50), []))
            .Solve(point);

        Assert.True(shared.Injectors[0].Voltage < apart.Injectors[0].Voltage);
        Assert.True(shared.Pumps[0].Flow < apart.Pumps[0].Flow);
        Assert.True(shared.Lambda!.Value.ToRatio() > apart.Lambda!.Value.ToRatio());
    }

    /// <summary>What else draws from the same wire counts: 20 A more over a shared 20 mΩ are 0.4 V and more.</summary>
    [Fact]
    public void Solve_AnotherLoad_CostsItsDrop()
    {
        OperatingPoint point = Workshop.Point(2500, 60, Workshop.Hold(1));
        ElectricResistance shared = ElectricResistance.FromMilliohms(20);
        var fan = new WiringMesh.CurrentLoad("fan", "plus", "ground", ElectricCurrent.FromAmperes(20));

        double without = Workshop.Four().WithPower(Mesh(EachWay, shared, [])).Solve(point).Pumps[0].Voltage.Volts;
        double with = Workshop.Four().WithPower(Mesh(EachWay, shared, [fan])).Solve(point).Pumps[0].Voltage.Volts;

        // The pump draws a little less at less voltage and gives back some hundredths.
        Assert.InRange(without - with, 0.36, 0.4);
    }

    /// <summary>Open loop, the pulse stays and dead time grows: lambda goes with the effective width and the root of pressure.</summary>
    [Fact]
    public void VoltageDrop_OpenLoop_IsTheDeadTimeItCosts()
    {
        VoltageDropEffect effect = VoltageDropEffect.Of(
            Workshop.Four(injectorOhms: 0.6),
            Workshop.Point(2500, 60, Workshop.Open(1))
        );

        double fuel(SystemState state) => state.Injectors.Sum(i => i.Pulse.Mass.Kilograms);
        Close.Within(
            1e-9,
            fuel(effect.WithoutDrop) / fuel(effect.WithDrop) - 1,
            effect.LambdaChange!.Value.DecimalFractions
        );
        Assert.True(effect.LambdaChange!.Value.DecimalFractions > 0.005);
        Assert.True(effect.DeadTimeGrowth.Microseconds > 10);
        Assert.True(effect.PumpFlowChange.DecimalFractions < 0);
        Close.Within(1e-12, 13.8 - effect.WithDrop.Pumps[0].Voltage.Volts, effect.PumpVoltageDrop.Volts);
        Assert.StartsWith(
            FormattableString.Invariant(
                $"{effect.PumpVoltageDrop.Volts:0.00} V lost to the pumps change their flow by -"
            ),
            effect.ToString(),
            StringComparison.Ordinal
        );
    }

    /// <summary>While the controller holds lambda, it holds it.</summary>
    [Fact]
    public void VoltageDrop_HoldLambda_LeavesLambda()
    {
        VoltageDropEffect effect = VoltageDropEffect.Of(
            Workshop.Four(injectorOhms: 0.6),
            Workshop.Point(2500, 60, Workshop.Hold(1))
        );

        Assert.Equal(0, effect.LambdaChange!.Value.DecimalFractions, 1e-9);
        Assert.True(effect.DeadTimeGrowth.Microseconds > 10);
        Assert.True(effect.WithDrop.Stages[0].PulseWidth > effect.WithoutDrop.Stages[0].PulseWidth);
    }

    /// <summary>More resistance costs more of everything.</summary>
    [Fact]
    public void VoltageDrop_MoreResistance_CostsMore()
    {
        VoltageDropEffect[] effects =
        [
            .. new[] { 0.01, 0.1, 0.3 }.Select(ohms =>
                VoltageDropEffect.Of(
                    Workshop.Four(pumpOhms: ohms, injectorOhms: ohms),
                    Workshop.Point(6000, 180, Workshop.Open(0.9))
                )
            ),
        ];

        for (int i = 1; i < effects.Length; i++)
        {
            Assert.True(effects[i].PumpFlowChange < effects[i - 1].PumpFlowChange);
            Assert.True(effects[i].LambdaChange > effects[i - 1].LambdaChange);
            Assert.True(effects[i].InjectorVoltageDrop > effects[i - 1].InjectorVoltageDrop);
        }
    }

    /// <summary>An alternator that is too small is told, with the voltage that it has fallen to; one that will do is not.</summary>
    [Theory]
    [InlineData(5, true)]
    [InlineData(90, false)]
    public void Findings_AlternatorAtItsLimit_IsTold(double limitAmperes, bool told)
    {
        var mesh = new WiringMesh(
            "rig",
            "post",
            [
                WiringMesh.Branch.FromResistance("pump wire", "plus", "pump", EachWay),
                WiringMesh.Branch.FromResistance("coil wire", "plus", "coils", EachWay),
            ],
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "plus",
                    "post",
                    ElectricPotential.FromVolts(13),
                    ElectricResistance.FromMilliohms(20)
                ),
                WiringMesh.Source.Alternator(
                    "alternator",
                    "plus",
                    "post",
                    ElectricPotential.FromVolts(14),
                    ElectricCurrent.FromAmperes(limitAmperes)
                ),
            ],
            [
                new WiringMesh.CurrentLoad("pumps", "pump", "post", default),
                new WiringMesh.CurrentLoad("injectors", "coils", "post", default),
            ]
        );

        SystemState state = Workshop
            .Four()
            .WithPower(new PowerSupply.Meshed(mesh, "alternator", "pumps", "injectors"))
            .Solve(Workshop.Point(2500, 60, Workshop.Hold(1)));

        Assert.Equal(told, state.Findings.Any(f => f.What == "Alternator 'alternator' gives all it can"));
    }

    [Fact]
    public void FromMesh_UnknownNames_AreRefused()
    {
        WiringMesh mesh = Mesh(EachWay, default, []).Mesh!;

        Words.Refused<ArgumentException>(
            "source",
            "'x'",
            () => _ = new PowerSupply.Meshed(mesh, "x", "pumps", "injectors")
        );
        Words.Refused<ArgumentException>(
            "pumpLoad",
            "'x'",
            () => _ = new PowerSupply.Meshed(mesh, "battery", "x", "injectors")
        );
        Words.Refused<ArgumentException>(
            "injectorLoad",
            "'pumps'",
            () => _ = new PowerSupply.Meshed(mesh, "battery", "pumps", "pumps")
        );
    }

    /// <summary>A load that alone ties a node to the rest can't stand for pumps, whose current does not.</summary>
    [Fact]
    public void FromMesh_LoadThatTiesANode_IsRefused() =>
        Words.Refused<ArgumentException>(
            "branches",
            "'loose'",
            () =>
                _ = new PowerSupply.Meshed(
                    new WiringMesh(
                        "m",
                        "-",
                        [],
                        [WiringMesh.Source.Held("s", "+", "-", ElectricPotential.FromVolts(12))],
                        [
                            new WiringMesh.ResistanceLoad("pumps", "loose", "-", ElectricResistance.FromOhms(1)),
                            new WiringMesh.ResistanceLoad("injectors", "+", "-", ElectricResistance.FromOhms(1)),
                        ]
                    ),
                    "s",
                    "pumps",
                    "injectors"
                )
        );

    [Fact]
    public void Solve_MeshThatCannotFeedThePump_SaysSo()
    {
        var error = Assert.Throws<NoSolutionException>(() =>
            Workshop
                .Four()
                .WithPower(Mesh(ElectricResistance.FromOhms(3), default, []))
                .Solve(Workshop.Point(6000, 180, Workshop.Open(0.9)))
        );

        Words.Says("'pumps'", error);
    }

    private static PowerSupply.Meshed Mesh(
        ElectricResistance eachWay,
        ElectricResistance shared,
        WiringMesh.Load[] others
    )
    {
        bool isShared = shared.Ohms > 0;
        string ground = isShared ? "ground" : "post";
        WiringMesh.Branch[] branches =
        [
            WiringMesh.Branch.FromResistance("pump wire", "plus", "pump", eachWay),
            WiringMesh.Branch.FromResistance("coil wire", "plus", "coils", eachWay),
        ];
        if (isShared)
        {
            branches = [.. branches, WiringMesh.Branch.FromResistance("strap", "ground", "post", shared)];
        }

        return new PowerSupply.Meshed(
            new WiringMesh(
                "rig",
                "post",
                branches,
                [WiringMesh.Source.Held("battery", "plus", "post", ElectricPotential.FromVolts(12))],
                [
                    new WiringMesh.CurrentLoad("pumps", "pump", ground, default),
                    new WiringMesh.CurrentLoad("injectors", "coils", ground, default),
                    .. others,
                ]
            ),
            "battery",
            "pumps",
            "injectors"
        );
    }
}
