using FsCheck.Xunit;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>A vehicle that speeds up: its acceleration acts along the network like weight.</summary>
public sealed class AccelerationTests
{
    private const double Rho = 740;

    private static VehicleAcceleration Accelerating(double forward, double left, double up) =>
        new(
            Acceleration.FromMetersPerSecondSquared(forward),
            Acceleration.FromMetersPerSecondSquared(left),
            Acceleration.FromMetersPerSecondSquared(up)
        );

    /// <summary>
    /// Tank behind, rail 2.5 m ahead, 0.3 m to the left, 0.2 m above. Still fluid under 8 m/s2 forward and 5 to the left:
    /// the rail loses rho (8 x 2.5 + 5 x 0.3 + (9.80665 + 1) x 0.2).
    /// </summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_StillFluid_LosesDensityTimesAccelerationTimesDistance()
    {
        Network network = Fuel(
                Fixed("tank", 50),
                Junction("rail", 0.2).AtPlace(Length.FromMeters(2.5), Length.FromMeters(0.3)),
                Hose("line", "tank", "rail", 3, 8)
            )
            .Under(Accelerating(8, 5, 1));

        double expected = 50 - (Rho * ((8 * 2.5) + (5 * 0.3) + ((9.80665 + 1) * 0.2)) / 1e3);
        Close.Within(1e-8, expected, network.Solve().KilopascalsAt("rail"));
    }

    /// <summary>All at one height: forward acceleration a over L does what an elevation a L / g does. Same equations.</summary>
    [Property]
    public void Solve_Acceleration_EqualsTheElevationOfTheSameColumn(short forward, short left, byte ahead, sbyte aside)
    {
        (double a, double b) = (forward / 1000.0, left / 1000.0);
        (double x, double y) = (ahead / 60.0, aside / 100.0);
        NetworkState accelerated = Circuit(0, x, y).Under(Accelerating(a, b, 0)).Solve();
        NetworkState lifted = Circuit(((a * x) + (b * y)) / 9.80665, x, y).Solve();

        Close.WithinOf(100, 1e-8, lifted.LitersPerHourIn("line"), accelerated.LitersPerHourIn("line"));
        Close.WithinOf(300, 1e-8, lifted.KilopascalsAt("rail"), accelerated.KilopascalsAt("rail"));
    }

    /// <summary>The opening discharges into a space, whose height and place do not matter.</summary>
    private static Network Circuit(double height, double ahead, double aside) =>
        Fuel(
            Fixed("supply", 300),
            Junction("rail", height).AtPlace(Length.FromMeters(ahead), Length.FromMeters(aside)),
            Fixed("manifold", -40),
            Hose("line", "supply", "rail", 3, 8),
            OwnLine.Orifice(
                "open injector",
                "rail",
                "manifold",
                LitersPerHour(100),
                Kilopascals(300),
                InjectorDraw.Backflow.Prevented
            )
        );

    [Fact]
    public void Under_Rest_IsTheSameNetwork()
    {
        Network network = Circuit(0, 1, 0);

        Assert.Same(network, network.Under(default));
        Assert.Equal(
            network.Solve().KilopascalsAt("rail"),
            network.Under(Accelerating(9, 0, 0)).Under(default).Solve().KilopascalsAt("rail")
        );
    }
}
