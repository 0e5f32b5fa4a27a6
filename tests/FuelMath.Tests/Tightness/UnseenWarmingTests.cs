using FsCheck.Xunit;
using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Warming that the thermometer does not see, walls that expand, and temperatures from a cold to a hot shop.</summary>
[Properties(Arbitrary = [typeof(TightnessArbitraries)])]
public sealed class UnseenWarmingTests
{
    private static readonly VolumeFlow Limit = VolumeFlow.FromCubicMillimetersPerSecond(50 / 60.0);

    private static readonly DecayTest.Uncertainty Gauge = Uncertainty(fuel: 0, walls: 0);

    /// <summary>
    /// Half a liter leaks 30 mm³ in a minute for ten minutes, and warms by 1.5 K that no thermometer sees: its pressure rises
    /// by bars. Fuel cannot leak in, so that this is no test, however small the limit.
    /// </summary>
    [Fact]
    public void Judge_PressureThatRises_IsNoTest()
    {
        var line = new ClosedLine(0.5, 20, 0, 3, 30);
        double leaked = 0.3;
        DecayTest warmed = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(10, After(line, 1.5, leaked)),
            Gauge
        );

        Assert.True(warmed.After.Pressure.AboveAmbient > warmed.Before.Pressure.AboveAmbient);
        Assert.True(warmed.Rate.CubicMillimetersPerSecond < 0);
        Assert.True(warmed.IsContradictory);
        Assert.Equal(DecayTest.Outcome.NotATest, warmed.Judge(Limit));
        Assert.Equal(DecayTest.Outcome.NotATest, warmed.Judge(VolumeFlow.FromLitersPerHour(10)));
    }

    /// <summary>
    /// A pass says that the rate and what is not known of it stay below the limit, whichever way: a line without a leak passes
    /// with a rate a little below zero, and one that is negative beyond its uncertainty never does.
    /// </summary>
    [Property]
    public void Judge_PassesOnlyWhatCanBe(ClosedLine line, sbyte tenths)
    {
        double kelvins = tenths / 400.0;
        if (Record.Exception(() => Rise(line, kelvins)) is NoSolutionException)
        {
            // Refused only where it cools until it boils, at 40 kPa. Without gas the pressure would fall furthest: expansion over
            // compressibility, with 1.267 GPa at 20 °C between the two given.
            double fall =
                -kelvins
                * (Expansion(line.Volume.Fuel, 20) - line.WallExpansion)
                / ((1 / 1.267e9) + (line.Swelling * 1e-10));
            Assert.True((line.Bars * 1e5) + 100e3 - (1.05 * fall) <= 40e3);
            return;
        }

        DecayTest test = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(10, line.Start + Rise(line, kelvins)),
            Gauge
        );

        DecayTest.Outcome verdict = test.Judge(VolumeFlow.FromLitersPerHour(10));
        double rate = test.Rate.CubicMetersPerSecond;
        double expanded = test.ExpandedUncertainty.CubicMetersPerSecond;
        Assert.Equal(rate < -expanded, test.IsContradictory);
        Assert.Equal(
            rate < -expanded || test.IsAtFloor ? DecayTest.Outcome.NotATest : DecayTest.Outcome.Passes,
            verdict
        );
    }

    /// <summary>A fresh draw once found a stiff line that cools until its fuel boils.</summary>
    [Fact]
    public void Judge_ALineThatCoolsUntilItBoils_HasNoSecondReading() =>
        Judge_PassesOnlyWhatCanBe(new ClosedLine(3, 2, 0, 2.5, 919) { WallExpansion = 2e-4 }, -120);

    private static Pressure Rise(ClosedLine line, double kelvins) =>
        line.Volume.PressureRiseFor(line.Start, TemperatureDelta.FromKelvins(kelvins));

    /// <summary>By hand: 0.5 L, 10 min, 1 K; 5 % of the fuel's 1.2e-3 /K and half of the walls' 2e-4 /K are 6e-5 and 1e-4 /K.</summary>
    [Fact]
    public void Contributions_OfExpansion_AreThatOfFuelAndWalls()
    {
        var line = new ClosedLine(0.5, 20, 0, 4, 60) { WallExpansion = 2e-4 };
        DecayTest test = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(10, line.Start, 21),
            Uncertainty(fuel: 5, walls: 50)
        );
        double fuel = 0.05 * Expansion(line.Volume.Fuel, 20);

        DecayTest.Contribution expansion = test.Contributions.Single(c => c.Input == "expansion of fuel and walls");
        Close.Within(
            1e-4,
            0.5e6 * Math.Sqrt((fuel * fuel) + (1e-4 * 1e-4)) / 600,
            expansion.Uncertainty.CubicMillimetersPerSecond
        );
    }

    /// <summary>Walls that expand make room: the same warming reads as that much less of a leak.</summary>
    [Fact]
    public void LeakedVolume_WallsThatExpand_MakeRoom()
    {
        var rigid = new ClosedLine(0.5, 20, 0, 4, 60);
        double Leaked(ClosedLine line) =>
            new DecayTest(line.Volume, ClosedLine.Reading(0, line.Start), ClosedLine.Reading(10, line.Start, 21), Gauge)
                .LeakedVolume
                .CubicCentimeters;

        Close.Within(1e-9, 500 * 2e-4, Leaked(rigid) - Leaked(rigid with { WallExpansion = 2e-4 }));
    }

    /// <summary>The same readings with that warming put in show the leak on top.</summary>
    [Property]
    public void WarmingThatHides_PutIn_IsThatLeak(ClosedLine line)
    {
        var after = new GaugePressure(line.Start.AboveAmbient * 0.9);
        DecayTest blind = new(line.Volume, ClosedLine.Reading(0, line.Start), ClosedLine.Reading(10, after), Gauge);

        double hidden = blind.WarmingThatHides(line.LeakRate).Kelvins;

        DecayTest seeing = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(10, after, 20 + hidden),
            Gauge
        );
        Close.WithinOf(
            blind.Rate.CubicMillimetersPerSecond + line.LeakRate.CubicMillimetersPerSecond,
            1e-9,
            blind.Rate.CubicMillimetersPerSecond + line.LeakRate.CubicMillimetersPerSecond,
            seeing.Rate.CubicMillimetersPerSecond
        );
    }

    [Fact]
    public void WarmingThatHides_WallsThatExpandMore_IsRefused()
    {
        var rubber = new ClosedLine(0.5, 20, 0, 4, 60) { WallExpansion = 2e-3 };
        DecayTest test = new(
            rubber.Volume,
            ClosedLine.Reading(0, rubber.Start),
            ClosedLine.Reading(10, rubber.Start),
            Gauge
        );

        Assert.Throws<InvalidOperationException>(() => test.WarmingThatHides(Limit));
    }

    private static GaugePressure After(ClosedLine line, double kelvins, double leakedCubicCentimeters)
    {
        GaugePressure warm =
            line.Start + line.Volume.PressureRiseFor(line.Start, TemperatureDelta.FromKelvins(kelvins));
        return line.Volume.PressureAfterLosing(warm, Volume.FromCubicCentimeters(leakedCubicCentimeters));
    }

    /// <summary>From densities a kelvin apart.</summary>
    private static double Expansion(Fuel fuel, double celsius)
    {
        double Density(double c) => fuel.DensityAt(Temperature.FromDegreesCelsius(c)).KilogramsPerCubicMeter;
        return (Density(celsius - 0.5) - Density(celsius + 0.5)) / Density(celsius);
    }

    private static DecayTest.Uncertainty Uncertainty(double fuel, double walls) =>
        new(
            DecayTest.Uncertainty.DifferenceOfResolution(Pressure.FromKilopascals(1)),
            TemperatureDelta.FromKelvins(0.02),
            Duration.FromSeconds(1),
            new ClosedVolume.Uncertainty(
                Ratio.FromPercent(5),
                Ratio.FromPercent(10),
                Ratio.FromPercent(20),
                Ratio.FromPercent(fuel),
                Ratio.FromPercent(walls),
                Volume.Zero
            )
        );
}
