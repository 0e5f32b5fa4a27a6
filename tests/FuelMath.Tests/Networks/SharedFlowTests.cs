using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Regulators that hold one pressure together: their sum is determined, each of them is not.</summary>
[Trait("Source", "Definition")]
public sealed class SharedFlowTests
{
    private const string Remark =
        "What flows through 'left' and 'right' each is not determined: they hold one pressure at 'rail' whatever flows.";

    [Fact]
    public void Regulators_EqualAndInParallel_AreNamedInARemark()
    {
        Network network = Returns(300, 300, 0);
        NetworkState cold = network.Solve();
        NetworkState warm = network.Solve(Returns(310, 300, 0).Solve());

        foreach (NetworkState state in new[] { cold, warm, new NetworkBatch(network, 1).StateAt(0) })
        {
            Assert.Equal([Remark], state.Remarks.ToArray());
            Close.Within(1e-8, 300, state.KilopascalsAt("rail"));
            Close.Within(1e-8, 200, state.LitersPerHourIn("left") + state.LitersPerHourIn("right"));
        }
    }

    /// <summary>With different settings or with a slope each flow follows.</summary>
    [Theory]
    [InlineData(310, 300, 0)]
    [InlineData(300, 300, 5)]
    public void Regulators_ThatDiffer_LeaveNothingOpen(double left, double right, double slope) =>
        Assert.Empty(Returns(left, right, slope).Solve().Remarks);

    [Fact]
    public void Regulators_AtNoFlow_LeaveNothingOpen() => Assert.Empty(Returns(600, 600, 0).Solve().Remarks);

    [Fact]
    public void ReducingRegulators_EqualAndInParallel_AreNamedInARemark()
    {
        NetworkState state = Fuel(
                Fixed("supply", 500),
                Drawn("rail", 80),
                OwnLine.ReducingRegulator("left", "supply", "rail", Regulator(300, 0)),
                OwnLine.ReducingRegulator("right", "supply", "rail", Regulator(300, 0))
            )
            .Solve();

        Assert.Equal([Remark], state.Remarks.ToArray());
    }

    /// <summary>Beside a pump whose curve has a hump the remark stands with the one on the hump.</summary>
    [Fact]
    public void Regulators_BesideAHump_AreNamedInARemark()
    {
        PlainPump hump = Straight(OutsideRange.Extend, (0, 400), (100, 500), (300, 100));
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Junction("rail"),
                OwnLine.Pump("pump", "tank", "rail", hump),
                OwnLine.BypassRegulator("left", "rail", "tank", Regulator(300, 0)),
                OwnLine.BypassRegulator("right", "rail", "tank", Regulator(300, 0))
            )
            .Solve();

        Assert.Equal(2, state.Remarks.Length);
        Assert.Equal(Remark, state.Remarks[0]);
    }

    private static Network Returns(double left, double right, double slope) =>
        Fuel(
            Fixed("tank", 0),
            Junction("rail"),
            OwnLine.Pump("pump", "tank", "rail", Straight(OutsideRange.Extend, (0, 500), (100, 400))),
            OwnLine.BypassRegulator("left", "rail", "tank", Regulator(left, slope)),
            OwnLine.BypassRegulator("right", "rail", "tank", Regulator(right, slope))
        );

    private static OwnRegulator Regulator(double set, double slope) =>
        new OwnRegulator(Kilopascals(set), Gauge(0), Kilopascals(5), LitersPerHour(100)).WithSlope(
            Kilopascals(slope),
            LitersPerHour(100)
        );
}
