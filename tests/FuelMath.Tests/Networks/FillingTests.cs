using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Where nothing flows, pressure comes through check valves: through the one that lets most through, in whatever order parts
/// and nodes are named. Openings and pressures are in kPa, so that levels follow by subtraction.
/// </summary>
[Trait("Source", "Definition")]
public sealed class FillingTests
{
    private const double Exact = 1e-7;

    /// <summary>Nodes named from the far end, so that each is looked at before the one that fills it.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    public void BlindEnd_NamedBackward_IsFilledThroughAll(int valves)
    {
        IEnumerable<int> all = Enumerable.Range(0, valves);
        NetworkState state = Fuel([
                .. all.Select(i => Junction($"n{i}")),
                Fixed($"n{valves}", 300),
                .. all.Select(i => Check($"valve {i}", $"n{i + 1}", $"n{i}", 10 + i)),
            ])
            .Solve();

        Assert.Empty(state.CutOffNodeNames);
        Assert.All(
            all,
            i =>
            {
                double lost = all.Where(k => k >= i).Sum(k => 10 + k);
                Close.Within(Exact, 300 - lost, state.KilopascalsAt($"n{i}"));
                Assert.Equal(Network.LineCondition.Shut, state.ConditionOf($"valve {i}"));
                Assert.Equal(0, state.LitersPerHourIn($"valve {i}"));
            }
        );
    }

    /// <summary>
    /// 100 through a valve of 50 gives 50, and over a detour of 10 and 5 it gives 85: the higher one holds, also where the
    /// lower was seen first, and what hangs behind follows.
    /// </summary>
    [Theory]
    [InlineData("behind", "end", "detour")]
    [InlineData("end", "detour", "behind")]
    [InlineData("detour", "behind", "end")]
    [InlineData("end", "behind", "detour")]
    public void End_OfTwoWays_IsFilledThroughTheBetter(string first, string second, string third)
    {
        NetworkState state = Fuel(
                Fixed("tank", 100),
                Junction(first),
                Junction(second),
                Junction(third),
                Check("straight", "tank", "end", 50),
                Check("in", "tank", "detour", 10),
                Check("out", "detour", "end", 5),
                Check("last", "end", "behind", 2)
            )
            .Solve();

        Close.Within(Exact, 90, state.KilopascalsAt("detour"));
        Close.Within(Exact, 85, state.KilopascalsAt("end"));
        Close.Within(Exact, 83, state.KilopascalsAt("behind"));
    }

    /// <summary>A ring that only lets out keeps what it had: its parts can't fill each other.</summary>
    [Fact]
    public void Ring_ThatOnlyLetsOut_IsCutOff()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Junction("a"),
                Junction("b"),
                Check("way out", "a", "tank", 1),
                Check("ab", "a", "b", 1),
                Check("ba", "b", "a", 1)
            )
            .Solve();

        Assert.Equal("a, b", string.Join(", ", state.CutOffNodeNames));
        Assert.False(state.TryPressureAt("a", out GaugePressure pressure));
        Assert.Equal(default, pressure);
        Assert.False(state.TryPressureDifferenceOver("ab", out UnitsNet.Pressure difference));
        Assert.Equal(default, difference);
        Assert.False(state.TryPressureDifferenceOver("way out", out _));
        Assert.Throws<InvalidOperationException>(() => state.PressureDifferenceOver("way out"));
    }

    /// <summary>Regions of one solve are forgotten in the next: the same buffer, the tank below and above the far end.</summary>
    [Fact]
    public void Buffer_FilledAgain_ForgetsWhatWasFilled()
    {
        Network network = Fuel(
            Fixed("tank", 100),
            Fixed("far", 0),
            Junction("a"),
            Junction("b"),
            Check("in", "tank", "a", 10),
            Check("ab", "a", "b", 5),
            Check("out", "b", "far", 500)
        );
        Network.Buffer buffer = new(network);
        foreach (double tank in new[] { 100, 40, 700, 55, 20 })
        {
            buffer.SetPressure("tank", Gauge(tank));
            network.Solve(buffer);
            NetworkState alone = network.Solve(buffer.ToState());

            // 700 opens all three: 185 kPa are left for three times 5 u2.
            double u = Math.Sqrt(Math.Max(0, tank - 515) / 15);
            Close.WithinOf(100, Exact, 100 * u, buffer.FlowIn("ab").LitersPerHour);
            Close.WithinOf(100, 1e-6, tank - 15 - (10 * u * u), buffer.PressureAt("b").AboveAmbient.Kilopascals);
            Close.WithinOf(100, 1e-6, tank - 10 - (5 * u * u), buffer.PressureAt("a").AboveAmbient.Kilopascals);
            Assert.Equal(buffer.ConditionOf("out"), u > 0 ? Network.LineCondition.Open : Network.LineCondition.Shut);
            Assert.NotNull(alone);
        }
    }
}
