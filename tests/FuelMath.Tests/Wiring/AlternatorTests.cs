using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Battery and alternator side by side: who carries the load, by hand.</summary>
public sealed class AlternatorTests
{
    // 14.2 V against 12.6 V behind 20 mΩ: the battery takes 80 A, the load 30 A, the alternator gives 110 A of its 120 A.
    [Fact]
    public void Solve_AlternatorStrongEnough_Regulates()
    {
        WiringMesh.State state = Car(limitAmperes: 120, loadAmperes: 30).Solve();

        Assert.Equal(WiringMesh.AlternatorCondition.Regulating, state.StateOf("alternator"));
        Close.Within(1e-12, 14.2, state.VoltageOf("alternator").Volts);
        Close.Within(1e-12, -80, state.CurrentFrom("battery").Amperes);
        Close.Within(1e-12, 110, state.CurrentFrom("alternator").Amperes);
    }

    // At 40 A the alternator is full; the battery takes 10 A at 12.6 V + 10 A x 20 mΩ = 12.8 V.
    [Fact]
    public void Solve_AlternatorTooWeak_IsAtItsLimit()
    {
        WiringMesh.State state = Car(limitAmperes: 40, loadAmperes: 30).Solve();

        Assert.Equal(WiringMesh.AlternatorCondition.AtLimit, state.StateOf("alternator"));
        Close.Within(1e-12, 12.8, state.VoltageOf("alternator").Volts);
        Close.Within(1e-11, -10, state.CurrentFrom("battery").Amperes);
    }

    // A battery that shows more than the alternator is set to leaves it idle.
    [Fact]
    public void Solve_BatteryAboveTheRegulator_LeavesTheAlternatorIdle()
    {
        WiringMesh car = Car(limitAmperes: 40, loadAmperes: 5).WithVoltage("battery", ElectricPotential.FromVolts(15));

        WiringMesh.State state = car.Solve();

        Assert.Equal(WiringMesh.AlternatorCondition.Idle, state.StateOf("alternator"));
        Close.Within(1e-12, 15 - (5 * 0.02), state.VoltageOf("battery").Volts);
        Assert.Equal(0, state.CurrentFrom("alternator").Amperes, 1e-12);
    }

    // Alternator off is a mesh without it: 12.6 V - 30 A x 20 mΩ = 12.0 V.
    [Fact]
    public void Solve_EngineOff_IsTheBatteryAlone()
    {
        WiringMesh car = Car(40, 30);
        var off = new WiringMesh("off", car.Reference, car.Branches, car.Sources.RemoveAt(1), car.Loads);

        Close.Within(1e-12, 12.0, off.Solve().VoltageAcross("lamps").Volts);
    }

    [Fact]
    public void StateOf_ABattery_IsRefused() =>
        Words.Refused<ArgumentException>("alternator", "'battery'", () => Car(40, 30).Solve().StateOf("battery"));

    // Two alternators on wires of their own: the stronger set carries all until the other's wire evens out.
    [Fact]
    public void Solve_TwoAlternators_EachFindsItsState()
    {
        var mesh = new WiringMesh(
            "twin",
            "-",
            [
                WiringMesh.Branch.FromResistance("wire 1", "a1", "bus", ElectricResistance.FromMilliohms(10)),
                WiringMesh.Branch.FromResistance("wire 2", "a2", "bus", ElectricResistance.FromMilliohms(10)),
            ],
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "bus",
                    "-",
                    ElectricPotential.FromVolts(12.6),
                    ElectricResistance.FromMilliohms(20)
                ),
                WiringMesh.Source.Alternator(
                    "high",
                    "a1",
                    "-",
                    ElectricPotential.FromVolts(14.4),
                    ElectricCurrent.FromAmperes(200)
                ),
                WiringMesh.Source.Alternator(
                    "low",
                    "a2",
                    "-",
                    ElectricPotential.FromVolts(13.0),
                    ElectricCurrent.FromAmperes(50)
                ),
            ],
            []
        );

        WiringMesh.State state = mesh.Solve();

        // 1.8 V over 30 mΩ is 60 A, and the bus at 13.8 V is above what the other is set to.
        Assert.Equal(WiringMesh.AlternatorCondition.Regulating, state.StateOf("high"));
        Assert.Equal(WiringMesh.AlternatorCondition.Idle, state.StateOf("low"));
        Close.Within(1e-12, 60, state.CurrentFrom("high").Amperes);
    }

    private static WiringMesh Car(double limitAmperes, double loadAmperes) =>
        new(
            "car",
            "-",
            [],
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "+",
                    "-",
                    ElectricPotential.FromVolts(12.6),
                    ElectricResistance.FromMilliohms(20)
                ),
                WiringMesh.Source.Alternator(
                    "alternator",
                    "+",
                    "-",
                    ElectricPotential.FromVolts(14.2),
                    ElectricCurrent.FromAmperes(limitAmperes)
                ),
            ],
            [new WiringMesh.CurrentLoad("lamps", "+", "-", ElectricCurrent.FromAmperes(loadAmperes))]
        );
}
