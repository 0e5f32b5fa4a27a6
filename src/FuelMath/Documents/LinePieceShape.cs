namespace FuelMath;

/// <summary>One piece of a line plan.</summary>
internal static class LinePieceShape
{
    internal static UnionShape<LinePlan.Piece> Shape { get; } =
        new(
            new(o =>
            {
                o.Is("from-port-piece", "The port that the line starts from; it is there already.");
                o.Kind("from port", p => p.IsPort && p.Start is null);
                var name = o.Named(p => p.Name);
                var end = o.Required("end", FittingEndShape.Shape, p => p.End!).Says("Its end.");
                return f => LinePlan.Piece.FromPort(f.Of(name), f.Of(end));
            }),
            new(o =>
            {
                o.Is("to-port-piece", "The port that the line leads to; it is there already.");
                o.Kind("to port", p => p.IsPort);
                var name = o.Named(p => p.Name);
                var end = o.Required("end", FittingEndShape.Shape, p => p.Start!).Says("Its end.");
                return f => LinePlan.Piece.ToPort(f.Of(name), f.Of(end));
            }),
            new(o =>
            {
                o.Is("adapter-piece", "An adapter.");
                o.Kind("adapter", p => p.Adapter is not null);
                var name = o.Named(p => p.Name);
                var first = o.Required("first", FittingEndShape.Shape, p => p.Start!)
                    .Says("Its end towards the start of the line.");
                var second = o.Required("second", FittingEndShape.Shape, p => p.End!)
                    .Says("Its end towards the end of the line.");
                var loss = o.Required("loss", FittingShape.Shape, p => p.AdapterLoss!).Says("What it costs.");
                return f => LinePlan.Piece.Between(new(f.Of(name), f.Of(first), f.Of(second)), f.Of(loss));
            }),
            new(o =>
            {
                o.Is("hose-piece", "A hose cut to length with a fitting on either end.");
                o.Kind("hose", p => p.Hose is not null);
                var name = o.Named(p => p.Name);
                var stock = o.Required("stock", TextShape.Name, p => p.Hose!.Stock.Name)
                    .Says("What the hose is cut from, as it is bought.");
                var length = o.Required("length", QuantityShapes.SmallLength.Positive, p => p.Hose!.Length)
                    .Says("Length from seat to seat.");
                var bore = o.Required("bore", QuantityShapes.SmallLength.Positive, p => p.Hose!.Hose.Bore)
                    .Says("Inside diameter of the hose; a dash size is not one.");
                var roughness = o.Required(
                        "roughness",
                        QuantityShapes.SmallLength.NotNegative,
                        p => p.Hose!.Hose.Roughness
                    )
                    .Says("Roughness of its wall.");
                var first = o.Required("first", EndFittingShape.Shape, p => p.Hose!.First)
                    .Says("The fitting towards the start of the line.");
                var second = o.Required("second", EndFittingShape.Shape, p => p.Hose!.Second)
                    .Says("The fitting towards the end of the line.");
                var source = o.Source(p => p.Hose!.Hose.Source);
                return f =>
                    LinePlan.Piece.Along(
                        new(
                            f.Of(name),
                            new HoseStock(f.Of(stock), f.Of(bore), f.Of(roughness)),
                            f.Of(length),
                            f.Of(first),
                            f.Of(second),
                            f.Of(source)
                        )
                    );
            })
        );
}
