namespace FuelMath;

/// <summary>One piece of a line plan.</summary>
internal static class LinePieceShape
{
    internal static UnionShape<LinePlan.Piece> Shape { get; } =
        new(
            new(o =>
            {
                o.Is("from-port-piece", "The port that the line starts from; it is there already.");
                o.Kind("from port", p => p is LinePlan.StartPort);
                var name = o.Named(p => p.Name);
                var end = o.Required("end", FittingEndShape.Shape, p => p.End!).Says("Its end.");
                return f => new LinePlan.StartPort(f.Of(name), f.Of(end));
            }),
            new(o =>
            {
                o.Is("to-port-piece", "The port that the line leads to; it is there already.");
                o.Kind("to port", p => p is LinePlan.EndPort);
                var name = o.Named(p => p.Name);
                var end = o.Required("end", FittingEndShape.Shape, p => p.Start!).Says("Its end.");
                return f => new LinePlan.EndPort(f.Of(name), f.Of(end));
            }),
            new(o =>
            {
                o.Is("adapter-piece", "An adapter.");
                o.Kind("adapter", p => p is LinePlan.AdapterPiece);
                var name = o.Named(p => p.Name);
                var first = o.Required("first", FittingEndShape.Shape, p => p.Start!)
                    .Says("Its end towards the start of the line.");
                var second = o.Required("second", FittingEndShape.Shape, p => p.End!)
                    .Says("Its end towards the end of the line.");
                var loss = o.Required("loss", FittingShape.Shape, p => ((LinePlan.AdapterPiece)p).Loss)
                    .Says("What it costs.");
                return f => new LinePlan.AdapterPiece(new(f.Of(name), f.Of(first), f.Of(second)), f.Of(loss));
            }),
            new(o =>
            {
                o.Is("hose-piece", "A hose cut to length with a fitting on either end.");
                o.Kind("hose", p => p is LinePlan.HosePiece);
                var name = o.Named(p => p.Name);
                var stock = o.Required("stock", TextShape.Name, p => HoseOf(p).Stock.Name)
                    .Says("What the hose is cut from, as it is bought.");
                var length = o.Required("length", QuantityShapes.SmallLength.Positive, p => HoseOf(p).Length)
                    .Says("Length from seat to seat.");
                var bore = o.Required("bore", QuantityShapes.SmallLength.Positive, p => HoseOf(p).Hose.Bore)
                    .Says("Inside diameter of the hose; a dash size is not one.");
                var roughness = o.Required(
                        "roughness",
                        QuantityShapes.SmallLength.NotNegative,
                        p => HoseOf(p).Hose.Roughness
                    )
                    .Says("Roughness of its wall.");
                var first = o.Required("first", EndFittingShape.Shape, p => HoseOf(p).First)
                    .Says("The fitting towards the start of the line.");
                var second = o.Required("second", EndFittingShape.Shape, p => HoseOf(p).Second)
                    .Says("The fitting towards the end of the line.");
                var source = o.Source(p => HoseOf(p).Hose.Source);
                return f => new LinePlan.HosePiece(
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

    private static HoseAssembly HoseOf(LinePlan.Piece piece) => ((LinePlan.HosePiece)piece).Hose;
}
