using FsCheck.Xunit;
using FuelMath.Tests.Networks;
using UnitsNet;

namespace FuelMath.Tests.Fittings;

public sealed class JetTests
{
    private static readonly DataSource Source = new("Workshop-class", "invented");
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromPascalSeconds(4e-4);

    /// <summary>By definition: four times the pressure, twice the flow; with the power one, as much as the pressure.</summary>
    [Theory]
    [InlineData(50, 2)]
    [InlineData(100, 4)]
    [InlineData(75, 2.8284271247461903)]
    [Trait("Source", "Definition")]
    public void FlowAt_FourTimesThePressure_GoesWithThePower(double percent, double times)
    {
        Jet jet = Jet(percent);

        Close.Within(1e-12, 60 * times, jet.FlowAt(Make.Kilopascals(1200), Petrol).LitersPerHour);
        Close.Within(1e-12, 60, jet.FlowAt(Make.Kilopascals(300), Petrol).LitersPerHour);
        Assert.Equal(0, jet.FlowAt(Pressure.Zero, Petrol).LitersPerHour);
    }

    /// <summary>As with a drilled opening, flow goes with one over the root of density.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void FlowAt_FourTimesTheDensity_IsHalf() =>
        Close.Within(1e-12, 30, Jet(70).FlowAt(Make.Kilopascals(300), 4 * Petrol).LitersPerHour);

    [Property]
    public void LossAt_FlowAtAPressure_IsThePressure(byte percent, ushort pressure, byte density)
    {
        Jet jet = Jet(30 + (70 * percent / 255.0));
        Pressure across = Make.Kilopascals(0.01 + (pressure / 50.0));
        var rho = Density.FromKilogramsPerCubicMeter(600 + density);

        VolumeFlow flow = jet.FlowAt(across, rho);

        Close.Within(1e-10, across.Pascals, jet.LossAt(flow, rho).Pascals);
        Close.Within(1e-10, -across.Pascals, jet.LossAt(-flow, rho).Pascals);
    }

    /// <summary>In a network between two given pressures, either way round, with the root and with other powers.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(50)]
    [InlineData(57)]
    [InlineData(100)]
    public void Solve_BetweenTwoPressures_FlowsAsTheJetSays(double percent)
    {
        Jet jet = Jet(percent);
        foreach (double kilopascals in (double[])[0.2, 1, 40, 300, 900])
        {
            double expected = jet.FlowAt(Make.Kilopascals(kilopascals), Petrol).LitersPerHour;
            Close.Within(1e-7, expected, Flow(kilopascals, 0));
            Close.Within(1e-7, -expected, Flow(0, kilopascals));
        }

        // A state is accepted within 1 mPa, which a root turns into a flow of its own size.
        Assert.Equal(0, Flow(80, 80), 1.01 * jet.FlowAt(Pressure.FromPascals(1e-3), Petrol).LitersPerHour);

        double Flow(double ahead, double behind) =>
            new Network(
                [Make.Fixed("ahead", ahead), Make.Fixed("behind", behind)],
                [new Line("jet", "ahead", "behind", jet)]
            )
                .Solve(new NetworkConditions(Petrol, Thin))
                .LitersPerHourIn("jet");
    }

    /// <summary>Two of power n in a row share the pressure equally.</summary>
    [Fact]
    public void Solve_TwoEqualInARow_ShareThePressure()
    {
        Network network = new(
            [Make.Fixed("ahead", 300), Make.Junction("between"), Make.Fixed("behind", 0)],
            [new Line("first", "ahead", "between", Jet(60)), new Line("second", "between", "behind", Jet(60))]
        );

        Close.Within(1e-9, 150, network.Solve(new NetworkConditions(Petrol, Thin)).KilopascalsAt("between"));
    }

    [Fact]
    public void Constructor_BadValues_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("exponent", () => Jet(29));
        Assert.Throws<ArgumentOutOfRangeException>("exponent", () => Jet(101));
        Assert.Throws<ArgumentOutOfRangeException>(
            "flow",
            () => new Jet("jet", VolumeFlow.Zero, Make.Kilopascals(1), Petrol, Source)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "differentialPressure",
            () => new Jet("jet", Make.LitersPerHour(1), Pressure.Zero, Petrol, Source)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "density",
            () => new Jet("jet", Make.LitersPerHour(1), Make.Kilopascals(1), Density.Zero, Source)
        );
        Assert.Throws<ArgumentException>(
            "name",
            () => new Jet("", Make.LitersPerHour(1), Make.Kilopascals(1), Petrol, Source)
        );
        Assert.Throws<ArgumentNullException>(
            "source",
            () => new Jet("jet", Make.LitersPerHour(1), Make.Kilopascals(1), Petrol, null!)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "differentialPressure",
            () => Jet(50).FlowAt(Make.Kilopascals(-1), Petrol)
        );
    }

    private static Jet Jet(double percent) =>
        new("jet", Make.LitersPerHour(60), Make.Kilopascals(300), Petrol, Ratio.FromPercent(percent), Source);
}
