using UnitsNet;

namespace FuelMath.Tests.Regulators;

public sealed class BypassRegulatorRefusalTests
{
    private static readonly GaugePressure Ambient = new(Pressure.Zero);
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(745);

    [Fact]
    public void UpstreamPressure_NoFlow_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "bypassedFlow",
            "0 L/h",
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
        Words.Refused<ArgumentException>("second", "80 L/h", () => Build(Reading(3, 80), Reading(3.1, 80)));

    [Fact]
    public void Constructor_FallingPressure_SaysWhyNot() =>
        Words.Refused<ArgumentException>(
            "second",
            "3 bar, 80 L/h, 2.9 bar, 180 L/h",
            () => Build(Reading(3, 80), Reading(2.9, 180))
        );

    [Fact]
    public void Constructor_SlopeThroughTheReference_Refuses() =>
        Words.Refused<ArgumentException>(
            "second",
            "3 bar, 100 L/h, 7 bar, 200 L/h, -1 bar",
            () => Build(Reading(3, 100), Reading(7, 200))
        );

    /// <summary>0.6 bar at 300 L/h is 6.67 bar at 1000 L/h: a reading of 3 bar at that flow can't be.</summary>
    [Fact]
    public void Constructor_ReadingBelowTheOpenLoss_Refuses() =>
        Words.Refused<ArgumentException>(
            "second",
            "3 bar, 1000 L/h, 6.66667 bar",
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
                _ = new RegulatorMechanics.Restriction(
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
            BypassRegulator.BenchReading setPoint,
            RegulatorMechanics.Restriction open,
            RegulatorReference reference
        ) =>
            new(
                name,
                setPoint,
                Reading(3.1, 180),
                new RegulatorMechanics(diaphragm, seat, open),
                reference,
                Setting.Source
            );

        Words.Refused<ArgumentException>("name", () => Make("", Reading(3, 80), Open, RegulatorReference.Ambient));
        Words.Refused<ArgumentOutOfRangeException>(
            "fullyOpen",
            "0 m³/s",
            () => Make("r", Reading(3, 80), default, RegulatorReference.Ambient)
        );
        Words.Refused<ArgumentException>(
            "second",
            "0 Pa, 0 m³/s, 3.1 bar, 180 L/h",
            () => Make("r", default, Open, RegulatorReference.Ambient)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "reference",
            "7",
            () => Make("r", Reading(3, 80), Open, (RegulatorReference)7)
        );
        Assert.Throws<ArgumentNullException>(
            "source",
            () =>
                new BypassRegulator(
                    "r",
                    Reading(3, 80),
                    Reading(3.1, 180),
                    new RegulatorMechanics(diaphragm, seat, Open),
                    RegulatorReference.Ambient,
                    null!
                )
        );
    }

    private static RegulatorMechanics.Restriction Open =>
        new(Pressure.FromBars(0.6), VolumeFlow.FromLitersPerHour(300), Petrol);

    private static BypassRegulator.BenchReading Reading(double bar, double litersPerHour) =>
        new(Pressure.FromBars(bar), VolumeFlow.FromLitersPerHour(litersPerHour));

    private static BypassRegulator Build(BypassRegulator.BenchReading first, BypassRegulator.BenchReading second) =>
        new(
            "trainer",
            first,
            second,
            new RegulatorMechanics(Area.FromSquareCentimeters(8), Area.FromSquareCentimeters(0.4), Open),
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
            new RegulatorMechanics(Area.FromSquareCentimeters(diaphragm), Area.FromSquareCentimeters(seat), Open),
            RegulatorReference.Manifold,
            Setting.Source
        );
}
