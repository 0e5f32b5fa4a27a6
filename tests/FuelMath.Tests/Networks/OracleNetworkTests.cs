using FuelMath.Formulas;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Networks of our range solved by a general pipe-network engine. The data say how they were made, and so does the README
/// of tests/oracle.
/// </summary>
public sealed class OracleNetworkTests
{
    /// <summary>
    /// The engine was told to stop at flow changes of 1e-7 ft3/s. Our smallest greatest flow, 50 L/h, is 44 ft3/s enlarged
    /// 300 times: 2e-9 of it. A flow moves pressures by twice its part.
    /// </summary>
    private const double Converged = 1e-8;

    /// <summary>
    /// A shut part of the engine lets head/1e8 through (ft3/s, ft), a holding valve errs by flow/1e8: at 8 bar, 360 ft, up
    /// to 4e-6 of 44 ft3/s, so 1e-7 for each, of which several stand in one network. Between two holding valves the loss
    /// is a tenth of the pressure, so that errors of pressure weigh more in flow.
    /// </summary>
    private const double Leaking = 1e-6;

    /// <summary>How far the explicit law is from the implicit one: see the entry of the source.</summary>
    private const double Published = 0.03;

    private static readonly string[] States =
    [
        "running",
        "stalled",
        "seated",
        "regulating",
        "open",
        "shut",
        "commanded",
        "held open",
    ];

    public static TheoryData<string> All => [.. OracleNetwork.Names];

    public static TheoryData<string> Unsettled => [.. OracleNetwork.UnsettledNames];

    [Fact]
    public void Data_AreManyAndInEveryState()
    {
        OracleNetwork[] all =
        [
            .. OracleNetwork.Names.Select(n => new OracleNetwork(n, Pipe.FrictionLaw.SwameeJainCubicPassage)),
        ];

        Assert.True(all.Length >= 40);
        Assert.True(all.Count(n => !n.Leaks) >= 30);
        Assert.All(States, s => Assert.True(all.Count(n => n.State.Values.Contains(s)) >= 2, s));

        // A relief valve is a check valve with a spring, and a coil is a pipe with more friction: the engine has neither.
        Assert.All(
            Enum.GetValues<OwnKind>().Except([OwnKind.CurvedPipe]),
            k => Assert.True(all.Count(n => n.Network.Lines.Any(l => OwnKinds.Of(l.Part) == k)) >= 3, k.ToString())
        );
    }

    [Theory]
    [MemberData(nameof(All))]
    [Trait("Source", "Rossman-2020")]
    public void Solve_SameFriction_EqualsTheEngine(string name)
    {
        var engine = new OracleNetwork(name, Pipe.FrictionLaw.SwameeJainCubicPassage);

        NetworkState state = engine.Network.Solve();

        Compare(engine, state, engine.Leaks ? Leaking : Converged);
        Assert.All(engine.State, e => Assert.Equal(e.Value, Word(state.ConditionOf(e.Key))));
        Assert.Subset(engine.Undetermined.ToHashSet(), state.CutOffNodeNames.ToHashSet());
    }

    /// <summary>
    /// The other law moves each loss by the distance of the two factors, and flows, which go with the root of it, by about
    /// half of that; the whole distance is allowed.
    /// </summary>
    [Theory]
    [MemberData(nameof(All))]
    [Trait("Source", "Rossman-2020")]
    public void Solve_Colebrook_StaysWithinTheDistanceOfTheFactors(string name)
    {
        var engine = new OracleNetwork(name, Pipe.FrictionLaw.ColebrookStraightPassage);
        double distance = engine.Pipes.Max(p => Distance(p.Reynolds, p.RelativeRoughness));

        NetworkState state = engine.Network.Solve();

        Compare(engine, state, distance + Leaking);
    }

    /// <summary>From 5000 on the factors of all pipes in the networks are within the published distance.</summary>
    [Theory]
    [MemberData(nameof(All))]
    [Trait("Source", "Swamee-Jain-1976")]
    public void Factors_OfItsTurbulentPipes_AreWithinThePublishedDistance(string name) =>
        Assert.All(
            new OracleNetwork(name, Pipe.FrictionLaw.ColebrookStraightPassage).Pipes.Where(p => p.Reynolds >= 5000),
            p => Assert.InRange(Distance(p.Reynolds, p.RelativeRoughness), 0, Published)
        );

    /// <summary>Where the engine goes round in circles between states there is an answer all the same.</summary>
    [Theory]
    [MemberData(nameof(Unsettled))]
    public void Solve_WhereTheEngineDoesNotSettle_KeepsEachLinksOwnLaw(string name)
    {
        Network network = new OracleNetwork(name, Pipe.FrictionLaw.ColebrookStraightPassage).Network;

        LinkBalance.Holds(network, network.Solve(), name);
    }

    private static void Compare(OracleNetwork engine, NetworkState state, double tolerance)
    {
        foreach ((string node, double pressure) in engine.Pressure)
        {
            double ours = state.PressureAt(node).AboveAmbient.Kilopascals;
            Close.WithinOf(engine.PressureScale, tolerance, pressure, ours);
        }

        foreach ((string link, double flow) in engine.Flow)
        {
            Close.WithinOf(engine.FlowScale, tolerance, flow, state.FlowIn(link).LitersPerHour);
        }
    }

    private static double Distance(double reynolds, double roughness)
    {
        var (re, rough) = (new Real(reynolds), new Real(roughness));
        return Math.Abs((Friction.FactorWithCubicPassage(re, rough).Value / Friction.Factor(re, rough).Value) - 1);
    }

    private static string Word(Network.LineCondition condition) =>
        condition switch
        {
            Network.LineCondition.Open or Network.LineCondition.FullyOpen => "open",
            Network.LineCondition.HeldOpen => "held open",
            _ => condition.ToString().ToLowerInvariant(),
        };
}
