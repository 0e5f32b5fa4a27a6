using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A part between two nodes.</summary>
internal static class LineShape
{
    private static readonly ValueProperty<Line, string> Name = new("name", "Its name.", TextShape.Name, l => l.Name);

    private static readonly ValueProperty<Line, string> From = new(
        "from",
        "The node that it starts from.",
        TextShape.Name,
        l => l.From
    );

    private static readonly ValueProperty<Line, string> To = new(
        "to",
        "The node that it leads to.",
        TextShape.Name,
        l => l.To
    );

    private static readonly PartWord Hose = PartWord.Of(
        "hose",
        HoseShape.Shape,
        part => part as Hose ?? (part as FittedHose)?.Hose
    );

    /// <summary>All parts that a document can hold: a new one is one more here.</summary>
    private static readonly ImmutableArray<PartWord> Parts =
    [
        Hose,
        PartWord.Of("fitting", FittingShape.Shape),
        PartWord.Of("filter", FilterShape.Shape),
        PartWord.Of("pump", PumpShape.Shape),
        PartWord.Of("regulator", RegulatorShape.Shape),
        PartWord.Of("reducingRegulator", ReducingRegulatorShape.Shape),
        PartWord.Of("reliefValve", ReliefValveShape.Shape),
        PartWord.Of("jet", JetShape.Shape),
        PartWord.Of("lossTable", LossTableShape.Shape),
        PartWord.Of("checkValve", OpeningShapes.CheckValve),
        PartWord.Of("pipe", PassageShapes.Pipe),
        PartWord.Of("curvedPipe", PassageShapes.CurvedPipe),
        PartWord.Of("plainFitting", PassageShapes.Fitting),
        PartWord.Of("plainFilter", PassageShapes.Filter),
        PartWord.Of("plainPump", PlainPumpShape.Shape),
        PartWord.Of(
            "plainBypassRegulator",
            PlainRegulatorShape.Bypass,
            p => p is PlainRegulator { IsBypass: true } r ? r : null
        ),
        PartWord.Of(
            "plainReducingRegulator",
            PlainRegulatorShape.Reducing,
            p => p is PlainRegulator { IsBypass: false } r ? r : null
        ),
        PartWord.Of("nozzle", OpeningShapes.Nozzle),
        PartWord.Of("injectorDraw", OpeningShapes.Draw),
    ];

    private static readonly ValueProperty<Line, ImmutableArray<Fitting>> Fittings = new(
        "fittings",
        "The fittings on the hose, whose losses its own coefficient does not hold; none when left out.",
        new ListShape<Fitting>(FittingShape.Shape, 1, 100),
        l => FittingsOf(l),
        l => !FittingsOf(l).IsEmpty,
        []
    );

    private static readonly ValueProperty<Line, PumpSwitch> Switch = new(
        "switch",
        "What lets its pump join and leave; it always runs when left out.",
        PumpSwitchShape.Shape,
        l => l.Switch!,
        l => l.Switch is not null,
        null!
    );

    internal static ObjectShape<Line> Shape { get; } =
        new(
            "line",
            "A part between two nodes.",
            [Name, From, To, Hose.Property, Fittings, .. Parts.Skip(1).Select(p => p.Property), Switch],
            f => f.Has(Switch) ? Make(f).SwitchedBy(f.Of(Switch)) : Make(f)
        )
        {
            ExactlyOne = [.. Parts.Select(p => p.Property.Name)],
            CheckWritten = RefuseUnknown,
        };

    private static ImmutableArray<Fitting> FittingsOf(Line line) => (line.Part as FittedHose)?.Fittings ?? [];

    private static Line Make(Fields<Line> f)
    {
        (string name, string from, string to) = (f.Of(Name), f.Of(From), f.Of(To));
        PartWord word = Parts.First(p => f.Has(p.Property));
        if (!f.Has(Fittings))
        {
            return new(name, from, to, word.Read(f));
        }

        return word == Hose
            ? new(name, from, to, new FittedHose((Hose)word.Read(f), f.Of(Fittings)))
            : throw new ArgumentException($"Only a hose carries fittings; line '{name}' has no hose.");
    }

    private static void RefuseUnknown(Line line)
    {
        if (!Parts.Any(p => p.Property.IsIn(line)))
        {
            throw new ArgumentException(
                $"A document can't hold the part of line '{line.Name}', a {line.Part.GetType().Name.Split('`')[0]}: it holds {JsonItem.Quoted(Parts.Select(p => p.Property.Name))}."
            );
        }
    }
}
