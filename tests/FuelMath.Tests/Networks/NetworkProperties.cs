using FsCheck.Xunit;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>What is true of every network. Those that random draws make impossible are refused, and count as kept.</summary>
[Properties(Arbitrary = [typeof(NetworkArbitraries)], MaxTest = 60)]
public sealed class NetworkProperties
{
    /// <summary>0.6 m/s in the widest hose, m3/s: the scale where next to nothing flows.</summary>
    private const double UsualFlow = 1.9e-4;

    /// <summary>
    /// The greatest flow that a cold start begins with in these networks, m3/s: where next to nothing flows the solver
    /// stops at a billionth of it, since a square law has no slope there.
    /// </summary>
    private const double StartingFlow = 1e-3;

    private static double ScaleOf(int seed) => 1 + (seed % 20);

    [Property]
    public void Solve_ConservesMassAtEachJunction(NetworkSeed seed)
    {
        var drawn = new RandomNetwork(seed.Value);
        if (Solved(drawn.Network) is not { } state)
        {
            return;
        }

        double scale = Math.Max(StartingFlow, drawn.Links.Max(l => Math.Abs(Flow(state, l.Name))));
        foreach (Network.Node node in drawn.Nodes.Where(n => !n.IsFixed))
        {
            double gained =
                drawn.Links.Where(l => l.To == node.Name).Sum(l => Flow(state, l.Name))
                - drawn.Links.Where(l => l.From == node.Name).Sum(l => Flow(state, l.Name));
            Close.WithinOf(scale, 1e-9, node.Draw.CubicMetersPerSecond, gained);
        }
    }

    /// <summary>The solver stops at a billionth of the greatest pressure and 1 mPa.</summary>
    [Property]
    public void Solve_KeepsEachLinksOwnLaw(NetworkSeed seed)
    {
        var drawn = new RandomNetwork(seed.Value);
        if (Solved(drawn.Network) is not { } state)
        {
            return;
        }

        LinkBalance.Holds(drawn.Network, state, $"seed {seed.Value}");
    }

    /// <summary>
    /// Other names in another order are the same network. Flows settle to a ten millionth, and in a dead loop of square
    /// laws to some millionths of what they usually carry.
    /// </summary>
    [Property]
    public void Solve_OrderAndNames_DoNotMatter(NetworkSeed seed)
    {
        var drawn = new RandomNetwork(seed.Value);
        if (Solved(drawn.Network) is not { } state)
        {
            return;
        }

        var shuffle = new Random(seed.Value);
        Network.Node[] nodes = [.. drawn.Nodes.Select(n => Renamed(n))];
        OwnLine[] links = [.. drawn.Links.Select(l => l.Renamed(n => $"z {n}"))];
        shuffle.Shuffle(nodes);
        shuffle.Shuffle(links);

        AssertSame(state, drawn.Made(nodes, links).Solve(), n => $"z {n}", 1, 1);
    }

    /// <summary>
    /// Lengths, bores, roughness and viscosity times s, flows times its square: the pressures stay. (Reynolds numbers do.)
    /// Up to twenty times our bores, far outside what the solver's steep branches were made for.
    /// </summary>
    [Property]
    public void Solve_ExactlySimilar_HasTheSamePressures(NetworkSeed seed)
    {
        double scale = ScaleOf(seed.Value);
        if (Solved(new RandomNetwork(seed.Value).Network) is not { } state)
        {
            return;
        }

        AssertSame(state, new RandomNetwork(seed.Value, scale).Network.Solve(), n => n, 1, scale * scale);
    }

    [Property]
    public void Solve_FromItsOwnState_StaysThere(NetworkSeed seed)
    {
        Network network = new RandomNetwork(seed.Value).Network;
        if (Solved(network) is { } state)
        {
            AssertSame(state, network.Solve(state), n => n, 1, 1);
        }
    }

