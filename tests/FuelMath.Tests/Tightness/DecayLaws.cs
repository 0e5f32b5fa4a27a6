using FsCheck.Xunit;
using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Simulate a decay, then infer the leak; and what must hold of every closed line.</summary>
[Properties(Arbitrary = [typeof(TightnessArbitraries)])]
public sealed class DecayLaws
{
    private static readonly DecayTest.Uncertainty Exact = new(
        default,
        default,
        default,
        new ClosedVolume.Uncertainty(default, default, default, default, default, default)
    );

    /// <summary>What leaks in, comes out.</summary>
    [Property]
    public void Rate_OfASimulatedLeak_IsThatLeak(ClosedLine line)
    {
        LeakPath leak = LeakPath.Constant(line.LeakRate);
        Duration time = HalfWay(line, leak);
        GaugePressure after = leak.PressureAfter(line.Volume, line.Start, time);

        DecayTest test = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(time.Minutes, after),
            Exact
        );

        // The pressure is found to the last bit of some 5e5 Pa of which 1e5 Pa are lost: 1e-15 of it, and as much for time.
        Close.Within(1e-11, line.LeakRate.CubicMillimetersPerSecond, test.Rate.CubicMillimetersPerSecond);
    }

    /// <summary>Leaks that depend on pressure lose between two readings what the closed volume gives back.</summary>
    [Property]
    public void LeakedVolume_OfAHole_IsWhatWasReleased(ClosedLine line)
    {
        LeakPath leak = LeakPath.Hole(line.LeakRate, line.Start);
        Duration time = HalfWay(line, leak);
        GaugePressure after = leak.PressureAfter(line.Volume, line.Start, time);

        DecayTest test = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(time.Minutes, after),
            Exact
        );

        Close.Within(
            1e-11,
            line.Volume.ReleasedBetween(line.Start, after).CubicCentimeters,
            test.LeakedVolume.CubicCentimeters
        );

        // Its mean lies between the flows at both ends.
        Assert.InRange(
            test.Rate.CubicMillimetersPerSecond,
            leak.FlowAt(after).CubicMillimetersPerSecond * (1 - 1e-9),
            leak.FlowAt(line.Start).CubicMillimetersPerSecond * (1 + 1e-9)
        );
    }

    [Property]
    public void PressureAfter_TheTimeToFall_IsThatPressure(ClosedLine line)
    {
        var target = new GaugePressure(line.Start.AboveAmbient * 0.37);
        foreach (
            LeakPath leak in new[]
            {
                LeakPath.Constant(line.LeakRate),
                LeakPath.Narrow(line.LeakRate, line.Start),
                LeakPath.Hole(line.LeakRate, line.Start),
            }
        )
        {
            Duration time = leak.TimeToFall(line.Volume, line.Start, target);

            Close.Within(
                1e-9,
                target.AboveAmbient.Bars,
                leak.PressureAfter(line.Volume, line.Start, time).AboveAmbient.Bars
            );
        }
    }

    /// <summary>At one flow at the start, a hole slows down less than a narrow way, and a constant leak not at all.</summary>
    [Property]
    public void TimeToFall_ByKind_IsInOrder(ClosedLine line)
    {
        var target = new GaugePressure(line.Start.AboveAmbient * 0.5);
        double Seconds(LeakPath leak) => leak.TimeToFall(line.Volume, line.Start, target).Seconds;

        double constant = Seconds(LeakPath.Constant(line.LeakRate));
        double hole = Seconds(LeakPath.Hole(line.LeakRate, line.Start));
        double narrow = Seconds(LeakPath.Narrow(line.LeakRate, line.Start));

        Assert.True(constant < hole && hole < narrow);
    }

    /// <summary>More fuel, softer walls or more gas make the same leak slower to see.</summary>
    [Property]
    public void TimeToFall_MoreCompliance_IsLonger(ClosedLine line)
    {
        var target = new GaugePressure(line.Start.AboveAmbient * 0.5);
        LeakPath leak = LeakPath.Constant(line.LeakRate);
        double Seconds(ClosedLine l) => leak.TimeToFall(l.Volume, l.Start, target).Seconds;

        double now = Seconds(line);
        Assert.True(Seconds(line with { Liters = line.Liters + 1 }) > now);
        Assert.True(Seconds(line with { Swelling = line.Swelling + 1 }) > now);
        Assert.True(Seconds(line with { Gas = line.Gas + 0.1 }) > now);
    }

    /// <summary>A line that only warms or cools shows no leak once the temperature is put in.</summary>
    [Property]
    public void Rate_OfAWarmedLine_IsNothing(ClosedLine line, byte steps)
    {
        double kelvins = (steps - 100) / 1000.0;
        Pressure rise = line.Volume.PressureRiseFor(line.Start, TemperatureDelta.FromKelvins(kelvins));

        DecayTest test = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(10, line.Start + rise, 20 + kelvins),
            Exact
        );

        // Against what the expansion alone would be, some 1e-4 of 3 L.
        Close.WithinOf(line.Liters * 1e3, 1e-11, 0, test.LeakedVolume.CubicCentimeters);
    }

    /// <summary>Warming lifts the pressure, and more gas makes it milder.</summary>
    [Property]
    public void PressureRise_WithGas_IsMilder(ClosedLine line)
    {
        var warming = TemperatureDelta.FromKelvins(0.1);
        double rise = line.Volume.PressureRiseFor(line.Start, warming).Bars;
        double milder = (line with { Gas = line.Gas + 5 }).Volume.PressureRiseFor(line.Start, warming).Bars;

        Assert.True(rise > 0);
        Assert.True(milder > 0 && milder < rise);
    }

    /// <summary>Let some fuel out, read the pressure, and know the gas.</summary>
    [Property]
    public void WithGasFromBleed_OfASimulatedBleed_FindsTheGas(ClosedLine line)
    {
        var after = new GaugePressure(line.Start.AboveAmbient * 0.6);
        Volume drawn = line.Volume.ReleasedBetween(line.Start, after);
        ClosedVolume unknown = (line with { Gas = 0 }).Volume;

        // Without any gas, rounding may ask for a little less than none: only lines with gas are asked.
        if (line.Gas == 0)
        {
            return;
        }

        // What fuel and walls give back is at most some hundred times the gas's share.
        Close.Within(1e-10, line.Gas, unknown.WithGasFromBleed(drawn, line.Start, after).GasAtAmbient.CubicCentimeters);
    }

    [Property]
    public void PressureAfterLosing_WhatIsReleased_IsThePressure(ClosedLine line)
    {
        var after = new GaugePressure(line.Start.AboveAmbient * 0.3);

        Close.Within(
            1e-9,
            after.AboveAmbient.Bars,
            line.Volume.PressureAfterLosing(
                line.Start,
                line.Volume.ReleasedBetween(line.Start, after)
            ).AboveAmbient.Bars
        );
    }

    /// <summary>By the end of the wait the gauge has moved by its steps; with the hiding drift it has not.</summary>
    [Property]
    public void DecayWait_SeesTheLeakUnlessItDrifts(ClosedLine line)
    {
        Pressure step = Pressure.FromKilopascals(2);
        LeakPath leak = LeakPath.Constant(line.LeakRate);

        DecayTest.Wait wait = DecayTest.Wait.ToSee(line.Volume, line.Start, leak, step, 3);

        Close.WithinOf(1, 1e-9, line.Bars - 0.06, wait.Reading.AboveAmbient.Bars);
        Close.WithinOf(
            1,
            1e-9,
            wait.Reading.AboveAmbient.Bars,
            leak.PressureAfter(line.Volume, line.Start, wait.Time).AboveAmbient.Bars
        );
        DecayTest hidden = new(
            line.Volume,
            ClosedLine.Reading(0, line.Start),
            ClosedLine.Reading(wait.Time.Minutes, line.Start, 20 + wait.HidingDrift.Kelvins),
            Exact
        );
        Close.Within(1e-6, line.LeakRate.CubicMillimetersPerSecond, hidden.Rate.CubicMillimetersPerSecond);
    }

    /// <summary>Twice as uncertain in all is twice as uncertain, and the parts add up in squares.</summary>
    [Property]
    public void StandardUncertainty_IsTheRootOfTheSumOfSquares(ClosedLine line)
    {
        DecayTest.Uncertainty Of(double scale) =>
            new(
                Pressure.FromKilopascals(0.6 * scale),
                TemperatureDelta.FromKelvins(0.05 * scale),
                Duration.FromSeconds(2 * scale),
                new ClosedVolume.Uncertainty(
                    Ratio.FromPercent(5 * scale),
                    Ratio.FromPercent(15 * scale),
                    Ratio.FromPercent(30 * scale),
                    Ratio.FromPercent(4 * scale),
                    Ratio.FromPercent(50 * scale),
                    Volume.FromCubicCentimeters(0.2 * scale)
                )
            );
        DecayTest Test(double scale) =>
            new(
                line.Volume,
                ClosedLine.Reading(0, line.Start),
                ClosedLine.Reading(10, new GaugePressure(line.Start.AboveAmbient * 0.8), 20.1),
                Of(scale)
            );

        DecayTest one = Test(1);
        Close.Within(
            1e-12,
            2 * one.StandardUncertainty.CubicMillimetersPerSecond,
            Test(2).StandardUncertainty.CubicMillimetersPerSecond
        );
        Close.Within(1e-12, 1, one.Contributions.Sum(c => c.Share.DecimalFractions));
        Close.Within(
            1e-12,
            Math.Pow(one.StandardUncertainty.CubicMillimetersPerSecond, 2),
            one.Contributions.Sum(c => Math.Pow(c.Uncertainty.CubicMillimetersPerSecond, 2))
        );
    }

    private static Duration HalfWay(ClosedLine line, LeakPath leak) =>
        leak.TimeToFall(line.Volume, line.Start, new GaugePressure(line.Start.AboveAmbient * 0.75));
}
