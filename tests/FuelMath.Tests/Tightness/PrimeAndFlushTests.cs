using FsCheck.Xunit;
using FuelMath.ShopTests;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

[Properties(Arbitrary = [typeof(TightnessArbitraries)])]
public sealed class PrimeAndFlushTests
{
    // 200 L at 5 L/min: e-fold after 40 min; 7.36 of 20 kg are left (a mixing problem of textbooks).
    [Fact]
    [Trait("Source", "Boyce-DiPrima-2012")]
    public void ResidueAfter_OneExchange_IsThePrintedShare() =>
        Assert.Equal(
            7.36 / 20,
            Flush.ResidueAfter(Volume.FromLiters(200), Volume.FromLiters(5 * 40)).DecimalFractions,
            3e-4
        );

    [Fact]
    [Trait("Source", "Boyce-DiPrima-2012")]
    public void Flush_ToAHalf_TakesThePrintedTime() =>
        Assert.Equal(
            34.66,
            Flush
                .Of(Volume.FromLiters(100), Ratio.FromPercent(50), VolumeFlow.FromLitersPerMinute(2))
                .MixedTime.Minutes,
            5e-3
        );

    [Fact]
    public void Flush_PlugFlow_IsOneVolume()
    {
        Flush flush = Flush.Of(Volume.FromLiters(0.6), Ratio.FromPercent(1), VolumeFlow.FromLitersPerHour(180));

        Close.Within(1e-12, 12, flush.LeastTime.Seconds);
        Close.Within(1e-12, 0.6, flush.LeastVolume.Liters);
        Close.Within(1e-12, 0.6 * Math.Log(100), flush.MixedVolume.Liters);
        Close.Within(1e-12, 0.01, Flush.ResidueAfter(Volume.FromLiters(0.6), flush.MixedVolume).DecimalFractions);
    }

    /// <summary>The true time of a pump whose flow falls evenly with pressure lies between the bounds.</summary>
    [Property]
    public void PrimeTime_OfAFallingPump_LiesBetweenItsBounds(ClosedLine line)
    {
        VolumeFlow free = VolumeFlow.FromLitersPerHour(200);
        VolumeFlow held = VolumeFlow.FromLitersPerHour(120);
        PrimeTime prime = PrimeTime.Of(Volume.FromLiters(0.4), line.Volume, line.Start, free, held);
        double seconds = 0;
        const int slices = 400;
        for (int i = 0; i < slices; i++)
        {
            var low = new GaugePressure(line.Start.AboveAmbient * (i / (double)slices));
            var high = new GaugePressure(line.Start.AboveAmbient * ((i + 1) / (double)slices));
            double flow = free.CubicMetersPerSecond + ((held - free).CubicMetersPerSecond * (i + 0.5) / slices);
            seconds += line.Volume.ReleasedBetween(high, low).CubicMeters / flow;
        }

        Close.Within(1e-12, 7.2, prime.FillTime.Seconds);
        Assert.InRange(seconds, prime.PressurizeAtLeast.Seconds, prime.PressurizeAtMost.Seconds);
    }

    [Property]
    public void OpenedLine_Captures_WhatIsReleasedAndWhatDrains(ClosedLine line)
    {
        OpenedLine opened = OpenedLine.Of(line.Volume, line.Start, Ratio.FromPercent(25));

        Close.Within(
            1e-12,
            line.Volume.ReleasedBetween(line.Start, default).CubicCentimeters,
            opened.Sprayed.CubicCentimeters
        );
        Close.Within(1e-12, line.Liters * 250, opened.Drained.CubicCentimeters);
        Close.Within(
            1e-12,
            opened.Sprayed.CubicCentimeters + opened.Drained.CubicCentimeters,
            opened.Captured.CubicCentimeters
        );
    }

    [Fact]
    public void EnclosedVolume_OfNamedHoses_AddsUp()
    {
        var plan = Workshop.Four().Network;

        // Feed: 3 m of 8.7 mm is 178.3 cm3; rail: 0.35 m of 12 mm is 39.6 cm3.
        Assert.Equal(
            178.3 + 39.6 + 50,
            EnclosedVolume.Of(plan, ["feed", "rail"], Volume.FromCubicCentimeters(50)).CubicCentimeters,
            0.1
        );
        Words.Refused<ArgumentException>("hoses", "'filter'", () => EnclosedVolume.Of(plan, ["filter"], default));
    }

    [Fact]
    public void BadInput_IsRefused()
    {
        ClosedVolume volume = new ClosedLine(0.5, 0, 0, 3, 1).Volume;
        GaugePressure bar = new(Pressure.FromBars(3));
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(100);

        Words.Refused<ArgumentOutOfRangeException>(
            "flowAtTarget",
            "100 L/h, 120 L/h",
            () => PrimeTime.Of(default, volume, bar, flow, VolumeFlow.FromLitersPerHour(120))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "residue",
            "0.01 %, 99 %, 0 %",
            () => Flush.Of(Volume.FromLiters(1), Ratio.FromPercent(0), flow)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "draining",
            "0 %, 100 %, 120 %",
            () => OpenedLine.Of(volume, bar, Ratio.FromPercent(120))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "pressure",
            "-300 kPa",
            () => OpenedLine.Of(volume, new GaugePressure(Pressure.FromBars(-3)), default)
        );
    }
}
