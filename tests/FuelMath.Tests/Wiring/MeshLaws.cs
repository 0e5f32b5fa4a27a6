using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Laws of networks of resistors, on generated meshes.</summary>
/// <remarks>
/// Conductances reach from 16 S to 3000 S, so that a sum of currents cancels down from some 1e4 A: an imbalance of 1e-9 A
/// is rounding.
/// </remarks>
[Properties(Arbitrary = [typeof(MeshArbitraries), typeof(WiringArbitraries)])]
public sealed class MeshLaws
{
    private const double Rounding = 1e-9;

    [Property]
    public void Solve_AtEveryNode_CurrentsAddUpToNothing(RandomMesh mesh) =>
        Assert.InRange(mesh.ToMesh().Solve().WorstImbalance.Amperes, 0, Rounding);

    /// <summary>Tellegen: what the sources give is what loads and wires take.</summary>
    [Property]
    public void Solve_Power_IsKept(RandomMesh mesh)
    {
        WiringMesh.State state = mesh.ToMesh().Solve();

        Close.WithinOf(
            200,
            1e-10,
            (double)state.PowerFromSources.Watts,
            (double)(state.PowerIntoLoads.Watts + state.HeatInBranches.Watts)
        );
    }

    /// <summary>The drops of two loads together are the sum of the drops of each alone.</summary>
    [Property]
    public void Solve_DropsOfLoads_AddUp(RandomMesh mesh)
    {
        double[] each = [.. mesh.Draws.Select(d => (double)d.Amperes)];
        double[] sum = new double[mesh.Nodes];
        for (int i = 0; i < each.Length; i++)
        {
            double[] alone = new double[each.Length];
            alone[i] = each[i];
            WiringMesh.State state = mesh.ToMesh(alone).Solve();
            for (int n = 1; n <= mesh.Nodes; n++)
            {
                sum[n - 1] += 12 - state.VoltageAt($"n{n}").Volts;
            }
        }

        WiringMesh.State together = mesh.ToMesh(each).Solve();
        for (int n = 1; n <= mesh.Nodes; n++)
        {
            Close.WithinOf(12, 1e-12, sum[n - 1], 12 - together.VoltageAt($"n{n}").Volts);
        }
    }

    /// <summary>An ampere at one place lowers the other by what an ampere at the other lowers the one.</summary>
    [Property]
    public void Solve_TransferResistance_IsTheSameBothWays(RandomMesh mesh)
    {
        double[] one = [1, 0, 0];
        double[] two = [0, 1, 0];

        Close.WithinOf(
            12,
            1e-12,
            mesh.ToMesh(one).Solve().VoltageAcross("load 1").Volts,
            mesh.ToMesh(two).Solve().VoltageAcross("load 0").Volts
        );
    }

    /// <summary>Rayleigh: with a single load, no branch that grows worse ever raises the voltage at the load.</summary>
    [Property]
    public void Solve_AnyBranchMadeWorse_NeverHelps(RandomMesh mesh, int which)
    {
        WiringMesh good = mesh.ToMesh([3, 0, 0]);
        WiringMesh.Branch branch = good.Branches[(int)((uint)which % good.Branches.Length)];
        WiringMesh bad = good.WithBranch(
            WiringMesh.Branch.FromResistance(branch.Name, branch.From, branch.To, branch.Resistance * 2)
        );

        Assert.True(bad.Solve().VoltageAcross("load 0").Volts <= good.Solve().VoltageAcross("load 0").Volts + 1e-12);
    }

    /// <summary>Twice the resistance at half the current is the same voltage.</summary>
    [Property]
    public void Solve_ResistanceUpAndCurrentDown_IsTheSameVoltage(RandomMesh mesh)
    {
        WiringMesh before = mesh.ToMesh();
        var after = new WiringMesh(
            "scaled",
            before.Reference,
            before.Branches.Select(b => WiringMesh.Branch.FromResistance(b.Name, b.From, b.To, b.Resistance * 2)),
            before.Sources.Select(s =>
                WiringMesh.Source.Battery(s.Name, s.Positive, s.Negative, s.Voltage, s.InternalResistance * 2)
            ),
            mesh.Draws.Select((d, i) => mesh.Load(i, d.Amperes / 2.0))
        );

        foreach (string node in before.Nodes)
        {
            Close.WithinOf(12, 1e-12, before.Solve().VoltageAt(node).Volts, after.Solve().VoltageAt(node).Volts);
        }
    }

