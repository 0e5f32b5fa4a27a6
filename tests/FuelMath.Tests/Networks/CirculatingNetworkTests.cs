using System.Globalization;
using Xunit.Abstractions;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Networks with regions that nothing flows into, beside the model of <see cref="CirculatingNetwork"/>.</summary>
[Trait("Source", "Definition")]
public sealed class CirculatingNetworkTests(ITestOutputHelper output)
{
    private const int Networks = 100;
    private const double VacuumKilopascals = -101.325;

    /// <summary>What the model may leave unmoved, and what a square law makes of a millipascal, kPa.</summary>
    private const double Tolerance = 1e-4;

    [Fact]
    public void Solve_RandomCirculations_HasThePressuresOfTheModel()
    {
        int networks = Environment.GetEnvironmentVariable("FUELMATH_CASES") is { Length: > 0 } cases
            ? int.Parse(cases, CultureInfo.InvariantCulture)
            : Networks;
        int crept = 0;
        int refused = 0;
        int cutOff = 0;
        int compared = 0;
        double worst = 0;
        List<string> wrong = [];
        for (int seed = 0; seed < networks; seed++)
        {
            CirculatingNetwork drawn = new(seed);
            if (drawn.Pressures() is not { } expected)
            {
                crept++;
                continue;
            }

            bool below = expected.Any(p => p < VacuumKilopascals);
            try
            {
                double off = Furthest(drawn, expected, drawn.Network.Solve());
                (compared, worst) = (compared + 1, Math.Max(worst, off));
                cutOff += expected.Any(double.IsNaN) ? 1 : 0;
                if (below || off > Tolerance)
                {
                    wrong.Add($"{seed}: off by {off}{(below ? ", below vacuum" : "")}");
                }
            }
            catch (NoSolutionException) when (below || expected.Any(double.IsNaN))
            {
                refused++;
            }
            catch (NoSolutionException e)
            {
                wrong.Add($"{seed}: {e.Message}");
            }
        }

        output.WriteLine(
            $"{networks} networks: {compared} compared, {cutOff} of them with places cut off; {refused} refused as below vacuum; {crept} crept in the model; worst {worst} kPa"
        );
        output.WriteLine(string.Join(Environment.NewLine, wrong.Take(40)));
        Assert.Empty(wrong);
        Assert.True(crept < networks / 4, $"{crept} crept");
    }

    /// <summary>A start from which draining does not settle: what counts then is the cold start, in buffer and batch alike.</summary>
    [Fact]
    public void Solve_FromAStateThatLeadsNowhere_IsThatFromACold()
    {
        Network network = new CirculatingNetwork(1908).Network;
        Network.Buffer warm = new(network);
        network.Solve(warm);
        NetworkState start = warm.ToState();
        warm.SetPressure("tank", Gauge(5));
        network.Solve(warm);
        Network.Buffer cold = new(network);
        cold.SetPressure("tank", Gauge(5));
        network.Solve(cold);
        NetworkState expected = cold.ToState();
        NetworkBatch batch = new NetworkBatch(network, 1).WithPressure("tank", [Gauge(5)]);

        foreach (NetworkState state in new[] { warm.ToState(), batch.StateAt(0, start) })
        {
            Assert.Equal(expected.CutOffNodeNames.ToArray(), state.CutOffNodeNames.ToArray());
            Assert.All(
                state.JunctionNames.Except(state.CutOffNodeNames),
                j => Close.WithinOf(1000, 1e-7, expected.KilopascalsAt(j), state.KilopascalsAt(j))
            );
        }
    }

    /// <summary>The greatest difference, kPa; infinite where one knows what the other does not.</summary>
    private static double Furthest(CirculatingNetwork drawn, double[] expected, NetworkState state)
    {
        double worst = 0;
        foreach ((string name, double pressure) in drawn.Junctions.Zip(expected))
        {
            bool isCutOff = state.CutOffNodeNames.Contains(name);
            worst = Math.Max(
                worst,
                isCutOff != double.IsNaN(pressure) ? double.PositiveInfinity
                    : isCutOff ? 0
                    : Math.Abs(state.KilopascalsAt(name) - pressure)
            );
        }

        return worst;
    }
}
