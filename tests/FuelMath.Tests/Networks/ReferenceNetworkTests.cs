namespace FuelMath.Tests.Networks;

/// <summary>The twelve solved networks of Data, whose README says how they were made.</summary>
public sealed class ReferenceNetworkTests
{
    public static TheoryData<string> All => ReferenceNetwork.All;

    [Fact]
    public void Data_HoldTwelveNetworks() => Assert.Equal(12, All.Count);

    /// <summary>The same friction law solved with SciPy: its root finder leaves 1e-7 of the largest.</summary>
    [Theory]
    [MemberData(nameof(All))]
    [Trait("Source", "SciPy")]
    public void Solve_SameFriction_EqualsTheRootFinder(string id) =>
        Compare(id, Pipe.FrictionLaw.SwameeJainCubicPassage, "check_scipy_same_friction", "same_friction_vs_scipy");

    /// <summary>The water-network engine: its accuracy setting leaves 1e-7 in pressure and 2e-6 in flow.</summary>
    [Theory]
    [MemberData(nameof(All))]
    [Trait("Source", "Rossman-2020")]
    public void Solve_SameFriction_EqualsTheEngine(string id) =>
        Compare(id, Pipe.FrictionLaw.SwameeJainCubicPassage, "expected_epanet", "same_friction_vs_epanet");

    /// <summary>Colebrook and White with the straight passage, solved with SciPy.</summary>
    [Theory]
    [MemberData(nameof(All))]
    [Trait("Source", "SciPy")]
    public void Solve_Colebrook_EqualsTheRootFinder(string id) =>
        Compare(
            id,
            Pipe.FrictionLaw.ColebrookStraightPassage,
            "check_scipy_colebrook",
            "colebrook_vs_check_scipy_colebrook"
        );

    /// <summary>Another friction law moves pressures by up to 0.2 % and flows by up to 0.5 %.</summary>
    [Theory]
    [MemberData(nameof(All))]
    [Trait("Source", "Rossman-2020")]
    public void Solve_Colebrook_IsNearTheEngine(string id) =>
        Compare(id, Pipe.FrictionLaw.ColebrookStraightPassage, "expected_epanet", "any_colebrook_vs_epanet");

    private static void Compare(string id, Pipe.FrictionLaw friction, string column, string tolerance)
    {
        var reference = new ReferenceNetwork(id, friction);
        ReferenceSolution expected = reference.Solution(column);
        (double p, double q) = reference.Tolerance(tolerance);

        NetworkState state = reference.Network.Solve();

        foreach ((string node, double pressure) in expected.Pressure)
        {
            Close.WithinOf(expected.PressureScale, p, pressure, state.PressureAt(node).AboveAmbient.Pascals);
        }

        foreach ((string link, double flow) in expected.Flow)
        {
            Close.WithinOf(expected.FlowScale, q, flow, state.FlowIn(link).CubicMetersPerSecond);
        }

        foreach ((string node, double flow) in expected.EmitterFlow)
        {
            double sum = reference
                .Emitters.Where(e => reference.NodeOfEmitter(e) == node)
                .Sum(e => state.FlowIn(e).CubicMetersPerSecond);
            Close.WithinOf(expected.FlowScale, q, flow, sum);
        }

        foreach ((string link, string word) in expected.State)
        {
            Assert.Equal(word, Word(state.ConditionOf(link)));
        }
    }

    private static string Word(Network.LineCondition condition) =>
        condition switch
        {
            Network.LineCondition.Running or Network.LineCondition.FullyOpen => "open",
            Network.LineCondition.Regulating => "active",
            _ => "closed",
        };
}
