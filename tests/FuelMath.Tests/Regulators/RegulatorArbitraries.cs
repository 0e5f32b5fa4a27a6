using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Regulators;

/// <summary>A regulator as plain numbers: bar, L/h, bar over 100 L/h, cm2, share of the diaphragm.</summary>
public sealed record Setting(double Bar, double LitersPerHour, double SlopePer100, double Diaphragm, double Seat)
{
    public static DataSource Source { get; } = new("Definition", "generated");

    public BypassRegulator ToRegulator() =>
        new(
            "generated",
            new BypassRegulator.BenchReading(Pressure.FromBars(Bar), VolumeFlow.FromLitersPerHour(LitersPerHour)),
            new BypassRegulator.BenchReading(
                Pressure.FromBars(Bar + SlopePer100),
                VolumeFlow.FromLitersPerHour(LitersPerHour + 100)
            ),
            new RegulatorMechanics(
                Area.FromSquareCentimeters(Diaphragm),
                Area.FromSquareCentimeters(Diaphragm * Seat),
                new RegulatorMechanics.Restriction(
                    Pressure.FromBars(0.3),
                    VolumeFlow.FromLitersPerHour(LitersPerHour + 100),
                    Density.FromKilogramsPerCubicMeter(745)
                )
            ),
            RegulatorReference.Manifold,
            Source
        );
}

/// <summary>Conditions at a regulator: bar gauge at the reference and in the return line, L/h bypassed.</summary>
public sealed record Around(double Reference, double Return, double LitersPerHour)
{
    public GaugePressure ReferencePressure => new(Pressure.FromBars(Reference));

    public GaugePressure ReturnPressure => new(Pressure.FromBars(Return));

    public VolumeFlow Flow => VolumeFlow.FromLitersPerHour(LitersPerHour);
}

public static class RegulatorArbitraries
{
    public static Arbitrary<Setting> Settings() =>
        (
            from centibar in Gen.Choose(150, 600)
            from flow in Gen.Choose(0, 300)
            from slope in Gen.Choose(0, 40)
            from area in Gen.Choose(20, 200)
            from seat in Gen.Choose(10, 300)
            // At 300 L/h a slope of 0.4 bar over 100 L/h takes 1.2 bar: the opening pressure stays above zero.
            select new Setting(centibar / 100.0, flow, slope / 100.0, area / 10.0, seat / 1000.0)
        ).ToArbitrary();

    public static Arbitrary<Around> Conditions() =>
        (
            from reference in Gen.Choose(-90, 250)
            from back in Gen.Choose(0, 100)
            from flow in Gen.Choose(1, 500)
            select new Around(reference / 100.0, back / 100.0, flow)
        ).ToArbitrary();
}
