namespace FuelMath;

/// <summary>A line plan, piece by piece.</summary>
internal static class LinePlanShape
{
    /// <summary>A document of its own.</summary>
    internal static ObjectShape<LinePlan> Shape { get; } = Of("line-plan", isDocument: true);

    /// <summary>What a line of another document was made from.</summary>
    internal static ObjectShape<LinePlan> Origin { get; } = Of("line-origin", isDocument: false);

    private static ObjectShape<LinePlan> Of(string definition, bool isDocument) =>
        new(o =>
        {
            o.Is(definition, "A line, piece by piece: ports, adapters, hoses with their fittings.");
            if (isDocument)
            {
                o.Document("line plan");
            }

            var name = o.Named(l => l.Name);
            var pieces = o.Required("pieces", LinePieceShape.Shape.List(2, 1000), l => l.Pieces)
                .Says("Its pieces from start to end; ports only at its ends.");
            return f => new(f.Of(name), f.Of(pieces));
        });
}
