using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Sources and loads whose negative terminal is not the reference, by hand.</summary>
public sealed class SourcesInSeriesTests
{
    /// <summary>
    /// 12 V with 0.01 ohm, on top of it 6 V with 0.02 ohm, and 1.77 ohm from the top to ground: 18 V over 1.8 ohm are 10 A. The
    /// middle is at 12 - 0.1 V, the top at 11.9 + 6 - 0.2 V; the branch heats with 100 x 1.77 W.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_TwoBatteriesInSeries_AddUp()
    {
        WiringMesh.State state = new WiringMesh(
            "series",
            "ground",
            [WiringMesh.Branch.FromResistance("lamp", "top", "ground", Resistance(1.77))],
            [
                WiringMesh.Source.Battery("lower", "middle", "ground", Volts(12), Resistance(0.01)),
                WiringMesh.Source.Battery("upper", "top", "middle", Volts(6), Resistance(0.02)),
            ],
            []
        ).Solve();

        Close.Within(1e-12, 11.9, state.VoltageAt("middle").Volts);
        Close.Within(1e-12, 17.7, state.VoltageAt("top").Volts);
        Close.Within(1e-12, 10, state.CurrentFrom("upper").Amperes);
        Close.Within(1e-12, 5.8, state.VoltageOf("upper").Volts);
        Close.Within(1e-9, 177, (double)state.HeatIn("lamp").Watts);
    }

    /// <summary>
    /// A held 6 V on top of a battery of 12 V and 0.01 ohm; 1.79 ohm from the top to ground carry 10 A, and a load of 2 ohm
    /// between top and middle another 3 A, which the battery does not see.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_HeldSourceAndLoadOnABattery_KeepTheirOwnVoltage()
    {
        WiringMesh.State state = new WiringMesh(
            "held",
            "ground",
            [WiringMesh.Branch.FromResistance("lamp", "top", "ground", Resistance(1.79))],
            [
                WiringMesh.Source.Battery("lower", "middle", "ground", Volts(12), Resistance(0.01)),
                WiringMesh.Source.Held("upper", "top", "middle", Volts(6)),
            ],
            [new WiringMesh.ResistanceLoad("motor", "top", "middle", Resistance(2))]
        ).Solve();

        Close.Within(1e-12, 11.9, state.VoltageAt("middle").Volts);
        Close.Within(1e-12, 17.9, state.VoltageAt("top").Volts);
        Close.Within(1e-12, 13, state.CurrentFrom("upper").Amperes);
        Close.Within(1e-12, 6, state.VoltageAcross("motor").Volts);
        Close.Within(1e-9, 18, (double)state.PowerInto("motor").Watts);
    }

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Resistance(double ohms) => ElectricResistance.FromOhms(ohms);
}
