using FuelMath.Fuels;
using FuelMath.Pumps;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class PumpExamples
{
    [Fact]
    public void Curve()
    {
        #region PumpCurve
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(13.5),
            [
                new(Pressure.FromBars(2), VolumeFlow.FromLitersPerHour(340), ElectricCurrent.FromAmperes(8)),
                new(Pressure.FromBars(4), VolumeFlow.FromLitersPerHour(290), ElectricCurrent.FromAmperes(10.5)),
                new(Pressure.FromBars(6), VolumeFlow.FromLitersPerHour(220), ElectricCurrent.FromAmperes(13.5)),
            ],
            new DataSource("Workshop-class", "pump of the time-trial car")
        );

        VolumeFlow flow = curve.FlowAt(Pressure.FromBars(4.5));
        Pressure rise = curve.RiseAt(VolumeFlow.FromLitersPerHour(250));
        Power heat = curve.ElectricPowerAt(Pressure.FromBars(4));
        #endregion

        Assert.InRange(flow.LitersPerHour, 220, 290);
        Assert.InRange(rise.Bars, 4, 6);
        Assert.Equal(13.5 * 10.5, (double)heat.Watts, 1e-9);
    }

    [Fact]
    public void BetweenVoltages()
    {
        PumpCurve At(double volts, double flowAt2, double flowAt6) =>
            new(
                ElectricPotential.FromVolts(volts),
                [
                    new(Pressure.FromBars(2), VolumeFlow.FromLitersPerHour(flowAt2), ElectricCurrent.FromAmperes(9)),
                    new(Pressure.FromBars(6), VolumeFlow.FromLitersPerHour(flowAt6), ElectricCurrent.FromAmperes(14)),
                ],
                new DataSource("Workshop-class", "pump of the time-trial car")
            );

        PumpCurve at12 = At(12, 300, 160);
        PumpCurve at14 = At(14, 350, 240);

        #region Pump
        var pump = new Pump(
            "in-tank pump",
            [at12, at14],
            StandardFuels.NHeptane,
            new DataSource("Workshop-class", "pump of the time-trial car")
        );

        VolumeFlow flow = pump.CurveAt(ElectricPotential.FromVolts(13)).FlowAt(Pressure.FromBars(4));
        #endregion

        Assert.Equal(262.5, flow.LitersPerHour, 1e-9);
    }
}
