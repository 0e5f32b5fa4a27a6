using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Pumps and their switches at the limits of what they may be, and just beside them.</summary>
public sealed class PumpEdgeTests
{
    /// <summary>At its limit a pump stays as it is: it joins or leaves beyond it.</summary>
    [Theory]
    [InlineData(true, true, 400, true)]
    [InlineData(true, true, 400.001, false)]
    [InlineData(true, false, 300, true)]
    [InlineData(true, false, 299.999, false)]
    [InlineData(false, true, 300, true)]
    [InlineData(false, true, 299.999, false)]
    [InlineData(false, false, 400, true)]
    [InlineData(false, false, 400.001, false)]
    public void Agrees_AtItsLimits_StaysAsItIs(bool below, bool running, double kilopascals, bool stays)
    {
        // Below 300 one joins, and leaves above 400; above 400 the other joins, and leaves below 300.
        PumpSwitch by = below
            ? PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(400), true)
            : PumpSwitch.PressureAbove("rail", Gauge(400), Gauge(300), true);

        Assert.Equal(stays, by.Agrees(running, Gauge(kilopascals).Si));
    }

    /// <summary>It may leave where it joins, and not on the wrong side of that: the limit is a least or a greatest one.</summary>
    [Fact]
    public void Switch_ThatLeavesWhereItJoins_IsTaken()
    {
        Assert.True(PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(300), true).WasRunning);
        Assert.False(PumpSwitch.ManifoldAbove(Gauge(300), Gauge(300), false).WasRunning);
        Assert.Equal("a", PumpSwitch.FlowAbove("a", LitersPerHour(30), LitersPerHour(30), false).Watched);

        Refusal below = Refused("leaveAbove", () => PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(299), true));
        Assert.Equal((300, null, 299), (below.Minimum, below.Maximum, below.Value));
        Refusal above = Refused("leaveBelow", () => PumpSwitch.PressureAbove("rail", Gauge(300), Gauge(301), true));
        Assert.Equal((null, 300, 301), (above.Minimum, above.Maximum, above.Value));
        Refusal flow = Refused(
            "leaveBelow",
            () => PumpSwitch.TotalDrawAbove(LitersPerHour(30), LitersPerHour(31), true)
        );
        Assert.Equal(
            (null, 30.0, 31.0),
            (flow.Minimum, Math.Round(flow.Maximum!.Value, 9), Math.Round(flow.Value!.Value, 9))
        );
    }

    [Fact]
    public void Thresholds_SayWhichSideJoins()
    {
        Assert.Equal(
            "it joins below 300 kPa gauge and leaves above 400 kPa gauge",
            PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(400), true).Thresholds
        );
        Assert.Equal(
            "it joins above 100 L/h and leaves below 50 L/h",
            PumpSwitch.FlowAbove("a", LitersPerHour(100), LitersPerHour(50), true).Thresholds
        );
    }

    /// <summary>A power law needs a point with some flow, below its shutoff; by two points the second one further and lower.</summary>
    [Theory]
    [InlineData(0, 300, 150, 100, "middle", RefusalCode.OutOfRange)]
    [InlineData(100, 500, 150, 100, "middle", RefusalCode.OutOfRange)]
    [InlineData(100, 501, 150, 100, "middle", RefusalCode.OutOfRange)]
    [InlineData(100, 300, 150, 500, "end", RefusalCode.OutOfRange)]
    [InlineData(100, 300, 0, 100, "end", RefusalCode.OutOfRange)]
    [InlineData(100, 300, 100, 200, "end", RefusalCode.MustFall)]
    [InlineData(100, 300, 150, 300, "end", RefusalCode.MustFall)]
    [InlineData(100, 300, 90, 200, "end", RefusalCode.MustFall)]
    public void PowerThrough_PointsAtTheirLimits_AreRefused(
        double flow,
        double rise,
        double endFlow,
        double endRise,
        string paramName,
        RefusalCode code
    )
    {
        Refusal refusal = Refused(
            paramName,
            () => PlainPump.PowerThrough(Kilopascals(500), Point(flow, rise), Point(endFlow, endRise))
        );

        Assert.Equal(code, refusal.Code);
    }

    /// <summary>Through both points: the fall is 200 kPa at 100 L/h, and 400 at 141.4, so that it goes with the square.</summary>
    [Fact]
    public void PowerThrough_GoesThroughBoth()
    {
        PlainPump pump = PlainPump.PowerThrough(Kilopascals(500), Point(100, 300), Point(100 * Math.Sqrt(2), 100));

        Close.Within(1e-12, 2, pump.Given.Exponent.DecimalFractions);
        var law = (PumpPowerSettings)pump.Law;
        Close.Within(1e-12, 500e3, law.Shutoff);
        Close.Within(1e-12, 200e3 / Math.Pow(100 / 3.6e6, 2), law.Factor);
        Close.Within(1e-12, 100 * Math.Sqrt(1.25) / 3.6e6, law.Half);

        // At half the speed: a quarter of the rise at half the flow.
        var slow = (PumpPowerSettings)pump.AtSpeed(Ratio.FromDecimalFractions(0.5)).Law;
        Close.Within(1e-12, 125e3, slow.Shutoff);
        Close.Within(1e-12, 50e3 / Math.Pow(50 / 3.6e6, 2), slow.Factor);
    }

    /// <summary>A speed from a hundredth to a hundred times, an exponent from 0.2 to 20: both ends are allowed.</summary>
    [Theory]
    [InlineData(0.01, 0.2, true)]
    [InlineData(100, 20, true)]
    [InlineData(0.00999, 0.199, false)]
    [InlineData(100.1, 20.1, false)]
    public void SpeedAndExponent_HaveTheirEnds(double speed, double exponent, bool taken)
    {
        PlainPump Power() => PlainPump.Power(Kilopascals(500), Point(100, 300), Ratio.FromDecimalFractions(exponent));
        PlainPump Speed() => Falling.AtSpeed(Ratio.FromDecimalFractions(speed));

        if (taken)
        {
            Assert.Equal((exponent, speed), (Power().Given.Exponent.DecimalFractions, Speed().Speed.DecimalFractions));
        }
        else
        {
            Assert.Equal(RefusalCode.OutOfRange, Refused(nameof(exponent), Power).Code);
            Assert.Equal(RefusalCode.OutOfRange, Refused(nameof(speed), Speed).Code);
        }
    }

    /// <summary>A curve that is level at its beginning does not fall from there, so that it must begin at no flow.</summary>
    [Fact]
    public void Straight_LevelAtItsBeginning_MustBeginAtNoFlow()
    {
        Assert.Equal(
            RefusalCode.CurveBeginsLate,
            Refused("points", () => Straight(OutsideRange.Refuse, (20, 500), (50, 500), (100, 400))).Code
        );
        Assert.True(Straight(OutsideRange.Refuse, (0, 500), (50, 500), (100, 400)).HasHump);
        Assert.True(Straight(OutsideRange.Extend, (20, 500), (50, 500), (100, 400)).HasHump);
        Assert.False(Straight(OutsideRange.Refuse, (20, 500), (50, 499), (100, 400)).HasHump);
        Assert.Equal(
            RefusalCode.MustFall,
            Refused("points", () => Straight(OutsideRange.Extend, (0, 500), (50, 400), (100, 400))).Code
        );
    }

    [Fact]
    public void Given_SaysHowItsCurveIsDrawn()
    {
        Assert.True(PlainPump.Smooth([Point(0, 500), Point(100, 300)], OutsideRange.Extend).Given.IsSmooth);
        Assert.False(Falling.Given.IsSmooth);
        Assert.True(PlainPump.Power(Kilopascals(500), Point(100, 300), Ratio.FromDecimalFractions(2)).Given.IsSmooth);
        Assert.Equal(1, Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100)).InParallel(1).CountInParallel);
        Assert.Equal(
            (2, 3),
            (Falling.InParallel(2).InSeries(3).CountInParallel, Falling.InParallel(2).InSeries(3).CountInSeries)
        );
    }

    /// <summary>
    /// Against as much as its shutoff a pump is dead-headed, against more than the error of a pressure stalled: 1 mPa and a
    /// billionth of 500 kPa.
    /// </summary>
    [Theory]
    [InlineData(0, Network.LineCondition.DeadHeaded)]
    [InlineData(1.3e-3, Network.LineCondition.DeadHeaded)]
    [InlineData(1.7e-3, Network.LineCondition.Stalled)]
    [InlineData(-5, Network.LineCondition.DeadHeaded)]
    public void Condition_AtNoFlow_TellsDeadHeadedFromStalled(double more, Network.LineCondition expected)
    {
        PumpTableLaw<Real> law = default;
        law.Load(Falling.Law);

        Real found = PumpTableLaw<Real>.Condition(ref law, new(1e-9), new(0), new(500e3 + more), new(1e-9));
        Real running = PumpTableLaw<Real>.Condition(ref law, new(1.1e-9), new(0), new(500e3 + more), new(1e-9));

        Assert.Equal(expected, (Network.LineCondition)(int)found.Value);
        Assert.Equal(Network.LineCondition.Running, (Network.LineCondition)(int)running.Value);
    }

    /// <summary>A pump that is given another curve starts at the scale of that.</summary>
    [Fact]
    public void Set_AnotherCurve_HasItsScale()
    {
        PumpTableLaw<Real> law = default;
        law.Load(Falling.Law);
        double[] numbers = new double[Falling.Law.SettingCount];
        Straight(OutsideRange.Extend, (0, 800), (360, 600)).Law.Write(numbers);

        Real flow = PumpTableLaw<Real>.Set(ref law, [.. numbers.Select(n => new Real(n))], new(3e-5));

        Assert.Equal(3e-5, flow.Value);
        Close.Within(1e-12, 0.5e-4, law.FirstFlow.Value);
        Close.Within(1e-12, 800e3 / 1e-4, law.UsualSlope.Value);
        Close.Within(1e-12, 700e3, law.RiseAt(Dual<Real>.Variable(new(0.5e-4))).Number.Value);
    }

    /// <summary>Pumps of a set are numbered from one, in a row with places between; the set's flow and rise are theirs.</summary>
    [Fact]
    public void Set_OfPumps_NumbersThem()
    {
        PumpSet row = PumpSet.InSeries("lift", "tank", "out", Length.FromMeters(2), [Falling, Falling, Falling]);
        PumpSet abreast = PumpSet.InParallel("bank", "tank", "out", [Falling, Falling]);

        Assert.Equal(["lift 1", "lift 2", "lift 3"], row.Lines.Select(l => l.Name));
        Assert.Equal(["tank", "lift 1-2", "lift 2-3"], row.Lines.Select(l => l.From));
        Assert.Equal(["lift 1-2", "lift 2-3", "out"], row.Lines.Select(l => l.To));
        Assert.Equal(["lift 1-2", "lift 2-3"], row.Nodes.Select(n => n.Name));
        Assert.All(row.Nodes, n => Assert.Equal(2, n.Elevation.Meters));
        Assert.Equal(["bank 1", "bank 2"], abreast.Lines.Select(l => l.Name));
        Assert.All(abreast.Lines, l => Assert.Equal(("tank", "out"), (l.From, l.To)));
        Assert.Empty(abreast.Nodes);
        Assert.Equal(RefusalCode.Blank, Refused("name", () => PumpSet.InParallel(" ", "a", "b", [Falling])).Code);
        Assert.Equal(RefusalCode.Blank, Refused("name", () => PumpSet.InSeries("", "a", "b", default, [Falling])).Code);
        Assert.Throws<ArgumentOutOfRangeException>(() => PumpSet.InParallel("x", "a", "b", []));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PumpSet.InSeries("x", "a", "b", default, Enumerable.Repeat(Falling, 17))
        );
        Assert.Equal(16, PumpSet.InParallel("x", "a", "b", Enumerable.Repeat(Falling, 16)).Lines.Length);

        // Three in a row: 1500 - 300 u = 300 u; two abreast: 500 - 50 u = 75 u.
        Rises(row, 300, 250, 750);
        Rises(abreast, 75, 400, 300);

        static void Rises(PumpSet set, double load, double flow, double rise)
        {
            NetworkState state = new Network(
                [Fixed("tank", 0), Junction("out"), .. set.Nodes.Select(n => Junction(n.Name))],
                [.. set.Lines, Linear("load", "out", "tank", load).In(Petrol)]
            ).Solve(Petrol);
            Close.Within(1e-8, flow, set.FlowIn(state).LitersPerHour);
            Close.Within(1e-8, rise, set.RiseIn(state).Kilopascals);
        }
    }

    [Fact]
    public void Regulator_AtTheLimitsOfItsValues_IsTaken()
    {
        PlainRegulator regulator = PlainRegulator.Bypass(
            Kilopascals(300),
            Gauge(0),
            Kilopascals(10),
            LitersPerHour(100),
            Petrol.Density
        );

        Assert.Equal(0, regulator.WithSlope(Pressure.Zero, LitersPerHour(1)).SlopePressureDifference.Kilopascals);
        Assert.Equal(1, regulator.WithReturnInfluence(Ratio.FromPercent(100)).SeatOverNetDiaphragm.DecimalFractions);
        Assert.Equal(
            RefusalCode.OutOfRange,
            Refused("flow", () => regulator.WithSlope(Kilopascals(1), VolumeFlow.Zero)).Code
        );
        Assert.Equal(
            RefusalCode.OutOfRange,
            Refused(
                "reference",
                () =>
                    PlainRegulator.Bypass(
                        Kilopascals(300),
                        Gauge(-102),
                        Kilopascals(10),
                        LitersPerHour(100),
                        Petrol.Density
                    )
            ).Code
        );
    }

    private static NetworkConditions Petrol { get; } =
        new(Density.FromKilogramsPerCubicMeter(740), DynamicViscosity.FromPascalSeconds(3.7e-4));

    private static PlainPump Falling => Straight(OutsideRange.Extend, (0, 500), (100, 400));

    private static Refusal Refused(string paramName, Func<object?> act)
    {
        var refusal = Assert.ThrowsAny<ArgumentException>(act);
        Assert.Equal(paramName, refusal.ParamName);
        return Refusal.Of(refusal)!;
    }
}
