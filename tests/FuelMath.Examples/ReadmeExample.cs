using UnitsNet;

namespace FuelMath.Examples;

/// <summary>The code that the README shows.</summary>
public sealed class ReadmeExample
{
    [Fact]
    public void Assembly()
    {
        #region Assembly
        var sheet = new DataSource("Workshop-class", "invented data sheets");
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(13.5),
            [
                new(Pressure.FromBars(1), VolumeFlow.FromLitersPerHour(300), ElectricCurrent.FromAmperes(8)),
                new(Pressure.FromBars(5), VolumeFlow.FromLitersPerHour(210), ElectricCurrent.FromAmperes(12)),
            ],
            sheet
        );
        var pump = new Pump("pump", [curve], StandardFuels.PumpGasoline, sheet);
        var (length, bore, roughness) = (Length.FromMeters(3), Length.FromMillimeters(8), Length.FromMicrometers(1.5));
        var hose = new Hose("feed hose", length, bore, roughness, Ratio.FromDecimalFractions(2), sheet);
        var network = new Network(
            [
                Network.Node.FixedPressure("tank", default, Length.Zero),
                Network.Node.Junction("pump outlet", Length.Zero, draw: VolumeFlow.Zero),
                Network.Node.Junction("rail", Length.FromMeters(0.4), draw: VolumeFlow.FromLitersPerHour(240)),
            ],
            [new Line("pump", "tank", "pump outlet", pump), new Line("feed", "pump outlet", "rail", hose)]
        );
        var warm = new NetworkConditions(
            Density.FromKilogramsPerCubicMeter(735),
            DynamicViscosity.FromMillipascalSeconds(0.45)
        );
        GaugePressure rail = network.Solve(warm.WithPumpVoltage(curve.Voltage)).PressureAt("rail"); // 356 kPa gauge
        #endregion

        // By hand: the straight curve gives 366.7 kPa at 240 L/h; the hose loses 7.9, the height 2.9 kPa.
        Assert.Equal(366.667 - 7.9 - 2.9, rail.AboveAmbient.Kilopascals, 0.5);
    }

    [Fact]
    public void Readme()
    {
        #region Readme
        FuelSystem car = SystemDocument.ReadFile("data/time-trial-car.json"); // tank, pump, filter, hoses, rails, regulator, wiring, engine

        var point = new OperatingPoint(
            "full load",
            speed: RotationalSpeed.FromRevolutionsPerMinute(6000),
            new IntakeAir(
                manifold: new AbsolutePressure(Pressure.FromKilopascals(220)),
                ambient: AbsolutePressure.StandardAtmosphere,
                charge: Temperature.FromDegreesCelsius(45)
            ),
            fuel: Temperature.FromDegreesCelsius(40),
            supply: ElectricPotential.FromVolts(13.8),
            FuelCommand.HoldLambda(Lambda.FromRatio(0.82))
        );

        SystemState state = car.Solve(point); // all of it together, or an exception that says why not

        GaugePressure rail = state.PressureAt("primary rail");
        SystemState.StageResult primaries = state.Stages[0];
        string line =
            $"rail {rail}, {primaries.PulseWidth.Milliseconds:0.0} ms, duty {primaries.DutyCycle.Percent:0} %";

        foreach (Finding finding in state.Findings)
        {
            Console.WriteLine(finding); // what, value, limit, where the limit comes from, what to do
        }
        #endregion

        Assert.Equal(point, state.Point);
        Assert.StartsWith("rail ", line, StringComparison.Ordinal);
        Assert.True(rail.AboveAmbient > Pressure.FromBars(3));
        Assert.InRange(primaries.DutyCycle.Percent, 1, 100);
    }
}
