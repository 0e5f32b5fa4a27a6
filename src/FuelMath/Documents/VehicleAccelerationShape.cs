namespace FuelMath;

/// <summary>The acceleration of a vehicle.</summary>
internal static class VehicleAccelerationShape
{
    private static readonly ObjectShape<VehicleAcceleration> Shape = new(o =>
    {
        o.Is("vehicle-acceleration", "How a vehicle that carries a network speeds up.");
        var forward = o.Required("forward", QuantityShapes.Acceleration, a => a.Forward)
            .Says("Forward; negative when braking.");
        var left = o.Required("left", QuantityShapes.Acceleration, a => a.Left)
            .Says("To the left; negative in a right turn.");
        var up = o.Required("up", QuantityShapes.Acceleration, a => a.Up)
            .Says("Upward, beside free fall; zero on a level road.");
        return f => new(f.Of(forward), f.Of(left), f.Of(up));
    });

    /// <summary>The property "acceleration", which is left out at rest.</summary>
    internal static Undescribed<ValueProperty<T, VehicleAcceleration?>> Acceleration<T>(
        this ObjectBuilder<T> o,
        Func<T, VehicleAcceleration> get
    ) => o.Optional("acceleration", Shape, x => get(x).IsRest ? null : get(x));
}
