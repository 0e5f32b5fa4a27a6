namespace FuelMath;

/// <summary>The controller of a pump.</summary>
internal static class PumpDriveShape
{
    internal static UnionShape<PumpDrive> Shape { get; } =
        new(
            new(o =>
            {
                o.Is("duty-drive", "A chopped supply.");
                o.Kind("duty", d => !d.ControlsSpeed);
                var duty = o.Required("duty", QuantityShapes.Ratio.Positive, d => d.Duty)
                    .Says("The share of time that the motor is connected.");
                return f => PumpDrive.ByDuty(f.Of(duty));
            }),
            new(o =>
            {
                o.Is("speed-drive", "A controller that holds a speed.");
                o.Kind("speed", d => d.ControlsSpeed);
                var speed = o.Required("speed", QuantityShapes.Ratio.Positive, d => d.Speed)
                    .Says("The held speed over that of the curve.");
                var least = o.Required("leastSupply", QuantityShapes.Voltage.Positive, d => d.LeastSupply!.Value)
                    .Says("The least voltage at which it holds the speed.");
                var greatest = o.Required(
                        "greatestSupply",
                        QuantityShapes.Voltage.Positive,
                        d => d.GreatestSupply!.Value
                    )
                    .Says("The greatest one.");
                return f => PumpDrive.BySpeed(f.Of(speed), f.Of(least), f.Of(greatest));
            })
        );
}
