using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Regulators;

[Properties(Arbitrary = [typeof(RegulatorArbitraries)])]
public sealed class BypassRegulatorTests
{
    private static readonly GaugePressure Ambient = new(Pressure.Zero);
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(745);

    // ---- Forces by hand -------------------------------------------------------------------------------------

    /// <summary>
    /// A spring of 228 N on a diaphragm of 8 cm2 with a seat of 0.4 cm2: 228 N / 7.6 cm2 = 3 bar. A boost of 1.9 bar adds
    /// 1.9 bar x 8 cm2 = 152 N, which is 2 bar; a return line at 0.95 bar takes 0.95 bar x 0.4 cm2 = 3.8 N, 0.05 bar.
    /// </summary>
    [Theory]
    [Trait("Source", "Definition")]
    [InlineData(0, 0, 3.00)]
    [InlineData(1.9, 0, 5.00)]
    [InlineData(0, 0.95, 2.95)]
    [InlineData(1.9, 0.95, 4.95)]
    [InlineData(-0.57, 0, 2.40)]
    public void OpeningPressure_ForcesByHand_Balance(double reference, double back, double expected) =>
        Close.Within(
            1e-12,
            expected,
            Regulator(3, 0, 0.1)
                .OpeningPressure(new(Pressure.FromBars(reference)), new(Pressure.FromBars(back)))
                .AboveAmbient.Bars
        );

    /// <summary>A quarter of the flow through a fixed restriction loses a sixteenth; another density, in proportion.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void FullyOpenLoss_FlowAndDensity_SquareAndProportion()
    {
        BypassRegulator regulator = Regulator(3, 0, 0.1);

        Close.Within(1e-12, 0.6, regulator.FullyOpenLoss(VolumeFlow.FromLitersPerHour(300), Petrol).Bars);
        Close.Within(1e-12, 0.6 / 16, regulator.FullyOpenLoss(VolumeFlow.FromLitersPerHour(75), Petrol).Bars);
        Close.Within(
            1e-12,
            0.6 * 596 / 745,
            regulator.FullyOpenLoss(VolumeFlow.FromLitersPerHour(300), Density.FromKilogramsPerCubicMeter(596)).Bars
        );
    }

    // ---- Properties ---------------------------------------------------------------------------------------

    [Property]
    public void HeldPressure_AtItsReadings_GivesThemBack(Setting setting)
    {
        BypassRegulator regulator = setting.ToRegulator();

        foreach (
            BypassRegulator.BenchReading reading in (BypassRegulator.BenchReading[])
                [regulator.SetPoint, regulator.SecondReading]
        )
        {
            double held = regulator.HeldPressure(Ambient, Ambient, reading.BypassedFlow).AboveAmbient.Bars;
            Close.Within(1e-11, reading.DifferentialPressure.Bars, held);
        }
    }

    [Property]
    public void HeldPressure_MoreFlow_NeverFalls(Setting setting, Around around)
    {
        BypassRegulator regulator = setting.ToRegulator();

        GaugePressure less = regulator.HeldPressure(around.ReferencePressure, around.ReturnPressure, around.Flow);
        GaugePressure more = regulator.HeldPressure(around.ReferencePressure, around.ReturnPressure, around.Flow * 2);

        Close.Within(1e-9, setting.SlopePer100 * around.LitersPerHour / 100 + 1, (more - less).Bars + 1);
    }

    /// <summary>The forces on the diaphragm cancel: spring and reference above, rail on the ring, return on the seat.</summary>
    [Property]
    public void OpeningPressure_ForcesOnTheDiaphragm_Cancel(Setting setting, Around around)
    {
        BypassRegulator regulator = setting.ToRegulator();
        double diaphragm = regulator.Mechanics.Diaphragm.SquareMeters;
        double seat = regulator.Mechanics.Seat.SquareMeters;
        double rail = regulator.OpeningPressure(around.ReferencePressure, around.ReturnPressure).AboveAmbient.Pascals;

        double spring = regulator.OpeningDifferentialPressure.Pascals * (diaphragm - seat);
        double down = spring + (around.Reference * 1e5 * diaphragm);
        double up = (rail * (diaphragm - seat)) + (around.Return * 1e5 * seat);

        Close.WithinOf(spring, 1e-12, down, up);
    }

    /// <summary>Boost of one bar lifts the rail by one bar and the return influence.</summary>
    [Property]
    public void HeldPressure_ReferenceAndReturn_CountByTheirAreas(Setting setting, Around around)
    {
        BypassRegulator regulator = setting.ToRegulator();
        double influence = regulator.ReturnInfluence.DecimalFractions;
        GaugePressure plain = regulator.HeldPressure(Ambient, Ambient, around.Flow);

        GaugePressure held = regulator.HeldPressure(around.ReferencePressure, around.ReturnPressure, around.Flow);

        Close.Within(1e-12, setting.Seat / (1 - setting.Seat), influence);
        Close.WithinOf(
            10,
            1e-12,
            (around.Reference * (1 + influence)) - (around.Return * influence),
            (held - plain).Bars
        );
    }

