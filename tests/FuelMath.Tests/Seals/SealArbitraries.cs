using FsCheck;
using FsCheck.Fluent;
using FuelMath.Joints;
using UnitsNet;

namespace FuelMath.Tests.Seals;

/// <summary>A ring and its groove as plain numbers, mm and fractions.</summary>
public sealed record FitMeasures(double Inside, double Section, double StretchFraction, double RoomFraction, double Off)
{
    public static DataSource Source { get; } = new("Definition", "generated");

    public ORing Ring => new("generated", Mm(Inside, Off), Mm(Section, Off), Source);

    public double Groove => Inside * (1 + StretchFraction);

    public Gland Piston =>
        Gland.Piston(Mm(Groove, Off), Mm(Groove + (2 * Section * RoomFraction), Off), Mm(1.4 * Section, Off));

    public static TolerancedLength Mm(double nominal, double off) =>
        new(Length.FromMillimeters(nominal), Length.FromMillimeters(off));

    public ORingFit ToFit() => new(Ring, Piston, ORingFit.Conditions.AsMade);
}

public static class SealArbitraries
{
    public static Arbitrary<FitMeasures> Fits() =>
        (
            from inside in Gen.Choose(60, 300)
            from section in Gen.Choose(15, 40)
            from stretch in Gen.Choose(-20, 80)
            from room in Gen.Choose(60, 110)
            from off in Gen.Choose(0, 80)
            select new FitMeasures(inside / 10.0, section / 10.0, stretch / 1000.0, room / 100.0, off / 1000.0)
        ).ToArbitrary();
}
