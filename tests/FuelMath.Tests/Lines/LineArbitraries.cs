using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Lines;

/// <summary>A line of hoses and adapters of one bore, as plain numbers: lengths in mm from seat to seat, and coefficients.</summary>
public sealed record LineMeasures(IReadOnlyList<int> LengthsMillimeters, double Loss, double Allowance)
{
    public static DataSource Source { get; } = new("Definition", "generated");

    public static Fitting Fitting(string name, double loss) =>
        new(
            name,
            Length.FromMillimeters(7),
            Ratio.FromDecimalFractions(loss),
            FuelMath.Fitting.LossBasis.Supplied,
            Source
        );

    public LinePlan ToLine() =>
        new(
            "generated",
            [
                new LinePlan.StartPort("pump", FittingEnd.Flare37(6, FittingEnd.EndGender.Male)),
                .. LengthsMillimeters.SelectMany(
                    (length, i) =>
                        new LinePlan.Piece[]
                        {
                            new LinePlan.HosePiece(Hose($"hose {i}", length)),
                            new LinePlan.AdapterPiece(
                                new(
                                    "union",
                                    FittingEnd.Flare37(6, FittingEnd.EndGender.Male),
                                    FittingEnd.Flare37(6, FittingEnd.EndGender.Male)
                                ),
                                Fitting("union", Loss)
                            ),
                        }
                ),
            ]
        );

    public HoseAssembly Hose(string name, double millimeters) =>
        new(
            name,
            new HoseStock("stock", Length.FromMillimeters(8.7), Length.FromMicrometers(1.5)),
            Length.FromMillimeters(millimeters),
            End("straight"),
            End("elbow"),
            Source
        );

    private HoseAssembly.EndFitting End(string name) =>
        new(FittingEnd.Flare37(6, FittingEnd.EndGender.Female), Fitting(name, Loss), Length.FromMillimeters(Allowance));
}

public static class LineArbitraries
{
    public static Arbitrary<LineMeasures> Lines() =>
        (
            from count in Gen.Choose(1, 5)
            from lengths in Gen.Choose(120, 2000).ListOf(count)
            from loss in Gen.Choose(0, 40)
            from allowance in Gen.Choose(0, 50)
            select new LineMeasures([.. lengths], loss / 10.0, allowance)
        ).ToArbitrary();
}
