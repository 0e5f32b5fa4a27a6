using FuelMath.Formulas;

namespace FuelMath.Tests.Networks;

/// <summary>Networks that full and guided Newton steps send round in a circle, so that they are started up.</summary>
public sealed class StartUpTests
{
    /// <summary>More iterations than full and guided steps take.</summary>
    private const int Guided = 25;

    /// <summary>Of half a million random networks, each kind that a solver without a start-up did not settle.</summary>
    [Theory]
    [InlineData(4472, 1)] // Nothing flows; all junctions hang on parts that are shut, and steps open or shut them together.
    [InlineData(117300, 1)]
    [InlineData(375454, 1)]
    [InlineData(59664, 1)] // Regulators in series and in loops, all wide open at a thousandth of the flow of their scale.
    [InlineData(61188, 1)] // Two return regulators at nearly one pressure, one of which feels its return line.
    [InlineData(153859, 1)]
    [InlineData(77743, 1)] // Check valves around a region that a reducing regulator fills.
    [InlineData(146321, 1)]
    [InlineData(408353, 1)] // A loop without flow through a check valve, along which flow only creeps to nothing.
    [InlineData(1935, 16)] // Sixteen times our bores: the last digit of a pressure opens and shuts a check valve.
    public void Solve_WhereNewtonCircles_KeepsEveryLawAndMass(int seed, double scale)
    {
        var drawn = new RandomNetwork(seed, scale);

        NetworkState state = drawn.Network.Solve();

        Assert.True(state.Iterations > Guided, $"took {state.Iterations} iterations");
        KeepsEveryLawAndMass(drawn, state);
    }

    /// <summary>
    /// Nothing flows, and between two shut parts the solve leaves a pressure of 14 digits, whose last one is more than the
    /// error that a state may have: filling must not take its rounding along.
    /// </summary>
    [Fact]
    public void Solve_PressureBetweenShutPartsFarOff_KeepsEveryLawAndMass()
    {
        var drawn = new RandomNetwork(96_804);

        KeepsEveryLawAndMass(drawn, drawn.Network.Solve());
    }

    /// <summary>
    /// All pumps lift less than the manifold holds. Nothing flows, and what rounding of pressures lets through is more than
    /// what counts as balanced.
    /// </summary>
    [Fact]
    public void Solve_NothingFlowsButRounding_KeepsEveryLawAndMass()
    {
        var drawn = new RandomNetwork(587_474);

        KeepsEveryLawAndMass(drawn, drawn.Network.Solve());
    }

    private static void KeepsEveryLawAndMass(RandomNetwork drawn, NetworkState state)
    {
        LinkBalance.Holds(drawn.Network, state, "drawn at random");
        double most = drawn.Links.Max(l => Math.Abs(Flow(state, l)));
        foreach (Network.Node node in drawn.Nodes.Where(n => !n.IsFixed))
        {
            double gained =
                drawn.Links.Where(l => l.To == node.Name).Sum(l => Flow(state, l))
                - drawn.Links.Where(l => l.From == node.Name).Sum(l => Flow(state, l));
            Close.WithinOf(Math.Max(most, 1e-3), 1e-9, node.Draw.CubicMetersPerSecond, gained);
        }
    }

    /// <summary>The larger of two similar networks needs a start-up, the smaller does not: the pressures are the same.</summary>
    [Fact]
    public void Solve_StartedUp_EqualsTheSimilarNetworkThatIsNot()
    {
        NetworkState small = new RandomNetwork(1935).Network.Solve();
        NetworkState large = new RandomNetwork(1935, 16).Network.Solve();

        Assert.True(small.Iterations < Guided && large.Iterations > Guided);
        string[] known = [.. small.JunctionNames.Except(small.CutOffNodeNames)];
        Assert.Equal(known, large.JunctionNames.Except(large.CutOffNodeNames));
        Assert.All(known, n => Close.WithinOf(200, 1e-6, small.KilopascalsAt(n), large.KilopascalsAt(n)));
    }

    /// <summary>Numbers of a lane that are started up, that are done already, and that are at another pressure.</summary>
    [Theory]
    [InlineData(59664)]
    [InlineData(61188)]
    public void Solve_InLanes_HasTheBitsThatEachNumberHasAlone(int seed)
    {
        NetworkPlan plan = new RandomNetwork(seed).Network.Plan;
        double given = plan.Nodes[plan.Unknown].PressureSi;
        double[] pressures = [.. Enumerable.Range(0, WideLane.Count).Select(i => given + (5e3 * i))];

        double[][] together = InLanes(plan, pressures);

        for (int i = 0; i < pressures.Length; i++)
        {
            Assert.Equal(InLanes(plan, [.. Enumerable.Repeat(pressures[i], WideLane.Count)])[i], together[i]);
        }
    }

    private static double[][] InLanes(NetworkPlan plan, double[] pressures)
    {
        using NetworkWork<WideLane> work = plan.Rent<WideLane>();
        work.SetPressure(plan.Unknown, WideLane.Load(pressures));
        Assert.True(WideLane.All(work.Solve(warm: false)));
        return
        [
            .. Enumerable
                .Range(0, WideLane.Count)
                .Select(i => work.Pressure.Concat(work.Flow).Append(work.Iterations).Select(x => x[i]).ToArray()),
        ];
    }

    private static double Flow(NetworkState state, OwnLine link) => state.FlowIn(link.Name).CubicMetersPerSecond;
}
