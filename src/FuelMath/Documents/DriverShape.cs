namespace FuelMath;

/// <summary>The driver of a coil.</summary>
internal static class DriverShape
{
    internal static Shape<InjectorDriver> Shape { get; } =
        new WordOrShape<InjectorDriver>(
            ChoiceShape.Of(("saturated", (InjectorDriver)InjectorDriver.Saturated.WithoutBallast)),
            new UnionShape<InjectorDriver>(
                new(o =>
                {
                    o.Is("ballast-driver", "A saturated driver with a ballast resistor.");
                    o.Kind("saturated with ballast", "Which driver it is.", d => d is InjectorDriver.Saturated);
                    var ballast = o.Required(
                            "ballast",
                            QuantityShapes.Resistance.Positive,
                            d => ((InjectorDriver.Saturated)d).Ballast
                        )
                        .Says("Resistance in series with the coil.");
                    return f => new InjectorDriver.Saturated(f.Of(ballast));
                }),
                new(o =>
                {
                    o.Is("peak-and-hold-driver", "A driver that limits the current.");
                    o.Kind("peak and hold", "Which driver it is.", d => d is InjectorDriver.PeakAndHold);
                    var peak = o.Required(
                            "peak",
                            QuantityShapes.Current.Positive,
                            d => ((InjectorDriver.PeakAndHold)d).Peak
                        )
                        .Says("The current that it drives to.");
                    var hold = o.Required(
                            "hold",
                            QuantityShapes.Current.Positive,
                            d => ((InjectorDriver.PeakAndHold)d).Hold
                        )
                        .Says("The current that it holds then.");
                    return f => new InjectorDriver.PeakAndHold(f.Of(peak), f.Of(hold));
                })
            )
        );
}
