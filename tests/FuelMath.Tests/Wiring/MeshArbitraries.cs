using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Generators of meshes.</summary>
public static class MeshArbitraries
{
    public static Arbitrary<RandomMesh> Meshes() =>
        (
            from nodes in Gen.Choose(2, 9)
            from tree in Resistor(nodes).ArrayOf(nodes)
            from extra in Resistor(nodes).ArrayOf(6)
            from loads in LoadAt(nodes).ArrayOf(3)
            select new RandomMesh(nodes, tree, extra, loads)
        ).ToArbitrary();

    private static Gen<(int A, int B, int Milliohms)> Resistor(int nodes) =>
        from a in Gen.Choose(0, nodes)
        from b in Gen.Choose(0, nodes)
        from milliohms in Gen.Choose(1, 200)
        select (a, b, milliohms);

    private static Gen<(int Node, int Amperes)> LoadAt(int nodes) =>
        from node in Gen.Choose(1, nodes)
        from amperes in Gen.Choose(0, 5)
        select (node, amperes);
}

/// <summary>
/// Node 0 is ground; each further node hangs on an earlier one, so that all is tied; more resistors across. A battery of
/// 12 V and 1 mΩ feeds node 1 of itself. At most 9 nodes of 200 mΩ and 15 A lose less than 12 V only by luck, so that
/// the resistances are shrunk to make sure.
/// </summary>
public sealed record RandomMesh(
    int Nodes,
    (int A, int B, int Milliohms)[] Tree,
    (int A, int B, int Milliohms)[] Extra,
    (int Node, int Amperes)[] Draws
)
{
    /// <summary>All tree resistances in a row at 15 A stay below 9 V: 10 x 200 mΩ x 15 A x 0.3.</summary>
    private const double Shrink = 0.3;

    public WiringMesh ToMesh() => ToMesh(Draws.Select(d => (double)d.Amperes).ToArray());

    public WiringMesh ToMesh(double[] amperes) =>
        new(
            "generated",
            "n0",
            Branches(),
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "plus",
                    "n0",
                    ElectricPotential.FromVolts(12),
                    ElectricResistance.FromMilliohms(1)
                ),
            ],
            Draws.Select((d, i) => Load(i, amperes[i]))
        );

    public WiringMesh.Load Load(int i, double amperes) =>
        new WiringMesh.CurrentLoad($"load {i}", $"n{Draws[i].Node}", "n0", ElectricCurrent.FromAmperes(amperes));

    public IEnumerable<WiringMesh.Branch> Branches()
    {
        // Node 1 hangs on the battery's plus and every other node on an earlier one but ground, so that each has supply.
        yield return Branch("feed", "plus", "n1", Tree[0].Milliohms);
        for (int i = 2; i <= Nodes; i++)
        {
            (int a, _, int milliohms) = Tree[i - 1];
            yield return Branch($"tree {i}", $"n{1 + (a % (i - 1))}", $"n{i}", milliohms);
        }

        for (int i = 0; i < Extra.Length; i++)
        {
            (int a, int b, int milliohms) = Extra[i];
            if (a != b && a > 0 && b > 0)
            {
                yield return Branch($"extra {i}", $"n{a}", $"n{b}", milliohms);
            }
        }
    }

    private static WiringMesh.Branch Branch(string name, string from, string to, double milliohms) =>
        WiringMesh.Branch.FromResistance(name, from, to, ElectricResistance.FromMilliohms(Shrink * milliohms));
}
