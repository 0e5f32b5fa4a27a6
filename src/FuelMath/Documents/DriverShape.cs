using UnitsNet;

namespace FuelMath;

/// <summary>What drives a coil.</summary>
internal static class DriverShape
{
    private static readonly ValueProperty<InjectorDriver, ElectricResistance> Ballast = new(
        "ballast",
        "Resistance in series with the coil.",
        QuantityShapes.Resistance,
        d => d.Ballast
    );

    private static readonly ValueProperty<InjectorDriver, ElectricCurrent> Peak = new(
        "peak",
        "The current that it drives to.",
        QuantityShapes.Current,
        d => d.Peak!.Value
    );

    private static readonly ValueProperty<InjectorDriver, ElectricCurrent> Hold = new(
        "hold",
        "The current that it holds then.",
        QuantityShapes.Current,
        d => d.Hold!.Value
    );

    internal static Shape<InjectorDriver> Shape { get; } =
        new WordOrShape<InjectorDriver>(
            new ChoiceShape<InjectorDriver>(("saturated", InjectorDriver.PlainSaturated)),
            new UnionShape<InjectorDriver>(
                UnionCase<InjectorDriver>.Of(
                    new ObjectShape<InjectorDriver>(
                        "ballast-driver",
                        "A saturated driver with a ballast resistor.",
                        [
                            new WordProperty<InjectorDriver>("kind", "Which driver it is.", "saturated with ballast"),
                            Ballast,
                        ],
                        f => InjectorDriver.FromBallast(f.Of(Ballast))
                    ),
                    d => d.Kind == DriverKind.Saturated
                ),
                UnionCase<InjectorDriver>.Of(
                    new ObjectShape<InjectorDriver>(
                        "peak-and-hold-driver",
                        "A driver that limits the current.",
                        [new WordProperty<InjectorDriver>("kind", "Which driver it is.", "peak and hold"), Peak, Hold],
                        f => InjectorDriver.FromPeakAndHold(f.Of(Peak), f.Of(Hold))
                    ),
                    d => d.Kind == DriverKind.PeakAndHold
                )
            )
        );
}
