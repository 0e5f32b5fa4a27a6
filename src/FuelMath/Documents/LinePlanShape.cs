namespace FuelMath;

/// <summary>A line plan, piece by piece.</summary>
internal static class LinePlanShape
{
    internal static ObjectShape<LinePlan> Shape { get; } =
        new(o =>
        {
            o.Is("line-plan", "A line, piece by piece: ports, adapters, hoses with their fittings.");
            o.Document("line plan");
            var name = o.Named(l => l.Name);
            var pieces = o.Required("pieces", LinePieceShape.Shape.List(2, 1000), l => l.Pieces)
                .Says("Its pieces from start to end; ports only at its ends.");
            return f => new(f.Of(name), f.Of(pieces));
        });
}
