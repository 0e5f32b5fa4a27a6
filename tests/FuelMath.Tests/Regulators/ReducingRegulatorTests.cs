using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Regulators;

public sealed class ReducingRegulatorTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(745);

    // ---- Forces by hand -------------------------------------------------------------------------------------

    /// <summary>
    /// A diaphragm of 8 cm2 with a seat of 0.4 cm2, 3 bar from a supply of 5.7 bar at no flow: the spring carries
    /// 3 bar x 7.6 cm2 = 228 N and 5.7 bar x 0.4 cm2 = 22.8 N. A supply of 1.9 bar more presses 7.6 N more on the seat,
    /// which is 0.1 bar on 7.6 cm2; a reference of 1.9 bar adds 152 N, which is 2 bar; 100 L/h take 0.2 bar.
    /// </summary>
    [Theory]
    [Trait("Source", "Definition")]
    [InlineData(0, 5.7, 0, 3.0)]
    [InlineData(0, 7.6, 0, 2.9)]
    [InlineData(0, 3.8, 0, 3.1)]
    [InlineData(1.9, 5.7, 0, 5.0)]
    [InlineData(-0.57, 5.7, 0, 2.4)]
    [InlineData(0, 5.7, 100, 2.8)]
    [InlineData(1.9, 7.6, 50, 4.8)]
    public void HeldPressure_ForcesByHand_Balance(double reference, double supply, double flow, double expected) =>
        Close.Within(
            1e-12,
            expected,
            Made().HeldPressure(Bar(reference), Bar(supply), VolumeFlow.FromLitersPerHour(flow)).AboveAmbient.Bars
        );

    /// <summary>Open to its stop: 0.6 bar at 300 L/h are 0.6/9 at 100 L/h; from 2.5 bar, that is all there is.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void DownstreamPressure_Starved_IsTheSupplyLessARestriction()
    {
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(100);

        Close.Within(
            1e-12,
            2.5 - (0.6 / 9),
            Made().DownstreamPressure(Bar(0), Bar(2.5), flow, Petrol).AboveAmbient.Bars
        );
        Assert.Equal(RegulatorCondition.FullyOpen, Made().StateAt(Bar(0), Bar(2.5), flow, Petrol));
        Assert.Equal(RegulatorCondition.Regulating, Made().StateAt(Bar(0), Bar(5.7), flow, Petrol));
        Assert.Equal(RegulatorCondition.Seated, Made().StateAt(Bar(0), Bar(5.7), VolumeFlow.Zero, Petrol));
    }

    /// <summary>0.6 (q/300)2 - 0.2 q/100 = 2.7 at the crossover from 5.7 bar: 803.8 L/h by the quadratic formula.</summary>
    [Fact]
    public void FullyOpenFlow_IsTheRootByHand()
    {
        VolumeFlow cross = Made().FullyOpenFlow(Bar(0), Bar(5.7), Petrol);

        Assert.Equal(803.8, cross.LitersPerHour, 0.05);
    }

    // ---- Laws -----------------------------------------------------------------------------------------------

    /// <summary>Up to the crossover it regulates, above it is starved, and there both laws give one pressure.</summary>
    [Property]
    public void FullyOpenFlow_PartsTheStates(byte reference, byte supply)
    {
        GaugePressure port = Bar(reference / 200.0);
        GaugePressure ahead = Bar(5 + (supply / 50.0));
        ReducingRegulator regulator = Made();

        VolumeFlow cross = regulator.FullyOpenFlow(port, ahead, Petrol);

        Assert.Equal(RegulatorCondition.Regulating, regulator.StateAt(port, ahead, cross * (1 - 1e-9), Petrol));
        Assert.Equal(RegulatorCondition.FullyOpen, regulator.StateAt(port, ahead, cross * (1 + 1e-9), Petrol));
        Close.Within(
            1e-9,
            regulator.HeldPressure(port, ahead, cross).AboveAmbient.Bars + 10,
            regulator.DownstreamPressure(port, ahead, cross, Petrol).AboveAmbient.Bars + 10
        );
    }

    /// <summary>More flow never gives more pressure behind it, whatever the state.</summary>
    [Property]
    public void DownstreamPressure_FallsWithFlow(ushort a, ushort b, byte supply)
    {
        (double low, double high) = (1 + (Math.Min(a, b) / 50.0), 1 + (Math.Max(a, b) / 50.0));
        GaugePressure ahead = Bar(1 + (supply / 40.0));

        Assert.True(
            Made().DownstreamPressure(Bar(0), ahead, VolumeFlow.FromLitersPerHour(high), Petrol)
                <= Made().DownstreamPressure(Bar(0), ahead, VolumeFlow.FromLitersPerHour(low), Petrol)
        );
    }

    [Fact]
    public void HeldPressure_AtItsReadings_GivesThemBack()
    {
        // The second was taken from a supply that had sagged.
        ReducingRegulator.BenchReading first = new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(20), Bar(6));
        ReducingRegulator.BenchReading second = new(Pressure.FromBars(2.9), VolumeFlow.FromLitersPerHour(120), Bar(5));
        ReducingRegulator regulator = Made(first, second);

        foreach (ReducingRegulator.BenchReading reading in (ReducingRegulator.BenchReading[])[first, second])
        {
            Close.Within(
                1e-12,
                reading.DifferentialPressure.Bars,
                regulator.HeldPressure(Bar(0), reading.Supply, reading.Flow).AboveAmbient.Bars
            );
        }
    }

    // ---- Refusals -------------------------------------------------------------------------------------------

    [Fact]
    public void Readings_ThatRiseWithFlow_AreRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            Made(
                new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(0), Bar(6)),
                new(Pressure.FromBars(3.1), VolumeFlow.FromLitersPerHour(100), Bar(6))
            )
        );

        Words.Says("3 bar, 0 L/h, 600 kPa, 3.1 bar, 100 L/h", refused);
    }

    [Fact]
    public void Readings_AtOneFlow_AreRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            Made(
                new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(100), Bar(6)),
                new(Pressure.FromBars(2.9), VolumeFlow.FromLitersPerHour(100), Bar(6))
            )
        );

        Words.Says("100 L/h", refused);
    }

    /// <summary>The order in which they are given does not matter: 2.8 bar at 100 L/h falls from 3 bar at none.</summary>
    [Fact]
    public void Readings_GivenTheOtherWayRound_AreTheSameRegulator()
    {
        ReducingRegulator turned = Made(
            new(Pressure.FromBars(2.8), VolumeFlow.FromLitersPerHour(100), Bar(5.7)),
            new(Pressure.FromBars(3), VolumeFlow.Zero, Bar(5.7))
        );

        Close.Within(
            1e-12,
            2.9,
            turned.HeldPressure(Bar(0), Bar(5.7), VolumeFlow.FromLitersPerHour(50)).AboveAmbient.Bars
        );
    }

    /// <summary>
    /// A supply that sags by 1.9 bar presses 7.6 N less on the seat, 0.1 bar on 7.6 cm2: 3.05 bar at 100 L/h from 3.8 bar are
    /// 2.95 bar from 5.7 bar, so that this regulator falls with flow although its readings rise.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Readings_ThatRiseByASaggingSupply_FallAtOneSupply()
    {
        ReducingRegulator sagging = Made(
            new(Pressure.FromBars(3), VolumeFlow.Zero, Bar(5.7)),
            new(Pressure.FromBars(3.05), VolumeFlow.FromLitersPerHour(100), Bar(3.8))
        );

        Close.Within(
            1e-12,
            2.95,
            sagging.HeldPressure(Bar(0), Bar(5.7), VolumeFlow.FromLitersPerHour(100)).AboveAmbient.Bars
        );
    }

    [Fact]
    public void Readings_OfOnePressure_HoldItAtEveryFlow() =>
        Close.Within(
            1e-12,
            3,
            Made(
                    new(Pressure.FromBars(3), VolumeFlow.Zero, Bar(5.7)),
                    new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(100), Bar(5.7))
                )
                .HeldPressure(Bar(0), Bar(5.7), VolumeFlow.FromLitersPerHour(200))
                .AboveAmbient.Bars
        );

    [Fact]
    public void Reading_ThatWasStarved_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            Made(
                new(Pressure.FromBars(3), VolumeFlow.Zero, Bar(6)),
                new(Pressure.FromBars(2.8), VolumeFlow.FromLitersPerHour(300), Bar(3.2))
            )
        );

        Words.Says("2.6 bar", refused);
    }

    [Fact]
    public void Reading_BelowItsSupply_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new ReducingRegulator.BenchReading(Pressure.FromBars(3), VolumeFlow.Zero, Bar(2.5))
        );

        Words.Says("3 bar, 2.5 bar", refused);
    }

    [Fact]
    public void FullyOpenFlow_FromTooLittle_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => Made().FullyOpenFlow(Bar(0), Bar(2), Petrol));

        Words.Says("3.195 bar, 2.00 bar", refused);
    }

    private static ReducingRegulator Made() =>
        Made(
            new(Pressure.FromBars(3), VolumeFlow.Zero, Bar(5.7)),
            new(Pressure.FromBars(2.8), VolumeFlow.FromLitersPerHour(100), Bar(5.7))
        );

    private static ReducingRegulator Made(
        ReducingRegulator.BenchReading first,
        ReducingRegulator.BenchReading second
    ) =>
        new(
            "reducing",
            first,
            second,
            new RegulatorMechanics(
                Area.FromSquareCentimeters(8),
                Area.FromSquareCentimeters(0.4),
                new RegulatorMechanics.Restriction(Pressure.FromBars(0.6), VolumeFlow.FromLitersPerHour(300), Petrol)
            ),
            RegulatorReference.Manifold,
            Setting.Source
        );

    private static GaugePressure Bar(double bar) => new(Pressure.FromBars(bar));
}
