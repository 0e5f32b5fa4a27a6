using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Fittings;

/// <summary>A fitting as plain numbers: mm and a pure number.</summary>
public sealed record FittingMeasures(double BoreMillimeters, double Loss)
{
    public static DataSource Source { get; } = new("Definition", "generated");

    public Fitting ToFitting() =>
        new(
            "generated",
            Length.FromMillimeters(BoreMillimeters),
            Ratio.FromDecimalFractions(Loss),
            Fitting.LossBasis.Supplied,
            Source
        );
}

/// <summary>A tee as plain numbers, with a share of flow.</summary>
public sealed record TeeMeasures(double BoreMillimeters, double BranchFraction, double Degrees, double Share)
{
    public Tee ToTee() =>
        new(
            "generated",
            Length.FromMillimeters(BoreMillimeters),
            Length.FromMillimeters(BoreMillimeters * BranchFraction),
            Angle.FromDegrees(Degrees)
        );
}

/// <summary>Any end that the library can describe.</summary>
public sealed record AnyEnd(FittingEnd End);

/// <summary>A shelf of adapters between few ends, so that chains exist, and two ends to connect.</summary>
public sealed record Shelf(FittingEnd From, FittingEnd To, IReadOnlyList<Adapter> Adapters);

public static class FittingArbitraries
{
    public static DataSource Drawing { get; } = new("Workshop-class", "drawing of a generated part");

    public static IReadOnlyList<FittingEnd> AllEnds { get; } =
    [.. Enum.GetValues<FittingEnd.EndGender>().SelectMany(EndsOf)];

    public static Arbitrary<FittingMeasures> Fittings() =>
        (
            from bore in Gen.Choose(30, 250)
            from loss in Gen.Choose(0, 80)
            select new FittingMeasures(bore / 10.0, loss / 10.0)
        ).ToArbitrary();

    public static Arbitrary<TeeMeasures> Tees() =>
        (
            from bore in Gen.Choose(40, 200)
            from branch in Gen.Choose(30, 100)
            from degrees in Gen.Choose(30, 90)
            from share in Gen.Choose(0, 1000)
            select new TeeMeasures(bore / 10.0, branch / 100.0, degrees, share / 1000.0)
        ).ToArbitrary();

    public static Arbitrary<AnyEnd> Ends() =>
        Gen.Elements(AllEnds.AsEnumerable()).Select(e => new AnyEnd(e)).ToArbitrary();

    public static Arbitrary<Shelf> Shelves()
    {
        FittingEnd[] few =
        [
            .. Enum.GetValues<FittingEnd.EndGender>()
                .SelectMany(g =>
                    new[]
                    {
                        FittingEnd.Flare37(6, g),
                        FittingEnd.ORingBoss(6, g),
                        FittingEnd.Flare37(8, g),
                        FittingEnd.MetricORingPort(14, g),
                        FittingEnd.PipeTaper("1/4", g),
                    }
                ),
        ];
        return (
            from start in Gen.Elements(few.AsEnumerable())
            from goal in Gen.Elements(few.AsEnumerable())
            from ends in Gen.Elements(few.AsEnumerable()).Two().ListOf(6)
            select new Shelf(start, goal, [.. ends.Select((e, i) => new Adapter($"piece {i}", e.Item1, e.Item2))])
        ).ToArbitrary();
    }

    private static IEnumerable<FittingEnd> EndsOf(FittingEnd.EndGender gender)
    {
        foreach (int dash in (int[])[2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 24, 32])
        {
            yield return FittingEnd.Flare37(dash, gender);
            yield return FittingEnd.ORingBoss(dash, gender);
        }

        foreach (int dash in (int[])[2, 3, 4, 5, 6, 8, 10, 12])
        {
            yield return FittingEnd.Flare45(dash, gender);
        }

        foreach (int size in (int[])[8, 10, 12, 14, 16, 18, 22, 27, 33, 42, 48, 60])
        {
            yield return FittingEnd.MetricORingPort(size, gender);
        }

        foreach (string size in (string[])["1/8", "1/4", "3/8", "1/2", "3/4", "1"])
        {
            yield return FittingEnd.PipeTaper(size, gender);
            yield return FittingEnd.PipeTaperDryseal(size, gender);
            yield return FittingEnd.PipeParallelBonded(size, gender);
            yield return FittingEnd.PipeTaperWhitworth(size, gender);
        }

        foreach (
            FittingEnd.EndForm form in (FittingEnd.EndForm[])
                [FittingEnd.EndForm.Banjo, FittingEnd.EndForm.InvertedFlare, FittingEnd.EndForm.BubbleFlare]
        )
        {
            foreach ((double diameter, double pitch) in ((double, double)[])[(10, 1), (12, 1), (12, 1.5), (14, 1.5)])
            {
                ScrewThread thread = ScrewThread.FromMetric(
                    Length.FromMillimeters(diameter),
                    Length.FromMillimeters(pitch)
                );
                yield return FittingEnd.FromThread(form, gender, thread, Drawing);
            }
        }

        foreach (double diameter in (double[])[6.3, 7.89, 8, 9.49, 11.8])
        {
            yield return FittingEnd.QuickConnect(Length.FromMillimeters(diameter), gender);
            yield return gender == FittingEnd.EndGender.Male
                ? FittingEnd.HoseBarb(Length.FromMillimeters(diameter))
                : FittingEnd.OpenHose(Length.FromMillimeters(diameter));
        }
    }
}
