using UnitsNet;

namespace FuelMath;

/// <summary>One piece of a line plan.</summary>
internal static class LinePieceShape
{
    private static readonly ValueProperty<LinePiece, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        p => p.Name
    );

    private static readonly ValueProperty<LinePiece, FittingEnd> PortEnd = new(
        "end",
        "Its end.",
        FittingEndShape.Shape,
        p => p.End ?? p.Start!
    );

    private static readonly ValueProperty<LinePiece, FittingEnd> FirstEnd = new(
        "first",
        "Its end towards the start of the line.",
        FittingEndShape.Shape,
        p => p.Start!
    );

    private static readonly ValueProperty<LinePiece, FittingEnd> SecondEnd = new(
        "second",
        "Its end towards the end of the line.",
        FittingEndShape.Shape,
        p => p.End!
    );

    private static readonly ValueProperty<LinePiece, Fitting> Loss = new(
        "loss",
        "What it costs.",
        FittingShape.Shape,
        p => p.AdapterLoss!
    );

    private static readonly ValueProperty<LinePiece, string> Stock = new(
        "stock",
        "What the hose is cut from, as it is bought.",
        TextShape.Name,
        p => p.Hose!.Stock
    );

    private static readonly ValueProperty<LinePiece, Length> Length = new(
        "length",
        "Length from seat to seat.",
        QuantityShapes.SmallLength,
        p => p.Hose!.Length
    );

    private static readonly ValueProperty<LinePiece, Length> Bore = new(
        "bore",
        "Inside diameter of the hose; a dash size is not one.",
        QuantityShapes.SmallLength,
        p => p.Hose!.Hose.Bore
    );

    private static readonly ValueProperty<LinePiece, Length> Roughness = new(
        "roughness",
        "Roughness of its wall.",
        QuantityShapes.SmallLength,
        p => p.Hose!.Hose.Roughness
    );

    private static readonly ValueProperty<LinePiece, EndFitting> First = new(
        "first",
        "The fitting towards the start of the line.",
        EndFittingShape.Shape,
        p => p.Hose!.First
    );

    private static readonly ValueProperty<LinePiece, EndFitting> Second = new(
        "second",
        "The fitting towards the end of the line.",
        EndFittingShape.Shape,
        p => p.Hose!.Second
    );

    private static readonly ValueProperty<LinePiece, DataSource> Source = SourceShape.Of<LinePiece>(p =>
        p.Hose!.Hose.Source
    );

    internal static UnionShape<LinePiece> Shape { get; } =
        new(
            UnionCase<LinePiece>.Of(
                new ObjectShape<LinePiece>(
                    "from-port-piece",
                    "The port that the line starts from; it is there already.",
                    [Kind("from port"), Name, PortEnd],
                    f => LinePiece.FromPort(f.Of(Name), f.Of(PortEnd))
                ),
                p => p.IsPort && p.Start is null
            ),
            UnionCase<LinePiece>.Of(
                new ObjectShape<LinePiece>(
                    "to-port-piece",
                    "The port that the line leads to; it is there already.",
                    [Kind("to port"), Name, PortEnd],
                    f => LinePiece.ToPort(f.Of(Name), f.Of(PortEnd))
                ),
                p => p.IsPort
            ),
            UnionCase<LinePiece>.Of(
                new ObjectShape<LinePiece>(
                    "adapter-piece",
                    "An adapter.",
                    [Kind("adapter"), Name, FirstEnd, SecondEnd, Loss],
                    f => LinePiece.Between(new(f.Of(Name), f.Of(FirstEnd), f.Of(SecondEnd)), f.Of(Loss))
                ),
                p => p.Adapter is not null
            ),
            UnionCase<LinePiece>.Of(
                new ObjectShape<LinePiece>(
                    "hose-piece",
                    "A hose cut to length with a fitting on either end.",
                    [Kind("hose"), Name, Stock, Length, Bore, Roughness, First, Second, Source],
                    f =>
                        LinePiece.Along(
                            new(
                                f.Of(Name),
                                f.Of(Stock),
                                f.Of(Length),
                                f.Of(Bore),
                                f.Of(Roughness),
                                f.Of(First),
                                f.Of(Second),
                                f.Of(Source)
                            )
                        )
                ),
                p => p.Hose is not null
            )
        );

    private static WordProperty<LinePiece> Kind(string word) => new("kind", "What it is.", word);
}
