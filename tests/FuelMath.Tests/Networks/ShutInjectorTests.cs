namespace FuelMath.Tests.Networks;

/// <summary>
/// Injectors that give nothing join nothing: what lies between them and a stalled pump must not take the manifold's
/// pressure. Each seed is a network that once did.
/// </summary>
public sealed class ShutInjectorTests
{
    [Theory]
    [InlineData(1591)]
    [InlineData(2742)]
    [InlineData(2796)]
    public void Solve_FromItsOwnState_HasTheSamePressures(int seed)
    {
        Network network = new RandomNetwork(seed).Network;
        NetworkState first = network.Solve();
        NetworkState again = network.Solve(first);

        Assert.Equal(first.CutOffNodeNames, again.CutOffNodeNames);
        foreach (string node in first.JunctionNames.Except(first.CutOffNodeNames))
        {
            // The solver stops at 1 mPa and a billionth of the greatest pressure, a bar or a few.
            Assert.Equal(first.KilopascalsAt(node), again.KilopascalsAt(node), 1e-4);
        }
    }

    /// <summary>No junction, and nothing that could flow: all scales of flow are zero, and so is the answer.</summary>
    [Fact]
    public void Solve_NothingButShutInjectors_IsAtRest()
    {
        Network network = Make.Fuel(
            Make.Fixed("rail", 300),
            Make.Fixed("manifold", 0),
            Make.Injector("injectors", "rail", "manifold", 200, 0)
        );

        NetworkState state = network.Solve();
        NetworkBatch.Result batch = new NetworkBatch(network, 3).Solve(null, CancellationToken.None);

        Assert.Equal(
            (0, Network.LineCondition.Shut),
            (state.LitersPerHourIn("injectors"), state.ConditionOf("injectors"))
        );
        Assert.Equal(3, batch.SolvedCount);
        Assert.Equal(Network.LineCondition.Shut, batch.ConditionOf("injectors", 2));
    }
}
