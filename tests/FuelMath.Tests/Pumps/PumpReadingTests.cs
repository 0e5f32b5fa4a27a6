using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

/// <summary>The room that a solver reads pumps in says what the pump's own curves say, to the last bit.</summary>
[Properties(Arbitrary = [typeof(PumpArbitraries)])]
public sealed class PumpReadingTests
{
    /// <summary>Up and down between curves of unlike numbers of points, at measured voltages too, in the same room.</summary>
    [Property]
    public void Set_VoltageAfterVoltage_ReadsWhatTheCurvesSay(PumpKnots knots, Along first, Along second, Along rise)
    {
        Pump pump = Pump(knots);
        var reading = new PumpReading(pump);
        foreach (double volts in new[] { 13, first.Between(9, 14), second.Between(9, 14), 9, first.Between(9, 12), 12 })
        {
            PumpCurve curve = pump.CurveAt(ElectricPotential.FromVolts(volts));
            reading.Set(volts);

            Assert.Equal(curve.RiseOverFlow.Pieces.ToArray(), reading.RiseOverFlow.ToArray());
            Assert.Equal(curve.EstimateBasis, reading.EstimateBasis);
            double at = rise.Between(curve.LeastPressureRise.Pascals, curve.GreatestPressureRise.Pascals);
            foreach (
                double pascals in new[] { at, curve.LeastPressureRise.Pascals, curve.GreatestPressureRise.Pascals }
            )
            {
                Assert.Equal(curve.CurrentAt(Pressure.FromPascals(pascals)).Amperes, reading.CurrentAt(pascals));
            }
        }
    }

    /// <summary>
    /// Toward a measured voltage the curve becomes the measured one, so that nothing jumps where a voltage passes it.
    /// </summary>
    [Property]
    public void Set_CloserAndCloserToAMeasuredVoltage_BecomesTheMeasuredCurve(PumpKnots knots, Along along)
    {
        Pump pump = Pump(knots);
        PumpCurve measured = pump.CurveAt(ElectricPotential.FromVolts(12));
        var reading = new PumpReading(pump);
        foreach (double apart in new[] { -1e-7, 1e-7 })
        {
            reading.Set(12 + apart);
            PumpCurve between = pump.CurveAt(ElectricPotential.FromVolts(12 + apart));
            double rise = along.Between(
                between.LeastPressureRise.Pascals,
                Math.Min(between.GreatestPressureRise.Pascals, measured.GreatestPressureRise.Pascals)
            );

            Close.Within(1e-5, measured.CurrentAt(Pressure.FromPascals(rise)).Amperes, reading.CurrentAt(rise));
            Assert.InRange(
                between.FlowAt(Pressure.FromPascals(rise)) / measured.GreatestFlow,
                (measured.FlowAt(Pressure.FromPascals(rise)) / measured.GreatestFlow) - 1e-5,
                (measured.FlowAt(Pressure.FromPascals(rise)) / measured.GreatestFlow) + 1e-5
            );
        }
    }

    /// <summary>
    /// Both curves end at no flow, at 720 kPa and 820: between 12 V and 14 the pressure at no flow is linear in voltage, the
    /// current there too, and near a measured voltage the end is the measured one.
    /// </summary>
    [Theory]
    [InlineData(12.0001, 720.005, 9.00015)]
    [InlineData(13, 770, 10.5)]
    [InlineData(13.9999, 819.995, 11.99985)]
    public void Set_BetweenCurvesThatEndAtNoFlow_EndsBetweenTheirEnds(double volts, double kilopascals, double amperes)
    {
        Pump pump = new(
            "to the end",
            [
                ToNoFlow(12, [0, 400, 720], [200, 120, 0], 9),
                ToNoFlow(14, [0, 500, 700, 780, 820], [240, 140, 80, 30, 0], 12),
            ],
            StandardFuels.NHeptane,
            PumpKnots.Source
        );
        var reading = new PumpReading(pump);
        reading.Set(volts);

        PumpCurve curve = pump.CurveAt(ElectricPotential.FromVolts(volts));
        Assert.Equal(0, curve.LeastFlow.LitersPerHour, 1e-9);
        Assert.Equal(kilopascals, curve.GreatestPressureRise.Kilopascals, 1e-9);
        Assert.Equal(kilopascals * 1e3, reading.RiseOverFlow[1].C0, 1e-6);
        Assert.Equal(amperes, reading.CurrentAt(kilopascals * 1e3), 1e-9);
        reading.JudgeRise(kilopascals * 1e3);
        for (double litersPerHour = 0; litersPerHour < 190; litersPerHour++)
        {
            Assert.True(
                curve.RiseAt(VolumeFlow.FromLitersPerHour(litersPerHour))
                    > curve.RiseAt(VolumeFlow.FromLitersPerHour(litersPerHour + 1))
            );
        }

        static PumpCurve ToNoFlow(double volts, double[] kilopascals, double[] litersPerHour, double last) =>
            new(
                ElectricPotential.FromVolts(volts),
                kilopascals.Zip(
                    litersPerHour,
                    (p, q) =>
                        new PumpCurve.Point(
                            Pressure.FromKilopascals(p),
                            VolumeFlow.FromLitersPerHour(q),
                            ElectricCurrent.FromAmperes(5 + ((last - 5) * p / kilopascals[^1]))
                        )
                ),
                PumpKnots.Source
            );
    }

