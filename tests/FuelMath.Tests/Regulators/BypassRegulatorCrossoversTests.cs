using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Regulators;

[Properties(Arbitrary = [typeof(RegulatorArbitraries)])]
public sealed class BypassRegulatorCrossoversTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(745);

    /// <summary>Below the crossover it regulates, above it is open to its stop; there both laws give one pressure.</summary>
    [Property]
    public void FullyOpenFlow_PartsTheStates(Setting setting, Around around)
    {
        BypassRegulator regulator = setting.ToRegulator();
        if (regulator.OpeningPressure(around.ReferencePressure, around.ReturnPressure) <= around.ReturnPressure)
        {
            return;
        }

        var cross = BypassRegulator.Crossovers.Of(regulator, around.ReferencePressure, around.ReturnPressure, Petrol);

        Assert.Equal(
            RegulatorCondition.Regulating,
            regulator.StateAt(around.ReferencePressure, around.ReturnPressure, cross.FullyOpenFlow * 0.999, Petrol)
        );
        Assert.Equal(
            RegulatorCondition.FullyOpen,
            regulator.StateAt(around.ReferencePressure, around.ReturnPressure, cross.FullyOpenFlow * 1.001, Petrol)
        );
        Close.Within(
            1e-9,
            regulator
                .HeldPressure(around.ReferencePressure, around.ReturnPressure, cross.FullyOpenFlow)
                .AboveAmbient.Bars + 10,
            cross.FullyOpenPressure.AboveAmbient.Bars + 10
        );
    }

    /// <summary>
    /// With a return path the pressure behind the seat depends on the flow: put in the one that it makes, both laws of the
    /// valve give the rail pressure.
    /// </summary>
    [Property]
    public void Of_AReturnPath_IsWhereBothLawsMeet(Setting setting, byte loss)
    {
        BypassRegulator regulator = setting.ToRegulator();
        VolumeFlow at = VolumeFlow.FromLitersPerHour(setting.LitersPerHour + 100);
        Pressure lost = Pressure.FromBars(0.3 * (1 + loss) / 512.0);
        var path = new RegulatorMechanics.Restriction(lost, at, Petrol);

        var cross = BypassRegulator.Crossovers.Of(regulator, default, default, path, Petrol);
        double share = cross.FullyOpenFlow / at;
        var behind = new GaugePressure(lost * (share * share));
        double rail = cross.FullyOpenPressure.AboveAmbient.Bars;

        Close.Within(1e-9, rail, regulator.HeldPressure(default, behind, cross.FullyOpenFlow).AboveAmbient.Bars);
        Close.Within(1e-9, rail, behind.AboveAmbient.Bars + regulator.FullyOpenLoss(cross.FullyOpenFlow, Petrol).Bars);
    }

    [Fact]
    public void Of_AReturnLineThatHoldsItOpen_IsRefused()
    {
        BypassRegulator regulator = new Setting(3, 0, 0.1, 8, 0.05).ToRegulator();
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            BypassRegulator.Crossovers.Of(regulator, default, new(Pressure.FromBars(5)), Petrol)
        );

        Words.Says("5.00 bar", refused);
    }

    // ---- Reference of another ratio -------------------------------------------------------------------------

    /// <summary>
    /// A spring of 228 N over 7.6 cm2 is 3 bar; a boost of 0.95 bar on a diaphragm four times as large, 32 cm2, adds 304 N,
    /// which is 4 bar.
    /// </summary>
    [Theory]
    [Trait("Source", "Definition")]
    [InlineData(0, 3.0)]
    [InlineData(0.95, 7.0)]
    [InlineData(-0.19, 2.2)]
    public void WithReferenceRatio_ForcesByHand_Balance(double reference, double expected)
    {
        BypassRegulator rising = new Setting(3, 0, 0.1, 8, 0.05)
            .ToRegulator()
            .WithReferenceRatio("rising", Ratio.FromDecimalFractions(4));

        Close.Within(
            1e-12,
            expected,
            rising.OpeningPressure(new(Pressure.FromBars(reference)), default).AboveAmbient.Bars
        );
    }

    [Fact]
    public void WithSetPoint_KeepsTheReferenceRatio()
    {
        BypassRegulator rising = new Setting(3, 0, 0.1, 8, 0.05)
            .ToRegulator()
            .WithReferenceRatio("rising", Ratio.FromDecimalFractions(4));

        BypassRegulator turned = rising.WithSetPoint("turned", new(Pressure.FromBars(4), VolumeFlow.Zero));

        Assert.Equal(4, turned.ReferenceRatio.DecimalFractions);
    }

    [Fact]
    public void WithReferenceRatio_TooLarge_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new Setting(3, 0, 0.1, 8, 0.05).ToRegulator().WithReferenceRatio("r", Ratio.FromDecimalFractions(30))
        );

        Words.Says("30", refused);
    }

    // ---- Set point seen on the engine -----------------------------------------------------------------------

    /// <summary>A regulator that was turned is found out by what it holds, and the corrected one holds just that.</summary>
    [Property]
    public void Observation_OfATurnedScrew_FindsHowFar(Setting setting, byte turn, byte back)
    {
        BypassRegulator described = setting.ToRegulator();
        Pressure by = Pressure.FromBars((turn - 100) / 200.0);
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(setting.LitersPerHour + 20);
        GaugePressure returnLine = new(Pressure.FromBars(back / 1000.0));
        GaugePressure rail = described.HeldPressure(default, returnLine, flow) + by;
        if (rail.AboveAmbient.Bars < 1)
        {
            return;
        }

        var seen = new BypassRegulator.Observation(rail, returnLine, flow);
        BypassRegulator corrected = seen.Corrected("as seen", described, Petrol);

        Close.WithinOf(10, 1e-11, by.Bars, seen.DifferenceFrom(described, Petrol).Bars);
        Close.Within(
            1e-11,
            rail.AboveAmbient.Bars,
            corrected.HeldPressure(default, returnLine, flow).AboveAmbient.Bars
        );
    }

    [Fact]
    public void Observation_OpenToItsStop_SaysNothingOfTheSetPoint()
    {
        BypassRegulator regulator = new Setting(3, 0, 0.1, 8, 0.05).ToRegulator();
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(400);
        var seen = new BypassRegulator.Observation(new(Pressure.FromBars(4.8)), default, flow);

        var refused = Assert.Throws<InvalidOperationException>(() => seen.DifferenceFrom(regulator, Petrol));

        Words.Says("4.80 bar", refused);
    }

    [Fact]
    public void Observation_BelowTheReturnLine_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new BypassRegulator.Observation(
                new(Pressure.FromBars(0.2)),
                new(Pressure.FromBars(0.3)),
                VolumeFlow.FromLitersPerHour(50)
            )
        );

        Words.Says("0.30 bar, 0.20 bar", refused);
    }
}
