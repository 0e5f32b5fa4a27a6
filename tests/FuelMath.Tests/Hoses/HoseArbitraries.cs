using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Hoses;

/// <summary>Measures of a hose as plain numbers: mm, m, share of the bore, pure number.</summary>
public sealed record HoseMeasures(double BoreMillimeters, double LengthMeters, double RelativeRoughness, double Loss)
{
    public static DataSource Source { get; } = new("Definition", "generated");

    public Hose ToHose() =>
        new(
            "generated",
            Length.FromMeters(LengthMeters),
            Length.FromMillimeters(BoreMillimeters),
            Length.FromMillimeters(BoreMillimeters * RelativeRoughness),
            Ratio.FromDecimalFractions(Loss),
            Source
        );
}

/// <summary>A flow in L/h, either direction, from creeping to far into the turbulent.</summary>
public readonly record struct HoseFlow(double LitersPerHour)
{
    public VolumeFlow Flow => VolumeFlow.FromLitersPerHour(LitersPerHour);
}

public static class HoseArbitraries
{
    public static Arbitrary<HoseMeasures> Hoses() =>
        (
            from bore in Gen.Choose(30, 250)
            from length in Gen.Choose(1, 60)
            from roughness in Gen.Choose(0, 500)
            from loss in Gen.Choose(0, 80)
            select new HoseMeasures(bore / 10.0, length / 10.0, roughness / 1e4, loss / 10.0)
        ).ToArbitrary();

    public static Arbitrary<HoseFlow> Flows() =>
        (
            from exponent in Gen.Choose(-300, 320)
            from sign in Gen.Elements(-1, 1)
            select new HoseFlow(sign * Math.Pow(10, exponent / 100.0))
        ).ToArbitrary();
}
