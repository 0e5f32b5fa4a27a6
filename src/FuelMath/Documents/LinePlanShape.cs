using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A line plan, piece by piece.</summary>
internal static class LinePlanShape
{
    private static readonly ValueProperty<LinePlan, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        l => l.Name
    );

    private static readonly ValueProperty<LinePlan, ImmutableArray<LinePiece>> Pieces = new(
        "pieces",
        "Its pieces from start to end; ports only at its ends.",
        new ListShape<LinePiece>(LinePieceShape.Shape, 2, 1000),
        l => l.Pieces
    );

    internal static ObjectShape<LinePlan> Shape { get; } =
        new(
            "line-plan",
            "A line, piece by piece: ports, adapters, hoses with their fittings.",
            [
                new WordProperty<LinePlan>("document", "What the document is.", "line plan"),
                new WordProperty<LinePlan>("version", "The version of its form.", "1"),
                Name,
                Pieces,
            ],
            f => new(f.Of(Name), f.Of(Pieces))
        );
}
