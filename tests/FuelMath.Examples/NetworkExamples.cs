using FuelMath.Networks;
using FuelMath.Quantities;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class NetworkExamples
{
    [Fact]
    public void Network()
    {
        #region Network
        var network = FuelMath.Networks.Network.FromDynamicViscosity(
            Density.FromKilogramsPerCubicMeter(740),
            DynamicViscosity.FromMillipascalSeconds(0.5),
            [
                NetworkNode.FixedPressure("feed", new GaugePressure(Pressure.FromBars(3)), Length.Zero),
                NetworkNode.Junction("left rail", Length.Zero, draw: VolumeFlow.FromLitersPerHour(60)),
                NetworkNode.Junction("right rail", Length.Zero, draw: VolumeFlow.FromLitersPerHour(60)),
            ],
            [
                Branch("left branch", to: "left rail", Length.FromMeters(0.5)),
                Branch("right branch", to: "right rail", Length.FromMeters(1.5)),
                Pipe("link between the rails", "left rail", "right rail", Length.FromMeters(0.3)),
            ]
        );
        NetworkState state = network.Solve();

        VolumeFlow left = state.FlowIn("left branch"); // the shorter way takes the larger part of 120 L/h
        VolumeFlow across = state.FlowIn("link between the rails");
        Pressure error = state.WorstPressureDifference; // how well the equations hold, and where
        string where = state.WorstPressureDifferenceLink;
        #endregion

        VolumeFlow right = state.FlowIn("right branch");
        Assert.Equal(120, left.LitersPerHour + right.LitersPerHour, 1e-6);
        Assert.Equal(left.LitersPerHour - 60, across.LitersPerHour, 1e-6);
        Assert.True(left > right);
        Assert.True(error < Pressure.FromPascals(1e-3));
        Assert.Contains(where, state.Links);

        static NetworkLink Branch(string name, string to, Length length) => Pipe(name, "feed", to, length);
        static NetworkLink Pipe(string name, string from, string to, Length length) =>
            NetworkLink.Pipe(
                name,
                from,
                to,
                length,
                Length.FromMillimeters(6),
                Length.FromMicrometers(1.5),
                Ratio.FromDecimalFractions(1.5),
                FrictionLaw.ColebrookStraightPassage
            );
    }
}
