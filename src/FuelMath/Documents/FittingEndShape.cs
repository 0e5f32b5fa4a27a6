using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>An end of a fitting, hose or port: by the size of its standard, by its diameter, or by its thread.</summary>
internal static class FittingEndShape
{
    private static readonly ValueProperty<FittingEnd, EndGender> Gender = new(
        "gender",
        "A stud, cone, bolt, tube nut, tube end or barb is male; what it goes into is female.",
        new ChoiceShape<EndGender>(("male", EndGender.Male), ("female", EndGender.Female)),
        e => e.Gender
    );

    private static readonly ValueProperty<FittingEnd, int> Dash = new(
        "dash",
        "Its dash size, a whole number without the dash.",
        new CountShape(1, 100),
        e => int.Parse(e.TableSize!, CultureInfo.InvariantCulture)
    );

    private static readonly ValueProperty<FittingEnd, int> MetricSize = new(
        "size",
        "Diameter of its thread in whole millimeters, as it is called: 14 for M14x1.5.",
        new CountShape(1, 100),
        e => int.Parse(e.TableSize!, CultureInfo.InvariantCulture)
    );

    private static readonly ValueProperty<FittingEnd, string> PipeSize = new(
        "size",
        "Its pipe size, such as 1/4.",
        TextShape.Name,
        e => e.TableSize!
    );

    private static readonly ValueProperty<FittingEnd, Length> TubeDiameter = new(
        "tubeDiameter",
        "Outside diameter of the tube end.",
        QuantityShapes.SmallLength,
        e => e.Diameter
    );

    private static readonly ValueProperty<FittingEnd, Length> HoseBore = new(
        "hoseBore",
        "Bore of the hose.",
        QuantityShapes.SmallLength,
        e => e.Diameter
    );

    private static readonly ValueProperty<FittingEnd, EndForm> Form = new(
        "form",
        "Its form, one with a thread.",
        new ChoiceShape<EndForm>(
            ("37 degree flare", EndForm.Flare37),
            ("O-ring boss", EndForm.ORingBoss),
            ("45 degree flare", EndForm.Flare45),
            ("metric O-ring port", EndForm.MetricORingPort),
            ("NPT", EndForm.PipeTaper),
            ("NPTF", EndForm.PipeTaperDryseal),
            ("ISO 228", EndForm.PipeParallelBonded),
            ("ISO 7", EndForm.PipeTaperWhitworth),
            ("banjo", EndForm.Banjo),
            ("inverted flare", EndForm.InvertedFlare),
            ("bubble flare", EndForm.BubbleFlare)
        ),
        e => e.Form
    );

    private static readonly ValueProperty<FittingEnd, ScrewThread> Thread = new(
        "thread",
        "Its thread.",
        ScrewThreadShape.Shape,
        e => e.Thread!
    );

    private static readonly ValueProperty<FittingEnd, DataSource> Source = SourceShape.Of<FittingEnd>(e => e.Source);

    internal static UnionShape<FittingEnd> Shape { get; } =
        new(
            Sized("37 degree flare", EndForm.Flare37, Dash, FittingEnd.Flare37),
            Sized("O-ring boss", EndForm.ORingBoss, Dash, FittingEnd.ORingBoss),
            Sized("45 degree flare", EndForm.Flare45, Dash, FittingEnd.Flare45),
            Sized("metric O-ring port", EndForm.MetricORingPort, MetricSize, FittingEnd.MetricORingPort),
            Sized("NPT", EndForm.PipeTaper, PipeSize, FittingEnd.PipeTaper),
            Sized("NPTF", EndForm.PipeTaperDryseal, PipeSize, FittingEnd.PipeTaperDryseal),
            Sized("ISO 228", EndForm.PipeParallelBonded, PipeSize, FittingEnd.PipeParallelBonded),
            Sized("ISO 7", EndForm.PipeTaperWhitworth, PipeSize, FittingEnd.PipeTaperWhitworth),
            UnionCase<FittingEnd>.Of(
                new ObjectShape<FittingEnd>(
                    "quick-connect-end",
                    "A quick connect.",
                    [Kind("quick connect"), TubeDiameter, Gender],
                    f => FittingEnd.QuickConnect(f.Of(TubeDiameter), f.Of(Gender))
                ),
                e => e.Form == EndForm.QuickConnect
            ),
            UnionCase<FittingEnd>.Of(
                new ObjectShape<FittingEnd>(
                    "hose-barb-end",
                    "A barb for a hose, which goes on with a clamp.",
                    [Kind("hose barb"), HoseBore],
                    f => FittingEnd.HoseBarb(f.Of(HoseBore))
                ),
                e => e.Form == EndForm.HoseBarb && e.Gender == EndGender.Male
            ),
            UnionCase<FittingEnd>.Of(
                new ObjectShape<FittingEnd>(
                    "open-hose-end",
                    "The open end of a hose that goes on a barb.",
                    [Kind("open hose"), HoseBore],
                    f => FittingEnd.OpenHose(f.Of(HoseBore))
                ),
                e => e.Form == EndForm.HoseBarb
            ),
            UnionCase<FittingEnd>.Of(
                new ObjectShape<FittingEnd>(
                    "end-by-thread",
                    "An end of a size that no table has, or a banjo or brake-type flare.",
                    [Kind("by thread"), Form, Gender, Thread, Source],
                    f => FittingEnd.FromThread(f.Of(Form), f.Of(Gender), f.Of(Thread), f.Of(Source))
                ),
                e => e.Thread is not null && e.TableSize is null
            )
        );

    private static UnionCase<FittingEnd> Sized<TSize>(
        string word,
        EndForm form,
        ValueProperty<FittingEnd, TSize> size,
        Func<TSize, EndGender, FittingEnd> make
    ) =>
        UnionCase<FittingEnd>.Of(
            new ObjectShape<FittingEnd>(
                $"{word.Replace(' ', '-')}-end",
                $"{word}, by its size.",
                [Kind(word), size, Gender],
                f => make(f.Of(size), f.Of(Gender))
            ),
            e => e.Form == form && e.TableSize is not null
        );

    private static WordProperty<FittingEnd> Kind(string word) => new("kind", "What it is.", word);
}
