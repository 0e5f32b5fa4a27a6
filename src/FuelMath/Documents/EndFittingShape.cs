using UnitsNet;

namespace FuelMath;

/// <summary>The fitting on one end of a hose.</summary>
internal static class EndFittingShape
{
    private static readonly ValueProperty<EndFitting, FittingEnd> End = new(
        "end",
        "The end that it offers to the next part.",
        FittingEndShape.Shape,
        e => e.End
    );

    private static readonly ValueProperty<EndFitting, Fitting> Loss = new(
        "loss",
        "What it costs, with the name by which it is bought.",
        FittingShape.Shape,
        e => e.Loss
    );

    private static readonly ValueProperty<EndFitting, Length> CutAllowance = new(
        "cutAllowance",
        "By how much the hose is cut shorter for it.",
        QuantityShapes.SmallLength,
        e => e.CutAllowance
    );

    internal static ObjectShape<EndFitting> Shape { get; } =
        new(
            "end-fitting",
            "The fitting on one end of a hose.",
            [End, Loss, CutAllowance],
            f => new(f.Of(End), f.Of(Loss), f.Of(CutAllowance))
        );
}