    /// <summary>Between two curves more flow goes against less pressure, everywhere.</summary>
    [Property]
    public void Set_BetweenVoltages_FallsAlongTheWholeCurve(PumpKnots knots, Along along)
    {
        var reading = new PumpReading(Pump(knots));
        reading.Set(along.Between(9, 14));

        Piece[] pieces = reading.RiseOverFlow.ToArray();
        for (int i = 1; i < pieces.Length - 1; i++)
        {
            double end = pieces[i + 1].X0;
            for (int k = 0; k < 20; k++)
            {
                (double from, double to) = (At(k), At(k + 1));
                Assert.True(pieces[i].At(to) <= pieces[i].At(from) + (1e-9 * pieces[1].C0));

                double At(int step) => pieces[i].X0 + ((end - pieces[i].X0) * step / 20);
            }
        }
    }

    [Property]
    public void Set_ADrivenPump_ReadsWhatItsCurvesSay(PumpKnots knots, Along along)
    {
        Pump pump = Pump(knots).WithDrive("chopped", PumpDrive.ByDuty(Ratio.FromPercent(60)));
        var reading = new PumpReading(pump);
        double volts = along.Between(15, 23);
        PumpCurve curve = pump.CurveAt(ElectricPotential.FromVolts(volts));
        reading.Set(volts);

        Assert.Equal(curve.RiseOverFlow.Pieces.ToArray(), reading.RiseOverFlow.ToArray());
        Assert.NotNull(reading.EstimateBasis);
        Assert.Equal(
            curve.CurrentAt(curve.LeastPressureRise).Amperes,
            reading.CurrentAt(curve.LeastPressureRise.Pascals)
        );
    }

    [Fact]
    public void Set_TheSamePumpAgain_AllocatesNothing()
    {
        var reading = new PumpReading(Pump(new PumpKnots([1, 3, 5], [300, 200, 120], [5, 7, 9])));
        reading.Set(10.5);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            reading.Set(10 + (i / 100.0));
            _ = reading.CurrentAt(2e5);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void JudgeVoltage_OutsideTheVoltages_IsRefusedInWords()
    {
        var reading = new PumpReading(Pump(new PumpKnots([1, 3, 5], [300, 200, 120], [5, 7, 9])));

        OutsideTableException refusal = Assert.Throws<OutsideTableException>(() => reading.JudgeVoltage(14.1));
        Assert.Equal((9, 14), (refusal.Minimum, refusal.Maximum));
    }

    [Fact]
    public void JudgeRise_OutsideThePoints_IsRefusedInWords()
    {
        var reading = new PumpReading(Pump(new PumpKnots([1, 3, 5], [300, 200, 120], [5, 7, 9])));
        reading.Set(11);

        OutsideTableException refusal = Assert.Throws<OutsideTableException>(() => reading.JudgeRise(5.1e5));
        Words.Says("'reading', 11 V, 100 kPa, 500 kPa, 510 kPa", refusal);
    }

    /// <summary>A guess of a solver may lie outside: the ends are held.</summary>
    [Theory]
    [InlineData(14.1, 14)]
    [InlineData(3, 9)]
    public void Set_OutsideTheVoltages_HoldsTheEnd(double volts, double end)
    {
        Pump pump = Pump(new PumpKnots([1, 3, 5], [300, 200, 120], [5, 7, 9]));
        var outside = new PumpReading(pump);
        var atEnd = new PumpReading(pump);

        outside.Set(volts);
        atEnd.Set(end);

        Assert.Equal(atEnd.RiseOverFlow.ToArray(), outside.RiseOverFlow.ToArray());
        Assert.Equal(atEnd.CurrentAt(2e5), outside.CurrentAt(2e5));
    }

    [Theory]
    [InlineData(9)]
    [InlineData(11)]
    public void CurrentAt_OutsideThePoints_HoldsTheEnd(double volts)
    {
        var reading = new PumpReading(Pump(new PumpKnots([1, 3, 5], [300, 200, 120], [5, 7, 9])));
        reading.Set(volts);

        Assert.Equal(reading.CurrentAt(5e5), reading.CurrentAt(9e5));
        Assert.Equal(reading.CurrentAt(1e5), reading.CurrentAt(-3e5));
    }

    /// <summary>Three curves, the last with a point less.</summary>
    private static Pump Pump(PumpKnots knots)
    {
        PumpCurve last = knots.ToCurve(14, 1, 1.4);
        return new(
            "reading",
            [
                knots.ToCurve(9, 0.4, 0.8),
                knots.ToCurve(12, 0.8, 1.1),
                last.Points.Length > 2
                    ? new PumpCurve(last.Voltage, last.Points.RemoveAt(last.Points.Length - 1), last.Source)
                    : last,
            ],
            StandardFuels.NHeptane,
            PumpKnots.Source
        );
    }
}
