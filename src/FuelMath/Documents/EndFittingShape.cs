namespace FuelMath;

/// <summary>The fitting on one end of a hose.</summary>
internal static class EndFittingShape
{
    internal static ObjectShape<HoseAssembly.EndFitting> Shape { get; } =
        new(o =>
        {
            o.Is("end-fitting", "The fitting on one end of a hose.");
            var end = o.Required("end", FittingEndShape.Shape, e => e.End)
                .Says("The end that it offers to the next part.");
            var loss = o.Required("loss", FittingShape.Shape, e => e.Loss)
                .Says("What it costs, with the name by which it is bought.");
            var cutAllowance = o.Required("cutAllowance", QuantityShapes.SmallLength.NotNegative, e => e.CutAllowance)
                .Says("By how much the hose is cut shorter for it.");
            return f => new(f.Of(end), f.Of(loss), f.Of(cutAllowance));
        });
}
