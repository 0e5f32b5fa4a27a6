using FsCheck.Xunit;
using FuelMath.Quantities;
using FuelMath.Regulators;
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

        foreach (RegulatorReading reading in (RegulatorReading[])[regulator.SetPoint, regulator.SecondReading])
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
        double diaphragm = regulator.Diaphragm.SquareMeters;
        double seat = regulator.Seat.SquareMeters;
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
        RegulatorState state = regulator.StateAt(around.ReferencePressure, around.ReturnPressure, around.Flow, Petrol);

        Assert.Equal(state, open > held ? RegulatorState.FullyOpen : RegulatorState.Regulating);
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
        RegulatorReading InOther(RegulatorReading r) =>
            new(
                r.DifferentialPressure.ToUnit(PressureUnit.PoundForcePerSquareInch),
                r.BypassedFlow.ToUnit(VolumeFlowUnit.UsGallonPerHour)
            );
        var other = new BypassRegulator(
            "other",
            InOther(metric.SetPoint),
            InOther(metric.SecondReading),
            metric.Diaphragm.ToUnit(AreaUnit.SquareInch),
            metric.Seat.ToUnit(AreaUnit.SquareInch),
            metric.FullyOpen,
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
        RegulatorReading setPoint = new(
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
        Assert.Equal(RegulatorState.Seated, Regulator(3, 0, 0.1).StateAt(Ambient, Ambient, VolumeFlow.Zero, Petrol));

    /// <summary>A return line at 2.6 bar and 0.6 bar through the open passage: 3.2 bar where 3.1 would be held.</summary>
    [Fact]
    public void StateAt_SmallReturnLine_IsFullyOpenAndLiftsTheRail()
    {
        BypassRegulator regulator = Regulator(3, 0, 0.1);
        var returnLine = new GaugePressure(Pressure.FromBars(2.6));
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(300);

        Assert.Equal(RegulatorState.FullyOpen, regulator.StateAt(Ambient, returnLine, flow, Petrol));
        Close.Within(1e-12, 3.2, regulator.UpstreamPressure(Ambient, returnLine, flow, Petrol).AboveAmbient.Bars);
    }

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Fact]
    public void UpstreamPressure_NoFlow_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "bypassedFlow",
            "Must be finite and greater than zero; it was 0 L/h.",
            () => Regulator(3, 0, 0.1).UpstreamPressure(Ambient, Ambient, VolumeFlow.FromLitersPerHour(0), Petrol)
        );

    [Fact]
    public void Members_NegativeFlowOrNoDensity_Refuse()
    {
        BypassRegulator regulator = Regulator(3, 0, 0.1);
        VolumeFlow back = VolumeFlow.FromLitersPerHour(-5);
        const string negative = "Must be finite and not negative; it was -5 L/h.";
        const string none = "Must be finite and greater than zero; it was 0 kg/m³.";

        Words.Refused<ArgumentOutOfRangeException>(
            "bypassedFlow",
            negative,
            () => regulator.HeldPressure(Ambient, Ambient, back)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "bypassedFlow",
            negative,
            () => regulator.StateAt(Ambient, Ambient, back, Petrol)
        );
        Words.Refused<ArgumentOutOfRangeException>("flow", negative, () => regulator.FullyOpenLoss(back, Petrol));
        Words.Refused<ArgumentOutOfRangeException>(
            "density",
            none,
            () => regulator.FullyOpenLoss(VolumeFlow.FromLitersPerHour(5), default)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "density",
            none,
            () => regulator.StateAt(Ambient, Ambient, VolumeFlow.FromLitersPerHour(5), default)
        );
    }

    [Theory]
    [InlineData(8, 8, "seat", "Must be smaller than the diaphragm, 8 cm²; it was 8 cm².")]
    [InlineData(8, 0, "seat", "Must be finite and greater than zero; it was 0 cm².")]
    [InlineData(-8, 1, "diaphragm", "Must be finite and greater than zero; it was -8 cm².")]
    public void Constructor_BadAreas_Refuses(double diaphragm, double seat, string name, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(name, words, () => Regulator(3, 0, 0.1, diaphragm, seat));

    [Fact]
    public void Constructor_ReadingsAtOneFlow_Refuses() =>
        Words.Refused<ArgumentException>(
            "second",
            "Two readings at different bypassed flows are needed; both were at 80 L/h.",
            () => Build(Reading(3, 80), Reading(3.1, 80))
        );

    [Fact]
    public void Constructor_FallingPressure_SaysWhyNot() =>
        Words.Refused<ArgumentException>(
            "second",
            "The held pressure must not fall as the bypassed flow rises, because such a regulator hunts; "
                + "it was 3 bar at 80 L/h and 2.9 bar at 180 L/h.",
            () => Build(Reading(3, 80), Reading(2.9, 180))
        );

    [Fact]
    public void Constructor_SlopeThroughTheReference_Refuses() =>
        Words.Refused<ArgumentException>(
            "second",
            "3 bar at 100 L/h and 7 bar at 200 L/h would put the pressure at no flow at -1 bar; "
                + "it must lie above the reference.",
            () => Build(Reading(3, 100), Reading(7, 200))
        );

    /// <summary>0.6 bar at 300 L/h is 6.67 bar at 1000 L/h: a reading of 3 bar at that flow can't be.</summary>
    [Fact]
    public void Constructor_ReadingBelowTheOpenLoss_Refuses() =>
        Words.Refused<ArgumentException>(
            "second",
            "A reading of 3 bar at 1000 L/h can't be, because open to its stop it would already lose 6.666667 bar at that flow.",
            () => Build(Reading(3, 100), Reading(3, 1000))
        );

    [Theory]
    [InlineData(0, 80, "differentialPressure", "Must be finite and greater than zero; it was 0 bar.")]
    [InlineData(3, -1, "bypassedFlow", "Must be finite and not negative; it was -1 L/h.")]
    public void RegulatorReading_BadValue_Refuses(double bar, double flow, string name, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(name, words, () => Reading(bar, flow));

    [Theory]
    [InlineData(0, 300, 745, "pressureLoss", "Must be finite and greater than zero; it was 0 bar.")]
    [InlineData(0.6, 0, 745, "flow", "Must be finite and greater than zero; it was 0 L/h.")]
    [InlineData(0.6, 300, -745, "density", "Must be finite and greater than zero; it was -745 kg/m³.")]
    public void RegulatorRestriction_BadValue_Refuses(
        double bar,
        double flow,
        double density,
        string name,
        string words
    ) =>
        Words.Refused<ArgumentOutOfRangeException>(
            name,
            words,
            () =>
                _ = new RegulatorRestriction(
                    Pressure.FromBars(bar),
                    VolumeFlow.FromLitersPerHour(flow),
                    Density.FromKilogramsPerCubicMeter(density)
                )
        );

    [Fact]
    public void Constructor_DefaultPartsNullOrBlank_SaysWhich()
    {
        Area diaphragm = Area.FromSquareCentimeters(8);
        Area seat = Area.FromSquareCentimeters(0.4);
        BypassRegulator Make(
            string name,
            RegulatorReading setPoint,
            RegulatorRestriction open,
            RegulatorReference reference
        ) => new(name, setPoint, Reading(3.1, 180), diaphragm, seat, open, reference, Setting.Source);

        Words.Refused<ArgumentException>(
            "name",
            "Must be a name, not blank.",
            () => Make("", Reading(3, 80), Open, RegulatorReference.Ambient)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "fullyOpen",
            "Must be finite and greater than zero; it was 0 m³/s.",
            () => Make("r", Reading(3, 80), default, RegulatorReference.Ambient)
        );
        Words.Refused<ArgumentException>(
            "second",
            "0 Pa at 0 m³/s and 3.1 bar at 180 L/h would put the pressure at no flow at 0 Pa; "
                + "it must lie above the reference.",
            () => Make("r", default, Open, RegulatorReference.Ambient)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "reference",
            "Must be a known reference; it was 7.",
            () => Make("r", Reading(3, 80), Open, (RegulatorReference)7)
        );
        Assert.Throws<ArgumentNullException>(
            "source",
            () =>
                new BypassRegulator(
                    "r",
                    Reading(3, 80),
                    Reading(3.1, 180),
                    diaphragm,
                    seat,
                    Open,
                    RegulatorReference.Ambient,
                    null!
                )
        );
    }

    private static RegulatorRestriction Open => new(Pressure.FromBars(0.6), VolumeFlow.FromLitersPerHour(300), Petrol);

    private static RegulatorReading Reading(double bar, double litersPerHour) =>
        new(Pressure.FromBars(bar), VolumeFlow.FromLitersPerHour(litersPerHour));

    private static BypassRegulator Build(RegulatorReading first, RegulatorReading second) =>
        new(
            "trainer",
            first,
            second,
            Area.FromSquareCentimeters(8),
            Area.FromSquareCentimeters(0.4),
            Open,
            RegulatorReference.Manifold,
            Setting.Source
        );

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
            Area.FromSquareCentimeters(diaphragm),
            Area.FromSquareCentimeters(seat),
            Open,
            RegulatorReference.Manifold,
            Setting.Source
        );
}
