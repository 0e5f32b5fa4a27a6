using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A part between two nodes.</summary>
internal static class LineShape
{
    internal static ObjectShape<Line> Shape { get; } =
        new(o =>
        {
            o.Is("line", "A part between two nodes.");
            var name = o.Named(l => l.Name);
            var from = o.Required("from", TextShape.Name, l => l.From).Says("The node that it starts from.");
            var to = o.Required("to", TextShape.Name, l => l.To).Says("The node that it leads to.");

            // All parts that a document can represent.
            List<(Property<Line> Property, Func<Fields<Line>, FlowPart> Read)> parts = [];
            var hose = Part("hose", HoseShape.Shape, p => p as Hose ?? (p as FittedHose)?.Hose);
            var fittings = o.Optional("fittings", FittingShape.Shape.List(1, 100), FittingsOf)
                .Says("The fittings on the hose, whose losses its own coefficient does not hold; none when left out.");
            Part("fitting", FittingShape.Shape);
            Part("filter", FilterShape.Shape);
            Part("strainer", StrainerShape.Shape);
            Part("pump", PumpShape.Shape);
            Part("regulator", RegulatorShape.Shape);
            Part("reducingRegulator", ReducingRegulatorShape.Shape);
            Part("reliefValve", ReliefValveShape.Shape);
            Part("jet", JetShape.Shape);
            Part("lossTable", LossTableShape.Shape);
            Part("checkValve", OpeningShapes.CheckValve);
            Part("pipe", PassageShapes.Pipe);
            Part("curvedPipe", PassageShapes.CurvedPipe);
            Part("plainFitting", PassageShapes.Fitting);
            Part("plainFilter", PassageShapes.Filter);
            Part("plainPump", PlainPumpShape.Shape);
            Part(
                "plainBypassRegulator",
                PlainRegulatorShape.Bypass,
                p => p is PlainRegulator { IsBypass: true } r ? r : null
            );
            Part(
                "plainReducingRegulator",
                PlainRegulatorShape.Reducing,
                p => p is PlainRegulator { IsBypass: false } r ? r : null
            );
            Part("nozzle", OpeningShapes.Nozzle);
            Part("injectorDraw", OpeningShapes.Draw);
            o.With("switch", PumpSwitchShape.Shape, l => l.Switch, (l, v) => l.SwitchedBy(v))
                .Says("What lets its pump join and leave; it always runs when left out.");
            o.With("linePlan", LinePlanShape.Origin, l => l.Origin as LinePlan, (l, v) => l.MadeFrom(v))
                .Says("The plan that it was made from, whose joints are checked; its part says what is lost.");
            ImmutableArray<Property<Line>> words = [.. parts.Select(p => p.Property)];
            o.ExactlyOne(words);
            o.CheckWritten(line => RefuseUnknown(line, words));
            return f =>
            {
                FlowPart part = parts.First(p => f.Has(p.Property)).Read(f);
                return !f.Has(fittings) ? new(f.Of(name), f.Of(from), f.Of(to), part)
                    : f.Of(hose) is { } bare
                        ? new(f.Of(name), f.Of(from), f.Of(to), new FittedHose(bare, f.Of(fittings)))
                    : throw new RefusedArgumentException(
                        RefusalCode.HoseNeeded,
                        $"Only a hose carries fittings; line '{f.Of(name):part}' has no hose."
                    );
            };

            ValueProperty<Line, T?> Part<T>(string word, Shape<T> shape, Func<FlowPart, T?>? get = null)
                where T : FlowPart
            {
                var part = o.Optional(word, shape, l => get is null ? l.Part as T : get(l.Part), "part")
                    .Says($"The {word}, where the part is one.");
                parts.Add((part, f => f.Of(part)!));
                return part;
            }
        });

    private static ImmutableArray<Fitting> FittingsOf(Line line) => (line.Part as FittedHose)?.Fittings ?? [];

    private static void RefuseUnknown(Line line, ImmutableArray<Property<Line>> words)
    {
        if (!words.Any(w => w.IsIn(line)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotWritable,
                $"A document can't hold the part of line '{line.Name:part}', a {line.Part.GetType().Name.Split('`')[0]:given}: it holds {words.Select(w => JsonItem.Quote(w.Name)):allowed}."
            );
        }
    }
}
