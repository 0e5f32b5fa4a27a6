using UnitsNet;

namespace FuelMath;

/// <summary>How a vehicle speeds up.</summary>
internal static class VehicleAccelerationShape
{
    private static readonly ValueProperty<VehicleAcceleration, Acceleration> Forward = new(
        "forward",
        "Forward; negative when braking.",
        QuantityShapes.Acceleration,
        a => a.Forward
    );

    private static readonly ValueProperty<VehicleAcceleration, Acceleration> Left = new(
        "left",
        "To the left; negative in a right turn.",
        QuantityShapes.Acceleration,
        a => a.Left
    );

    private static readonly ValueProperty<VehicleAcceleration, Acceleration> Up = new(
        "up",
        "Upward, beside free fall; zero on a level road.",
        QuantityShapes.Acceleration,
        a => a.Up
    );

    internal static ObjectShape<VehicleAcceleration> Shape { get; } =
        new(
            "vehicle-acceleration",
            "How a vehicle that carries a network speeds up.",
            [Forward, Left, Up],
            f => new(f.Of(Forward), f.Of(Left), f.Of(Up))
        );
}
