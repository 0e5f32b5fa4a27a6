using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>An end of a fitting, hose or port: by the size of its standard, by its diameter, or by its thread.</summary>
internal static class FittingEndShape
{
    private const string MetricSays = "Diameter of its thread in whole millimeters, as it is called: 14 for M14x1.5.";

    private static readonly ChoiceShape<FittingEnd.EndForm> Threaded = ChoiceShape.Of(
        ("37 degree flare", FittingEnd.EndForm.Flare37),
        ("O-ring boss", FittingEnd.EndForm.ORingBoss),
        ("45 degree flare", FittingEnd.EndForm.Flare45),
        ("metric O-ring port", FittingEnd.EndForm.MetricORingPort),
        ("NPT", FittingEnd.EndForm.PipeTaper),
        ("NPTF", FittingEnd.EndForm.PipeTaperDryseal),
        ("ISO 228", FittingEnd.EndForm.PipeParallelBonded),
        ("ISO 7", FittingEnd.EndForm.PipeTaperWhitworth),
        ("banjo", FittingEnd.EndForm.Banjo),
        ("inverted flare", FittingEnd.EndForm.InvertedFlare),
        ("bubble flare", FittingEnd.EndForm.BubbleFlare)
    );

    internal static UnionShape<FittingEnd> Shape { get; } =
        new(
            Dash(FittingEnd.EndForm.Flare37, EndTables.InchStraight, FittingEnd.Flare37),
            Dash(FittingEnd.EndForm.ORingBoss, EndTables.InchStraight, FittingEnd.ORingBoss),
            Dash(FittingEnd.EndForm.Flare45, EndTables.Flare45, FittingEnd.Flare45),
            Sized(
                FittingEnd.EndForm.MetricORingPort,
                "size",
                MetricSays,
                Whole(EndTables.MetricPort),
                Number,
                FittingEnd.MetricORingPort
            ),
            Pipe(FittingEnd.EndForm.PipeTaper, EndTables.Npt, FittingEnd.PipeTaper),
            Pipe(FittingEnd.EndForm.PipeTaperDryseal, EndTables.Nptf, FittingEnd.PipeTaperDryseal),
            Pipe(FittingEnd.EndForm.PipeParallelBonded, EndTables.ParallelPipe, FittingEnd.PipeParallelBonded),
            Pipe(FittingEnd.EndForm.PipeTaperWhitworth, EndTables.TaperPipe, FittingEnd.PipeTaperWhitworth),
            new(o =>
            {
                o.Is("quick-connect-end", "A quick connect.");
                o.Kind("quick connect", e => e.Form == FittingEnd.EndForm.QuickConnect);
                var diameter = o.Required("tubeDiameter", QuantityShapes.SmallLength.Positive, e => e.Diameter)
                    .Says("Outside diameter of the tube end.");
                var gender = Gender(o);
                return f => FittingEnd.QuickConnect(f.Of(diameter), f.Of(gender));
            }),
            new(o =>
            {
                o.Is("hose-barb-end", "A barb for a hose, which goes on with a clamp.");
                o.Kind(
                    "hose barb",
                    e => e.Form == FittingEnd.EndForm.HoseBarb && e.Gender == FittingEnd.EndGender.Male
                );
                var bore = o.Required("hoseBore", QuantityShapes.SmallLength.Positive, e => e.Diameter)
                    .Says("Bore of the hose.");
                return f => FittingEnd.HoseBarb(f.Of(bore));
            }),
            new(o =>
            {
                o.Is("open-hose-end", "The open end of a hose that goes on a barb.");
                o.Kind("open hose", e => e.Form == FittingEnd.EndForm.HoseBarb);
                var bore = o.Required("hoseBore", QuantityShapes.SmallLength.Positive, e => e.Diameter)
                    .Says("Bore of the hose.");
                return f => FittingEnd.OpenHose(f.Of(bore));
            }),
            new(o =>
            {
                o.Is("end-by-thread", "An end of a size that no table has, or a banjo or brake-type flare.");
                o.Kind("by thread", e => e.Thread is not null && e.TableSize is null);
                var form = o.Required("form", Threaded, e => e.Form).Says("Its form, one with a thread.");
                var gender = Gender(o);
                var thread = o.Required("thread", ScrewThreadShape.Shape, e => e.Thread!).Says("Its thread.");
                var source = o.Source(e => e.Source);
                return f => FittingEnd.FromThread(f.Of(form), f.Of(gender), f.Of(thread), f.Of(source));
            })
        );

    private static ObjectShape<FittingEnd> Dash(
        FittingEnd.EndForm form,
        ImmutableSortedDictionary<int, ScrewThread> table,
        Func<int, FittingEnd.EndGender, FittingEnd> make
    ) => Sized(form, "dash", "Its dash size, a whole number without the dash.", Whole(table), Number, make);

    private static ObjectShape<FittingEnd> Pipe(
        FittingEnd.EndForm form,
        ImmutableSortedDictionary<string, ScrewThread> table,
        Func<string, FittingEnd.EndGender, FittingEnd> make
    ) =>
        Sized(
            form,
            "size",
            "Its pipe size, such as 1/4.",
            new TableKeyShape<string>(TextShape.Name, table.Keys),
            e => e.TableSize!,
            make
        );

    private static TableKeyShape<int> Whole(ImmutableSortedDictionary<int, ScrewThread> table) =>
        new(new CountShape(1, 100), table.Keys);

    private static ObjectShape<FittingEnd> Sized<TSize>(
        FittingEnd.EndForm form,
        string name,
        string description,
        Shape<TSize> shape,
        Func<FittingEnd, TSize> get,
        Func<TSize, FittingEnd.EndGender, FittingEnd> make
    ) =>
        new(o =>
        {
            string word = Threaded.WordOf(form);
            o.Is($"{word.Replace(' ', '-')}-end", $"{word}, by its size.");
            o.Kind(word, e => e.Form == form && e.TableSize is not null);
            var size = o.Required(name, shape, get).Says(description);
            var gender = Gender(o);
            return f => make(f.Of(size), f.Of(gender));
        });

    private static ValueProperty<FittingEnd, FittingEnd.EndGender> Gender(ObjectBuilder<FittingEnd> o) =>
        o.Required(
                "gender",
                ChoiceShape.Of(("male", FittingEnd.EndGender.Male), ("female", FittingEnd.EndGender.Female)),
                e => e.Gender
            )
            .Says("A stud, cone, bolt, tube nut, tube end or barb is male; what it goes into is female.");

    private static int Number(FittingEnd end) => int.Parse(end.TableSize!, CultureInfo.InvariantCulture);
}
