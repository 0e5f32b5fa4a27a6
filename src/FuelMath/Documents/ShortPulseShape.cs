namespace FuelMath;

/// <summary>The correction of an injector below its linear range, or none.</summary>
internal static class ShortPulseShape
{
    internal static Shape<ShortPulseCorrection> Shape { get; } =
        new WordOrShape<ShortPulseCorrection>(
            ChoiceShape.Of(("none", ShortPulseCorrection.None)),
            new ObjectShape<ShortPulseCorrection>(o =>
            {
                o.Is("short-pulse-correction", "How far an injector departs from its straight line at short pulses.");
                var widths = o.Required(
                        "effectiveWidths",
                        QuantityShapes.Duration.Positive.Knots(),
                        c => c.EffectiveWidths
                    )
                    .Says("Effective widths, rising; the last is where the linear range begins.");
                var corrections = o.Required("corrections", QuantityShapes.Duration.Knots(), c => c.Corrections)
                    .Says("Times to add to them; the last is zero.");
                var source = o.Source(c => c.Source);
                return f => new(f.Of(widths), f.Of(corrections), f.Of(source));
            })
        );
}
