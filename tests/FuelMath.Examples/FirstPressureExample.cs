#region FirstPressureUsings
using FuelMath;
using UnitsNet;
#endregion

namespace FuelMath.Examples;

/// <summary>From nothing to the first pressure in a rail, as the page for developers shows it. The data are invented.</summary>
public sealed class FirstPressureExample
{
    [Fact]
    public void FirstPressure()
    {
        #region FirstPressure
        var source = new DataSource("Workshop-class", "invented");
        var volts = ElectricPotential.FromVolts(13.5);
        PumpCurve.Point[] points =
        [
            new(Pressure.FromBars(2), VolumeFlow.FromLitersPerHour(340), ElectricCurrent.FromAmperes(8)),
            new(Pressure.FromBars(4), VolumeFlow.FromLitersPerHour(290), ElectricCurrent.FromAmperes(10.5)),
        ];
        var pump = new Pump("in-tank pump", [new(volts, points, source)], StandardFuels.NHeptane, source);
        var bore = Length.FromMillimeters(8);
        var hose = new Hose("feed hose", Length.FromMeters(3), bore, Length.Zero, Ratio.Zero, source);
        Network network = new(
            [
                Network.Node.FixedPressure("tank", new GaugePressure(Pressure.Zero), Length.Zero),
                Network.Node.Junction("pump outlet", Length.Zero),
                Network.Node.Junction("rail", Length.Zero, draw: VolumeFlow.FromLitersPerHour(300)),
            ],
            [new Line("pump", "tank", "pump outlet", pump), new Line("feed hose", "pump outlet", "rail", hose)]
        );
        var density = Density.FromKilogramsPerCubicMeter(745);
        var fuel = new NetworkConditions(density, DynamicViscosity.FromMillipascalSeconds(0.5));
        NetworkState state = network.Solve(fuel.WithPumpVoltage(volts));
        GaugePressure rail = state.PressureAt("rail"); // 3.50 bar gauge
        #endregion

        // 3.6 bar on the straight line of the curve, less what 1.658 m/s lose by Blasius' friction factor of 0.0267.
        Assert.Equal(3.6 - 0.1025, rail.AboveAmbient.Bars, 0.005);
    }

    /// <summary>What a newcomer has to hold in mind is counted, so that it stays little.</summary>
    [Fact]
    public void FirstPressure_TakesThreeUsingsAndTwentyFiveLinesAtMost()
    {
        string[] lines = File.ReadAllLines(
            Path.Combine(Checkout.Root, "tests", "FuelMath.Examples", "FirstPressureExample.cs")
        );
        int from = Array.FindIndex(lines, l => l == "        #region FirstPressure");
        int to = Array.FindIndex(lines, from, l => l == "        #endregion");

        Assert.InRange(lines.Count(l => l.StartsWith("using ", StringComparison.Ordinal)), 1, 3);
        Assert.InRange(to - from - 1, 10, 25);
    }
}
