using FuelMath.Wiring;
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
}
