using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The correction of an injector below its linear range, or that there is none.</summary>
internal static class ShortPulseShape
{
    private static readonly ValueProperty<ShortPulseCorrection, ImmutableArray<Duration>> Widths = new(
        "effectiveWidths",
        "Effective widths, rising; the last is where the linear range begins.",
        TableShapes.Knots(QuantityShapes.Duration),
        c => c.EffectiveWidths
    );

    private static readonly ValueProperty<ShortPulseCorrection, ImmutableArray<Duration>> Corrections = new(
        "corrections",
        "Times to add to them; the last is zero.",
        TableShapes.Knots(QuantityShapes.Duration),
        c => c.Corrections
    );

    private static readonly ValueProperty<ShortPulseCorrection, DataSource> Source =
        SourceShape.Of<ShortPulseCorrection>(c => c.Source);

    internal static Shape<ShortPulseCorrection> Shape { get; } =
        new WordOrShape<ShortPulseCorrection>(
            new ChoiceShape<ShortPulseCorrection>(("none", ShortPulseCorrection.None)),
            new ObjectShape<ShortPulseCorrection>(
                "short-pulse-correction",
                "How far an injector departs from its straight line at short pulses.",
                [Widths, Corrections, Source],
                f => new(f.Of(Widths), f.Of(Corrections), f.Of(Source))
            )
        );
}