    /// <summary>The pressure upstream is never below either of the two that could set it, and the state says which.</summary>
    [Property]
    public void UpstreamPressure_IsTheHigherOfHeldAndOpen(Setting setting, Around around)
    {
        BypassRegulator regulator = setting.ToRegulator();
        GaugePressure held = regulator.HeldPressure(around.ReferencePressure, around.ReturnPressure, around.Flow);
        GaugePressure open = around.ReturnPressure + regulator.FullyOpenLoss(around.Flow, Petrol);

        GaugePressure upstream = regulator.UpstreamPressure(
            around.ReferencePressure,
            around.ReturnPressure,
            around.Flow,
            Petrol
        );
        RegulatorCondition state = regulator.StateAt(
            around.ReferencePressure,
            around.ReturnPressure,
            around.Flow,
            Petrol
        );

        Assert.Equal(state, open > held ? RegulatorCondition.FullyOpen : RegulatorCondition.Regulating);
        Close.WithinOf(
            1e5,
            1e-12,
            Math.Max(held.AboveAmbient.Pascals, open.AboveAmbient.Pascals),
            upstream.AboveAmbient.Pascals
        );
    }

    [Property]
    public void HeldPressure_OtherUnits_IsTheSame(Setting setting, Around around)
    {
        BypassRegulator metric = setting.ToRegulator();
        BypassRegulator.BenchReading InOther(BypassRegulator.BenchReading r) =>
            new(
                r.DifferentialPressure.ToUnit(PressureUnit.PoundForcePerSquareInch),
                r.BypassedFlow.ToUnit(VolumeFlowUnit.UsGallonPerHour)
            );
        var other = new BypassRegulator(
            "other",
            InOther(metric.SetPoint),
            InOther(metric.SecondReading),
            new RegulatorMechanics(
                metric.Mechanics.Diaphragm.ToUnit(AreaUnit.SquareInch),
                metric.Mechanics.Seat.ToUnit(AreaUnit.SquareInch),
                metric.Mechanics.FullyOpen
            ),
            metric.Reference,
            metric.Source
        );

        // The slope divides the difference of two pressures by 100 L/h; a unit round trip of 2e-12 of 6 bar over a flow of
        // up to 500 L/h grows tenfold.
        Close.WithinOf(
            6e5,
            1e-10,
            metric.HeldPressure(around.ReferencePressure, around.ReturnPressure, around.Flow).AboveAmbient.Pascals,
            other.HeldPressure(around.ReferencePressure, around.ReturnPressure, around.Flow).AboveAmbient.Pascals
        );
    }

    [Property]
    public void WithSetPoint_NewSetPoint_KeepsTheSlope(Setting setting)
    {
        BypassRegulator before = setting.ToRegulator();
        BypassRegulator.BenchReading setPoint = new(
            before.SetPoint.DifferentialPressure + Pressure.FromBars(0.5),
            before.SetPoint.BypassedFlow
        );

        BypassRegulator after = before.WithSetPoint("turned", setPoint);

        VolumeFlow flow = VolumeFlow.FromLitersPerHour(150);
        Pressure change = after.HeldPressure(Ambient, Ambient, flow) - before.HeldPressure(Ambient, Ambient, flow);
        Close.Within(1e-10, 0.5, change.Bars);
        Assert.Equal("turned", after.Name);
    }

    // ---- States -------------------------------------------------------------------------------------------

    [Fact]
    public void StateAt_NoFlow_IsSeated() =>
        Assert.Equal(
            RegulatorCondition.Seated,
            Regulator(3, 0, 0.1).StateAt(Ambient, Ambient, VolumeFlow.Zero, Petrol)
        );

    /// <summary>A return line at 2.6 bar and 0.6 bar through the open passage: 3.2 bar where 3.1 would be held.</summary>
    [Fact]
    public void StateAt_SmallReturnLine_IsFullyOpenAndLiftsTheRail()
    {
        BypassRegulator regulator = Regulator(3, 0, 0.1);
        var returnLine = new GaugePressure(Pressure.FromBars(2.6));
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(300);

        Assert.Equal(RegulatorCondition.FullyOpen, regulator.StateAt(Ambient, returnLine, flow, Petrol));
        Close.Within(1e-12, 3.2, regulator.UpstreamPressure(Ambient, returnLine, flow, Petrol).AboveAmbient.Bars);
    }

    private static RegulatorMechanics.Restriction Open =>
        new(Pressure.FromBars(0.6), VolumeFlow.FromLitersPerHour(300), Petrol);

    private static BypassRegulator.BenchReading Reading(double bar, double litersPerHour) =>
        new(Pressure.FromBars(bar), VolumeFlow.FromLitersPerHour(litersPerHour));

    private static BypassRegulator Regulator(
        double bar,
        double litersPerHour,
        double riseOver300,
        double diaphragm = 8,
        double seat = 0.4
    ) =>
        new(
            "trainer",
            Reading(bar, litersPerHour),
            Reading(bar + riseOver300, litersPerHour + 300),
            new RegulatorMechanics(Area.FromSquareCentimeters(diaphragm), Area.FromSquareCentimeters(seat), Open),
            RegulatorReference.Manifold,
            Setting.Source
        );
}
