using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// The bundled circuit car, with surge tank and a second pump on a switch, against a model made by hand: other formulas, from
/// the numbers of its file.
/// </summary>
public sealed class CircuitCarTests
{
    private static readonly FuelSystem Car = SystemDocument.Read(TestFiles.System("circuit-car"));

    private static readonly OperatingPoint[] Points = [.. OperatingListDocument.Read(TestFiles.Points("circuit-car"))];

    public static TheoryData<string> Names => [.. Points.Select(p => p.Name)];

    /// <summary>The switch joins above -12 kPa gauge and leaves below -30: ambient is 101.3 kPa.</summary>
    [Theory]
    [InlineData("idle, hot", false)]
    [InlineData("pit lane", false)]
    [InlineData("corner exit", true)]
    [InlineData("peak power", true)]
    public void Solve_SecondPump_JoinsByTheManifold(string name, bool runs)
    {
        SystemState state = StateAt(name);

        Assert.Equal(
            runs ? Network.LineCondition.Running : Network.LineCondition.Stopped,
            state.Network.ConditionOf("second pump")
        );
        Assert.Equal(runs ? 3 : 2, state.Pumps.Length);
    }

    /// <summary>
    /// Each pump has the source's voltage less what its own current loses: copper of 1.724e-8 ohm m at 20 degrees and 0.393 % a
    /// kelvin; AWG 12 is 3.31 mm2, 14 is 2.08 mm2 (from memory, any wire table).
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Solve_EachPump_HasTheVoltageOfItsCircuit(string name)
    {
        SystemState state = StateAt(name);
        double Wires(double square, double ahead, double back) =>
            1.724e-8 / square * ((ahead * (1 + (0.00393 * 15))) + (back * (1 + (0.00393 * 10))));
        var circuits = new Dictionary<string, double>
        {
            ["lift pump"] = 0.015 + Wires(2.08e-6, 3.5, 1),
            ["first pump"] = 0.012 + Wires(3.31e-6, 3.5, 1),
            ["second pump"] = 0.014 + Wires(3.31e-6, 3.6, 1.1),
        };

        foreach (SystemState.PumpResult pump in state.Pumps)
        {
            double drop = pump.Current.Amperes * circuits[pump.Line];
            Close.Within(0.01 * drop, drop, state.Point.Supply.Volts - pump.Voltage.Volts);
        }
    }

    /// <summary>
    /// The lift pump's rise is what its hose takes (Blasius' friction and the coefficient of 6) and the height and the
    /// acceleration between fuel cell and surge tank, 40 mm up, 250 mm ahead and 350 mm to the left.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Solve_LiftPump_BearsHoseHeightAndAcceleration(string name)
    {
        SystemState state = StateAt(name);
        double density = Car.Fuel.DensityAt(state.Point.Fuel).KilogramsPerCubicMeter;
        double viscosity = Car.Fuel.ViscosityAt(state.Point.Fuel).PascalSeconds;
        double velocity = state.FlowThrough("lift pump").CubicMetersPerSecond / (Math.PI / 4 * 0.007 * 0.007);
        double reynolds = density * velocity * 0.007 / viscosity;
        double hose = ((0.3164 / Math.Pow(reynolds, 0.25) * 1.6 / 0.007) + 6) * density * velocity * velocity / 2;
        VehicleAcceleration a = state.Point.Acceleration;
        double carried =
            density
            * ((9.80665 * 0.04) + (a.Forward.MetersPerSecondSquared * 0.25) + (a.Left.MetersPerSecondSquared * 0.35));

        Close.Within(0.04 * hose, hose + carried, state.Pumps[0].PressureRise.Pascals);
    }

    /// <summary>
    /// At 7000 rpm and 101 kPa the table's neighbors give 94.25 %: air of 1.1236 kg/m3 at 40 degrees, 14.6 of it a part of fuel.
    /// What the engine burns of what is lifted does not overflow.
    /// </summary>
    [Fact]
    public void Solve_PeakPower_OverflowsWhatTheEngineDoesNotBurn()
    {
        SystemState state = StateAt("peak power");
        double air = 0.9425 * 101e3 / (287.05 * 313.15) * 3e-3 * 7000 / 60 / 2;
        double burned =
            air
            / (14.6 * state.Lambda!.Value.ToRatio())
            / Car.Fuel.DensityAt(state.Point.Fuel).KilogramsPerCubicMeter
            * 3.6e6;
        SurgeTankBalance tank = Assert.Single(state.SurgeTanks);

        Close.Within(0.005 * burned, burned, (tank.LiftFlow - tank.OverflowFlow).LitersPerHour);
        Assert.True(tank.DrainsWithoutLift);
        Close.WithinOf(80, 0.005, 1.6 * 3600 / burned, tank.LastsWithoutLift().Seconds);
    }

    [Fact]
    public void Points_AreAllSolvedAndHold()
    {
        Assert.All(Points, p => Assert.NotEqual(Verdict.Outcome.DoNotRun, Car.Solve(p).Verdict.Kind));
        Assert.All(Points, p => Assert.Equal(p.Name, Car.Solve(p).Point.Name));
    }

    /// <summary>
    /// In still fuel and along a line pressure falls forward by density x acceleration x distance; a junction that alone lies
    /// ahead moves no flow.
    /// </summary>
    [Fact]
    public void Solve_AJunctionAhead_LosesWhatTheAccelerationTakes()
    {
        FuelSystem four = Workshop.Four();
        FuelSystem placed = four.WithNetwork(
            new(
                four.Network.Nodes.Select(n =>
                    n.Name == "filter outlet" ? n.AtPlace(Length.FromMeters(1.5), Length.FromMeters(-0.5)) : n
                ),
                four.Network.Lines
            )
        );
        OperatingPoint rest = Workshop.Point(6000, 100, Workshop.Hold(0.9));
        OperatingPoint fast = rest.WithAcceleration(
            new(Acceleration.FromMetersPerSecondSquared(5), Acceleration.FromMetersPerSecondSquared(8), default)
        );
        SystemState still = placed.Solve(rest);
        SystemState state = placed.Solve(fast);
        double density = four.Fuel.DensityAt(rest.Fuel).KilogramsPerCubicMeter;

        Close.Within(
            0.01,
            -density * ((5 * 1.5) - (8 * 0.5)),
            state.PressureAt("filter outlet").Si - still.PressureAt("filter outlet").Si
        );
        Close.Within(0.01, still.PressureAt("rail start").Si, state.PressureAt("rail start").Si);
        Assert.Equal(still.PressureAt("rail start").Si, placed.Solve(rest).PressureAt("rail start").Si);
    }

    private static SystemState StateAt(string name) => Car.Solve(Points.First(p => p.Name == name));
}
