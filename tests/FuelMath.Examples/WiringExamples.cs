using UnitsNet;

namespace FuelMath.Examples;

public sealed class WiringExamples
{
    [Fact]
    public void VoltageAtThePump()
    {
        #region VoltageAtThePump
        var hot = Temperature.FromDegreesCelsius(50);
        var circuit = new Circuit(
            "fuel pump",
            supply: [new Conductor(WireSize.FromArea(Area.FromSquareMillimeters(4)), Length.FromMeters(5), hot)],
            ground: [new Conductor(WireSize.FromAwg(12), Length.FromMeters(1.5), hot)],
            contacts: ElectricResistance.FromMilliohms(18)
        );

        ElectricPotential atPump = circuit.VoltageAtLoad(
            ElectricPotential.FromVolts(13.6),
            ElectricCurrent.FromAmperes(16)
        ); // 12.8 V
        #endregion

        Assert.Equal(12.78, atPump.Volts, 0.01);
    }

    [Fact]
    public void TwoGrounds()
    {
        #region TwoGrounds
        var warm = Temperature.FromDegreesCelsius(50);
        Conductor Wire(int gauge, double meters) => new(WireSize.FromAwg(gauge), Length.FromMeters(meters), warm);
        ElectricResistance Milliohms(double value) => ElectricResistance.FromMilliohms(value);

        var mesh = new WiringMesh(
            "time-trial car",
            reference: "battery -",
            [
                new WiringMesh.Branch("alternator lead", "alternator", "battery +", [Wire(4, 1.2)], Milliohms(1)),
                new WiringMesh.Branch("pump supply", "battery +", "pump +", [Wire(10, 4)], Milliohms(9)),
                new WiringMesh.Branch("pump ground", "pump -", "chassis", [Wire(12, 0.5)], Milliohms(3)),
                new WiringMesh.Branch("battery to chassis", "chassis", "battery -", [Wire(4, 0.4)], Milliohms(1)),
                new WiringMesh.Branch("chassis to block", "chassis", "block", [Wire(8, 0.3)], Milliohms(2)),
                new WiringMesh.Branch("battery to block", "block", "battery -", [Wire(4, 1)], Milliohms(1)),
            ],
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "battery +",
                    "battery -",
                    ElectricPotential.FromVolts(13.6),
                    Milliohms(8)
                ),
                WiringMesh.Source.Alternator(
                    "alternator unit",
                    "alternator",
                    "block",
                    ElectricPotential.FromVolts(14.1),
                    ElectricCurrent.FromAmperes(90)
                ),
            ],
            [new WiringMesh.CurrentLoad("pump", "pump +", "pump -", ElectricCurrent.FromAmperes(16))]
        );

        WiringMesh.State state = mesh.Solve();
        ElectricPotential atPump = state.VoltageAcross("pump"); // 13.45 V
        ElectricPotential lostInGround = state.VoltageBetween("pump -", "battery -");
        WiringMesh.AlternatorCondition alternator = state.StateOf("alternator unit"); // regulating
        #endregion

        Assert.Equal(WiringMesh.AlternatorCondition.Regulating, alternator);
        Assert.Equal(13.45, atPump.Volts, 0.01);
        Assert.InRange(lostInGround.Millivolts, 40, 90);
    }

    [Fact]
    public void SmallestWire()
    {
        #region SmallestWire
        WireChoice choice = WireChoice.Smallest(
            WireSize.Metric,
            supply: Length.FromMeters(5),
            ground: Length.FromMeters(1.5),
            Temperature.FromDegreesCelsius(50),
            contacts: ElectricResistance.FromMilliohms(12),
            ElectricCurrent.FromAmperes(16),
            allowedDrop: ElectricPotential.FromVolts(0.7)
        ); // 4 mm²
        #endregion

        Assert.Equal("4 mm²", choice.Size.Name);
    }
}
