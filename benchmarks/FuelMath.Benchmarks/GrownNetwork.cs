using UnitsNet;

namespace FuelMath.Benchmarks;

/// <summary>Networks of any size: pump, filter, a ladder of rails with openings on its rungs, bypass regulator, return.</summary>
internal static class GrownNetwork
{
    private const int Ends = 5;
    private const int PerRung = 4;

    /// <summary>The sizes of the growth table, each with a whole number of rungs.</summary>
    internal static readonly int[] Sizes = [6, 13, 41, 129, 401, 1301, 4001];

    private static readonly NetworkConditions Petrol = NetworkConditions.FromKinematicViscosity(
        Density.FromKilogramsPerCubicMeter(740),
        KinematicViscosity.FromCentistokes(0.5)
    );

    /// <summary>A ladder of about so many links: as many rungs as fit, then single hoses.</summary>
    internal static Network Ladder(int links)
    {
        int rungs = (links - Ends) / PerRung;
        int singles = links - Ends - (PerRung * rungs);
        double share = 1.0 / Math.Max(1, rungs);
        List<Network.Node> nodes =
        [
            Fixed("tank"),
            Fixed("manifold"),
            .. "pumped filtered A0 B0 held".Split(' ').Select(Junction),
        ];
        List<Line> all =
        [
            new Line("pump", "tank", "pumped", Pump),
            new Line(
                "filter",
                "pumped",
                "filtered",
                new PlainFilter(PerHour(200), Kilopascals(10), Kilopascals(10), Petrol.Density, Petrol.Viscosity)
            ),
            Hose("feed A", "filtered", "A0", 1, 8),
            Hose("feed B", "filtered", "B0", 1.3, 8),
        ];
        for (int i = 1; i <= rungs; i++)
        {
            nodes.AddRange([Junction($"A{i}"), Junction($"B{i}")]);
            all.AddRange([
                Hose($"rail A{i}", $"A{i - 1}", $"A{i}", 2 * share, 10),
                Hose($"rail B{i}", $"B{i - 1}", $"B{i}", 3 * share, 10),
                Hose($"rung {i}", $"A{i}", $"B{i}", 0.3, 6),
                new Line(
                    $"opening {i}",
                    $"A{i}",
                    "manifold",
                    new Nozzle(PerHour(80 * share), Kilopascals(300), Petrol.Density, InjectorDraw.Backflow.Prevented)
                ),
            ]);
        }

        string last = $"B{rungs}";
        for (int i = 0; i < singles; i++)
        {
            nodes.Add(Junction($"single {i}"));
            all.Add(Hose($"single hose {i}", last, $"single {i}", 0.4, 8));
            last = $"single {i}";
        }

        all.Add(
            new Line(
                "regulator",
                last,
                "tank",
                PlainRegulator.Bypass(
                    Kilopascals(300),
                    new(Pressure.Zero),
                    Kilopascals(9),
                    PerHour(200),
                    Petrol.Density
                )
            )
        );
        if (rungs == 0)
        {
            all.Add(Hose("A to B", "A0", "B0", 0.3, 6));
        }

        nodes.RemoveAll(n => n.Name == "held");
        return new Network(
            all.Exists(l => l.To == "manifold") ? nodes : nodes.Where(n => n.Name != "manifold"),
            all
        ).At(Petrol);
    }

    /// <summary>Junctions joined at random, twice as many hoses as junctions: nothing like a pipe network.</summary>
    internal static Network Tangle(int links)
    {
        var random = new Random(1);
        int junctions = links / 2;
        Network.Node[] nodes =
        [
            Network.Node.FixedPressure("supply", new(Kilopascals(300)), Length.Zero),
            Fixed("tank"),
            .. Enumerable.Range(0, junctions).Select(i => Junction($"n{i}")),
        ];
        List<Line> all = [Hose("in", "supply", "n0", 1, 10), Hose("out", $"n{junctions - 1}", "tank", 1, 10)];
        for (int i = 1; i < junctions; i++)
        {
            all.Add(Hose($"tree {i}", $"n{random.Next(i)}", $"n{i}", 0.5, 8));
        }

        while (all.Count < links)
        {
            int a = random.Next(junctions);
            int b = random.Next(junctions);
            if (a != b)
            {
                all.Add(Hose($"loop {all.Count}", $"n{a}", $"n{b}", 0.5, 6));
            }
        }

        return new Network(nodes, all).At(Petrol);
    }

    private static PlainPump Pump =>
        PlainPump.Straight([Point(0, 900), Point(108, 830), Point(288, 620), Point(450, 400)], OutsideRange.Extend);

    private static Line Hose(string name, string from, string to, double meters, double bore) =>
        new(
            name,
            from,
            to,
            new Pipe(
                Length.FromMeters(meters),
                Length.FromMillimeters(bore),
                Length.FromMicrometers(1.5),
                Ratio.FromDecimalFractions(0.5),
                Pipe.FrictionLaw.ColebrookStraightPassage
            )
        );

    private static Network.Node Fixed(string name) => Network.Node.FixedPressure(name, new(Pressure.Zero), Length.Zero);

    private static Network.Node Junction(string name) => Network.Node.Junction(name, Length.Zero);

    private static PlainPump.Point Point(double litersPerHour, double kilopascals) =>
        new(PerHour(litersPerHour), Kilopascals(kilopascals));

    private static Pressure Kilopascals(double value) => Pressure.FromKilopascals(value);

    private static VolumeFlow PerHour(double liters) => VolumeFlow.FromLitersPerHour(liters);
}
