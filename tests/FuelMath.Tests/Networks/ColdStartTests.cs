namespace FuelMath.Tests.Networks;

/// <summary>Two thousand random networks from a cold start: each is solved, or refused for a reason that it names.</summary>
public sealed class ColdStartTests
{
    private const int Networks = 2000;

    [Fact]
    public void Solve_RandomNetworks_SettlesOrSaysWhyNot()
    {
        List<int> iterations = [];
        List<string> unexplained = [];
        int refused = 0;
        for (int seed = 0; seed < Networks; seed++)
        {
            try
            {
                iterations.Add(new RandomNetwork(seed).Network.Solve().Iterations);
            }
            catch (NoSolutionException e) when (RandomNetwork.IsProof(e))
            {
                refused++;
            }
            catch (NoSolutionException e)
            {
                unexplained.Add($"{seed}: {e.Message}");
            }
        }

        Assert.Equal([], unexplained);
        Assert.Equal(Networks, iterations.Count + refused);
        Assert.True(refused < Networks / 20, $"{refused} refused");
        iterations.Sort();
        Assert.True(iterations[Networks / 2] <= 8, $"half need {iterations[Networks / 2]} iterations");
        Assert.True(iterations[^(Networks / 20)] <= 25, $"nineteen in twenty need {iterations[^(Networks / 20)]}");
    }
}