    /// <summary>Wires in a row are the circuit that adds them up.</summary>
    [Property]
    public void Solve_WiresInARow_IsTheCircuit(Harness harness)
    {
        Circuit circuit = harness.ToCircuit();
        ElectricCurrent current = ElectricCurrent.FromAmperes(13.8 / circuit.Resistance.Ohms / 2);
        var mesh = new WiringMesh(
            "row",
            "post",
            [
                new WiringMesh.Branch("supply", "plus", "pump +", circuit.Supply, circuit.Contacts),
                .. circuit.Ground.Select(
                    (wire, i) =>
                        new WiringMesh.Branch(
                            $"ground {i}",
                            i == 0 ? "pump -" : $"g{i}",
                            i == circuit.Ground.Length - 1 ? "post" : $"g{i + 1}",
                            [wire],
                            default
                        )
                ),
            ],
            [WiringMesh.Source.Held("supply voltage", "plus", "post", ElectricPotential.FromVolts(13.8))],
            [new WiringMesh.CurrentLoad("pump", "pump +", circuit.Ground.IsEmpty ? "post" : "pump -", current)]
        );

        Close.Within(
            1e-11,
            circuit.VoltageAtLoad(ElectricPotential.FromVolts(13.8), current).Volts,
            mesh.Solve().VoltageAcross("pump").Volts
        );
    }

    /// <summary>Two ways side by side carry in inverse ratio to their resistance, and together less than either.</summary>
    [Property]
    public void Solve_TwoGroundsSideBySide_ShareTheCurrent(Wire strap, Wire chassis)
    {
        WiringMesh.Branch Way(string name, Wire wire) => new(name, "block", "post", [wire.ToConductor()], default);
        double both = 1 / ((1 / strap.ToConductor().Resistance.Ohms) + (1 / chassis.ToConductor().Resistance.Ohms));
        double amperes = 6 / both;
        WiringMesh.State state = new WiringMesh(
            "grounds",
            "post",
            [
                Way("strap", strap),
                Way("chassis", chassis),
                WiringMesh.Branch.FromResistance("feed", "plus", "pump", ElectricResistance.FromOhms(both / 2)),
            ],
            [WiringMesh.Source.Held("source", "plus", "post", ElectricPotential.FromVolts(12))],
            [new WiringMesh.CurrentLoad("pump", "pump", "block", ElectricCurrent.FromAmperes(amperes))]
        ).Solve();

        Close.Within(1e-10, amperes * both, state.VoltageAt("block").Volts);
        Close.Within(
            1e-10,
            chassis.ToConductor().Resistance.Ohms / strap.ToConductor().Resistance.Ohms,
            state.CurrentThrough("strap").Amperes / state.CurrentThrough("chassis").Amperes
        );
    }

    /// <summary>U = V/2 + sqrt(V2/4 - P R), the larger of the two roots; the refusal begins where the root ends.</summary>
    [Property]
    public void Solve_ConstantPower_IsTheLargerRoot(RandomMesh mesh, byte share)
    {
        double ohms = 12 - mesh.ToMesh([1, 0, 0]).Solve().VoltageAcross("load 0").Volts;
        double watts = share / 256.0 * 12 * 12 / (4 * ohms);
        WiringMesh power = mesh.ToMesh([0, 0, 0])
            .WithLoad(new WiringMesh.PowerLoad("load 0", $"n{mesh.Draws[0].Node}", "n0", Power.FromWatts(watts)));

        // The resistance above is a difference of 12 V and good to 1e-12; near the fold the root has four times its error.
        Close.Within(1e-8, 6 + Math.Sqrt(36 - (watts * ohms)), power.Solve().VoltageAcross("load 0").Volts);
    }

    /// <summary>Several such loads: each takes its power, currents add up, and no voltage is below half of the open one.</summary>
    [Property]
    public void Solve_SeveralLoadsOfConstantPower_EachTakesItsPower(RandomMesh mesh)
    {
        WiringMesh power = Enumerable
            .Range(0, 3)
            .Aggregate(
                mesh.ToMesh([0, 0, 0]),
                (m, i) =>
                    m.WithLoad(
                        new WiringMesh.PowerLoad(
                            $"load {i}",
                            $"n{mesh.Draws[i].Node}",
                            "n0",
                            Power.FromWatts(4 * mesh.Draws[i].Amperes)
                        )
                    )
            );

        WiringMesh.State state = power.Solve();

        Assert.InRange(state.WorstImbalance.Amperes, 0, 1e-7);
        for (int i = 0; i < 3; i++)
        {
            Close.WithinOf(
                20,
                1e-12,
                4 * mesh.Draws[i].Amperes,
                state.VoltageAcross($"load {i}").Volts * state.CurrentInto($"load {i}").Amperes
            );
            Assert.True(state.VoltageAcross($"load {i}").Volts >= 6);
        }
    }
}
