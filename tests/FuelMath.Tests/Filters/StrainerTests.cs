using UnitsNet;

namespace FuelMath.Tests.Filters;

/// <summary>A strainer by its wire: against the screen's own measures worked out apart, and against its limits.</summary>
public sealed class StrainerTests
{
    private static readonly Density Light = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.5);
    private static readonly DataSource Source = new("Workshop-class", "strainer of the training stand, invented");

    /// <summary>
    /// Openings of 0.25 mm between wires of 0.16 mm, 12 cm2, 300 L/h. Worked out apart from the wire of a square meter: 5236 m
    /// of wire, void 0.670992, surface 8225 1/m, Reynolds number 6.07666, friction factor 8.61/Re + 0.52.
    /// </summary>
    [Fact]
    [Trait("Source", "Armour-Cannon-1968")]
    public void LossAt_AKnownScreen_IsThatOfItsWire()
    {
        Close.Within(1e-12, 19.651184997595116, Loss(Mesh(), 300));
        Close.Within(1e-12, 49369.18744333778, Mesh().GreatestFlow(Light, Thin).LitersPerHour);
    }

    /// <summary>Half the mesh carries half the flow at one loss.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void LossAt_HalfTheMesh_IsThatOfTwiceTheFlow() =>
        Close.Within(1e-12, Loss(Mesh(), 300), Loss(Mesh(squareMillimeters: 600), 150));

    /// <summary>Ten times finer in all measures: the surface in each volume, squared, counts for the thin depth.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void LossAt_FinerMeshOfTheSameForm_LosesMore()
    {
        double coarse = Loss(Mesh(), 1);
        double fine = Loss(Mesh(0.025, 0.016), 1);

        Assert.InRange(fine / coarse, 9.5, 10);
    }

    [Fact]
    public void LossAt_BeyondTheLaw_IsRefused()
    {
        OutsideTableException error = Words.OutsideTable(
            "'sock', -49369.19, 49369.19, 50000",
            () => Mesh().LossAt(VolumeFlow.FromLitersPerHour(50000), Light, Thin)
        );
        Assert.Equal("flow", error.ParamName);
    }

    /// <summary>In a network it is what it is alone.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_StrainerInALine_LosesWhatItLosesAlone()
    {
        Network network = new(
            [
                Network.Node.FixedPressure("tank", default, Length.Zero),
                Network.Node.Junction("inlet", Length.Zero, VolumeFlow.FromLitersPerHour(300)),
            ],
            [new Line("sock", "tank", "inlet", Mesh())]
        );

        NetworkState state = network.Solve(new NetworkConditions(Light, Thin));

        Close.Within(1e-7, 19.651184997595116, state.PressureDifferenceOver("sock").Pascals);
    }

    [Theory]
    [InlineData(0.005, 0.16, 1200, "opening")]
    [InlineData(6, 0.16, 1200, "opening")]
    [InlineData(0.25, 0, 1200, "wireDiameter")]
    [InlineData(0.25, 0.51, 1200, "wireDiameter")]
    [InlineData(0.25, 0.16, 0, "area")]
    public void Constructor_OutsideTheLimits_IsRefused(double opening, double wire, double area, string paramName)
    {
        ArgumentException error = Assert.ThrowsAny<ArgumentException>(() => Mesh(opening, wire, area));
        Assert.Equal(paramName, error.ParamName);
    }

    private static double Loss(Strainer strainer, double litersPerHour) =>
        strainer.LossAt(VolumeFlow.FromLitersPerHour(litersPerHour), Light, Thin).Pascals;

    private static Strainer Mesh(double opening = 0.25, double wire = 0.16, double squareMillimeters = 1200) =>
        new(
            "sock",
            Length.FromMillimeters(opening),
            Length.FromMillimeters(wire),
            Area.FromSquareMillimeters(squareMillimeters),
            Source
        );
}
