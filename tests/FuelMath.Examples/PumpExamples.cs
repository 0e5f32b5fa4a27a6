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

        VolumeFlow flow = curve.FlowAt(Pressure.FromBars(4.5)); // 275 L/h
        Pressure rise = curve.RiseAt(VolumeFlow.FromLitersPerHour(250)); // 5.25 bar
        Power heat = curve.ElectricPowerAt(Pressure.FromBars(4)); // 141.75 W
        #endregion

        Assert.InRange(flow.LitersPerHour, 220, 290);
        Assert.InRange(rise.Bars, 4, 6);
        Assert.Equal(13.5 * 10.5, (double)heat.Watts, 1e-9);
    }

    [Fact]
    public void BetweenVoltages()
    {
        #region Pump
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

        var pump = new Pump(
            "in-tank pump",
            [at12, at14],
            StandardFuels.NHeptane,
            new DataSource("Workshop-class", "pump of the time-trial car")
        );

        VolumeFlow flow = pump.CurveAt(ElectricPotential.FromVolts(13)).FlowAt(Pressure.FromBars(4)); // 262.5 L/h
        #endregion

        Assert.Equal(262.5, flow.LitersPerHour, 1e-9);
    }

    [Fact]
    public void TiredAndChopped()
    {
        #region PumpChanged
        var workshop = new DataSource("Workshop-class", "pump of the time-trial car");
        PumpCurve At(double volts, double flowAt2, double flowAt6) =>
            new(
                ElectricPotential.FromVolts(volts),
                [
                    new(Pressure.FromBars(2), VolumeFlow.FromLitersPerHour(flowAt2), ElectricCurrent.FromAmperes(9)),
                    new(Pressure.FromBars(6), VolumeFlow.FromLitersPerHour(flowAt6), ElectricCurrent.FromAmperes(14)),
                ],
                workshop
            );
        var pump = new Pump("in-tank pump", [At(9, 220, 60), At(14, 350, 240)], StandardFuels.NHeptane, workshop);

        Pump tired = pump.Worn(
            "the same after two seasons",
            new PumpWear(Ratio.FromPercent(92), VolumeFlow.FromLitersPerHour(6), Pressure.FromBars(1))
        );
        Pump cruising = pump.WithDrive("the same at part duty", PumpDrive.ByDuty(Ratio.FromPercent(75)));

        VolumeFlow worn = tired.CurveAt(ElectricPotential.FromVolts(14)).FlowAt(Pressure.FromBars(4)); // 247.4 L/h
        PumpCurve chopped = cruising.CurveAt(ElectricPotential.FromVolts(14));
        VolumeFlow less = chopped.FlowAt(Pressure.FromBars(4)); // 186.5 L/h
        ElectricCurrent drawn = chopped.CurrentAt(Pressure.FromBars(4)); // 8.625 A

        PumpCurve two = PumpCombination.InParallel([At(14, 350, 240), At(14, 300, 180)], workshop);
        VolumeFlow both = two.FlowAt(Pressure.FromBars(4)); // 535 L/h
        #endregion

        // 92 % of 295 less 4 x 6 L/h; the motor sees 10.5 V, between 140 L/h at 9 V and 295 L/h at 14 V; 75 % of 11.5 A.
        Assert.Equal((0.92 * 295) - 24, worn.LitersPerHour, 1e-6);
        Assert.Equal(140 + (155 * 1.5 / 5), less.LitersPerHour, 1e-6);
        Assert.Equal(0.75 * 11.5, drawn.Amperes, 1e-6);
        Assert.Equal(295 + 240, both.LitersPerHour, 1e-6);
    }

    [Fact]
    public void WayBackAndSuctionSide()
    {
        #region Relief
        var workshop = new DataSource("Workshop-class", "pump module of the time-trial car");
        var relief = new ReliefValve(
            "relief of the pump",
            Pressure.FromBars(7.5),
            Pressure.FromBars(1.2),
            VolumeFlow.FromLitersPerHour(250),
            Density.FromKilogramsPerCubicMeter(745),
            workshop
        );
        VolumeFlow back = relief.FlowAt(Pressure.FromBars(8), Density.FromKilogramsPerCubicMeter(745)); // 161 L/h

        var inlet = new PumpInlet(
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(45),
            new AbsolutePressure(Pressure.FromKilopascals(95)),
            Length.FromMeters(-0.15),
            Pressure.FromKilopascals(3)
        );
        Length head = inlet.WithLoss(Pressure.FromKilopascals(8)).Margin.NetPositiveSuctionHead; // 10.4 m
        #endregion

        Assert.Equal(250 * Math.Sqrt(0.5 / 1.2), back.LitersPerHour, 1e-6);
        Assert.InRange(head.Meters, 8, 12);
    }
}