    /// <summary>Two branches alike carry the same, whatever feeds them.</summary>
    [Property]
    public void Solve_TwoBranchesAlike_CarryTheSame(NetworkSeed seed)
    {
        var random = new Random(seed.Value);
        (double length, double bore, double k) = (
            random.NextDouble() + 0.1,
            4 + (8 * random.NextDouble()),
            random.Next(5)
        );
        Network network = Make.Fuel(
            Make.Fixed("supply", 100 + (400 * random.NextDouble())),
            Make.Junction("Y"),
            Make.Junction("left"),
            Make.Junction("right"),
            Make.Fixed("manifold", 0),
            Make.Hose("feed", "supply", "Y", 1, 8),
            Make.Hose("to left", "Y", "left", length, bore, k),
            Make.Hose("to right", "Y", "right", length, bore, k),
            Make.Injector("left", "left", "manifold", 80, 60),
            Make.Injector("right", "right", "manifold", 80, 60)
        );

        NetworkState state = network.Solve();

        Close.Within(1e-9, state.LitersPerHourIn("to left"), state.LitersPerHourIn("to right"));
        Close.Within(1e-9, state.KilopascalsAt("left"), state.KilopascalsAt("right"));
    }

    /// <summary>More resistance anywhere in a single path never raises the flow.</summary>
    [Property]
    public void Solve_MoreResistanceInASinglePath_NeverRaisesTheFlow(NetworkSeed seed)
    {
        double Flow(int part, double more)
        {
            var random = new Random(seed.Value);
            List<object> made = [Make.Fixed("tank", 0), Make.Fixed("end", 0), Make.Junction("0")];
            PlainPump pump = Make.Straight(OutsideRange.Extend, (0, 500), (200, 400), (400, 100));
            made.Add(OwnLine.Pump("pump", "tank", "0", pump));
            for (int i = 0; i < 5; i++)
            {
                string to = i == 4 ? "end" : $"{i + 1}";
                (double bore, double k) = (3 + (9 * random.NextDouble()), 5 * random.NextDouble());
                made.Add(
                    Make.Hose($"hose {i}", $"{i}", to, 0.1 + random.NextDouble(), bore, k + (i == part ? more : 0))
                );
                if (i < 4)
                {
                    made.Add(Make.Junction(to));
                }
            }

            return Make.Fuel([.. made]).Solve().LitersPerHourIn("pump");
        }

        int part = seed.Value % 5;
        double[] flows = [.. new[] { 0, 0.5, 5, 50 }.Select(more => Flow(part, more))];

        Assert.All(flows.Zip(flows.Skip(1)), pair => Assert.True(pair.Second <= pair.First * (1 + 1e-9)));
    }

    private static NetworkState? Solved(Network network)
    {
        try
        {
            return network.Solve();
        }
        catch (NoSolutionException refused)
        {
            Assert.True(RandomNetwork.IsProof(refused), refused.Reason);
            return null;
        }
    }

    private static double Flow(NetworkState state, string link) => state.FlowIn(link).CubicMetersPerSecond;

    private static Network.Node Renamed(Network.Node n) =>
        n.IsFixed
            ? Network.Node.FixedPressure($"z {n.Name}", new(n.PressureSi), n.Elevation)
            : Network.Node.Junction($"z {n.Name}", n.Elevation, n.Draw);

    private static void AssertSame(
        NetworkState one,
        NetworkState other,
        Func<string, string> name,
        double pressure,
        double flow
    )
    {
        Assert.Equal(
            one.CutOffNodeNames.Select(name).Order(StringComparer.Ordinal),
            other.CutOffNodeNames.Order(StringComparer.Ordinal)
        );
        string[] known = [.. one.JunctionNames.Except(one.CutOffNodeNames)];
        double top = known.Select(n => Math.Abs(one.KilopascalsAt(n))).Append(100).Max();
        foreach (string node in known)
        {
            Close.WithinOf(top, 1e-6, pressure * one.KilopascalsAt(node), other.KilopascalsAt(name(node)));
        }

        double most = one.LineNames.Select(l => Math.Abs(Flow(one, l))).Append(UsualFlow / 10).Max();
        foreach (string link in one.LineNames)
        {
            Close.WithinOf(most * flow, 1e-5, flow * Flow(one, link), Flow(other, name(link)));
        }
    }
}
