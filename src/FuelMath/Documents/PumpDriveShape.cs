using UnitsNet;

namespace FuelMath;

/// <summary>What feeds a pump that has a controller.</summary>
internal static class PumpDriveShape
{
    private static readonly ValueProperty<PumpDrive, Ratio> Duty = new(
        "duty",
        "The share of time that the motor is connected.",
        QuantityShapes.Ratio,
        d => d.Duty
    );

    private static readonly ValueProperty<PumpDrive, Ratio> Speed = new(
        "speed",
        "The held speed over that of the curve.",
        QuantityShapes.Ratio,
        d => d.Speed
    );

    private static readonly ValueProperty<PumpDrive, ElectricPotential> Least = new(
        "leastSupply",
        "The least voltage at which it holds the speed.",
        QuantityShapes.Voltage,
        d => d.LeastSupply!.Value
    );

    private static readonly ValueProperty<PumpDrive, ElectricPotential> Greatest = new(
        "greatestSupply",
        "The greatest one.",
        QuantityShapes.Voltage,
        d => d.GreatestSupply!.Value
    );

    internal static UnionShape<PumpDrive> Shape { get; } =
        new(
            UnionCase<PumpDrive>.Of(
                new ObjectShape<PumpDrive>(
                    "duty-drive",
                    "A chopped supply.",
                    [new WordProperty<PumpDrive>("kind", "What it is.", "duty"), Duty],
                    f => PumpDrive.ByDuty(f.Of(Duty))
                ),
                d => !d.ControlsSpeed
            ),
            UnionCase<PumpDrive>.Of(
                new ObjectShape<PumpDrive>(
                    "speed-drive",
                    "A controller that holds a speed.",
                    [new WordProperty<PumpDrive>("kind", "What it is.", "speed"), Speed, Least, Greatest],
                    f => PumpDrive.BySpeed(f.Of(Speed), f.Of(Least), f.Of(Greatest))
                ),
                d => d.ControlsSpeed
            )
        );
}
