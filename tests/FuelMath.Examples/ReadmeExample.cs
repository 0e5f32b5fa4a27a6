using UnitsNet;

namespace FuelMath.Examples;

/// <summary>The code that the README shows.</summary>
public sealed class ReadmeExample
{
    [Fact]
    public void Readme()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "data", "time-trial-car.json");

        #region Readme
        FuelSystem car = SystemDocument.ReadFile(path); // tank, pump, filter, hoses, rails, regulator, wiring, engine

        var point = new OperatingPoint(
            "full load",
            speed: RotationalSpeed.FromRevolutionsPerMinute(6000),
            manifold: new AbsolutePressure(Pressure.FromKilopascals(220)),
            ambient: AbsolutePressure.StandardAtmosphere,
            charge: Temperature.FromDegreesCelsius(45),
            fuel: Temperature.FromDegreesCelsius(40),
            supply: ElectricPotential.FromVolts(13.8),
            FuelCommand.HoldLambda(Lambda.FromRatio(0.82))
        );

        SystemState state = car.Solve(point); // all of it together, or an exception that says why not

        GaugePressure rail = state.PressureAt("primary rail");
        StageResult primaries = state.Stages[0];
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
