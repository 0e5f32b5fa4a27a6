using UnitsNet;

namespace FuelMath;

/// <summary>An operating point, and a list of them.</summary>
internal static class OperatingPointShape
{
    private const int Most = 1000;

    /// <summary>The excess temperature at which documents state the heat loss of a tank, K.</summary>
    private const double Excess = 10;

    private static readonly ObjectShape<Humidity> Humid = new(o =>
    {
        o.Is("humidity", "Humidity of the ambient air.");
        var relative = o.Required("relative", QuantityShapes.Ratio.NotNegative, h => h.Relative)
            .Says("Relative humidity.");
        var air = o.Required("airTemperature", QuantityShapes.Temperature, h => h.AirTemperature)
            .Says("Temperature of the ambient air that it was read at.");
        return f => new(f.Of(relative), f.Of(air));
    });

    private static readonly ObjectShape<Drive> Driven = new(o =>
    {
        o.Is("drive", "How long an engine is driven, and what tank and rail come to meet.");
        var time = o.Required("time", QuantityShapes.Duration.Positive, d => d.Time).Says("How long.");
        var fuelMass = o.Required("fuelMass", QuantityShapes.Mass.Positive, d => d.FuelMass)
            .Says("Fuel in the tank at the start.");
        var air = o.Required("air", QuantityShapes.Temperature, d => d.Cooling.Air)
            .Says("Temperature of the air around the tank.");
        var loss = o.Required("tankLossAt10Kelvins", QuantityShapes.Power.Positive, LossAtExcess, "lossAtExcess")
            .Says("Heat that the tank loses when it is 10 K warmer than the air.");
        o.With(
                "soakTemperature",
                QuantityShapes.Temperature,
                d => d.SoakTemperature,
                (d, v) => d.WithSoak(v),
                "temperature"
            )
            .Says("What the fuel in the rail comes to after switch-off.");
        return f =>
            new(f.Of(time), f.Of(fuelMass), new TankCooling(f.Of(air), f.Of(loss), SiUnits.TemperatureDelta(Excess)));
    });

    private static readonly ObjectShape<OperatingPoint> Point = new(o =>
    {
        o.Is("operating-point", "Conditions at which a fuel system is asked about.");
        var name = o.Required("name", TextShape.Name, p => p.Name).Says("What it is called.");
        var speed = o.Required("speed", QuantityShapes.RotationalSpeed.NotNegative, p => p.Speed)
            .Says("Crankshaft or eccentric-shaft speed.");
        var manifold = o.Required("manifold", QuantityShapes.AbsolutePressure.Positive, p => p.Air.Manifold)
            .Says("Manifold absolute pressure.");
        var ambient = o.Required("ambient", QuantityShapes.AbsolutePressure.Positive, p => p.Air.Ambient)
            .Says("Ambient absolute pressure.");
        var charge = o.Required("charge", QuantityShapes.Temperature, p => p.Air.Charge, "humidity")
            .Says("Temperature of the charge in the manifold.");
        var fuel = o.Required("fuel", QuantityShapes.Temperature, p => p.Fuel).Says("Temperature of the fuel.");
        var supply = o.Required("supply", QuantityShapes.Voltage.Positive, p => p.Supply)
            .Says("Voltage at the source that feeds pumps and injectors.");
        var command = o.Required("command", CommandShape.Shape, p => p.Command).Says("What the injectors are told.");
        o.With("humidity", Humid, p => p.Air.Humidity, (p, v) => p.WithAir(p.Air.WithHumidity(v)))
            .Says("Humidity of the ambient air; left out where the air is taken as dry.");
        o.With("drive", Driven, p => p.Drive, (p, v) => p.WithDrive(v))
            .Says("How long the engine is driven here: tank warming and hot soak are then looked at, too.");
        var acceleration = o.Acceleration(p => p.Acceleration).Says("How the vehicle speeds up; rest when left out.");
        return f =>
        {
            OperatingPoint point = new(
                f.Of(name),
                f.Of(speed),
                new IntakeAir(f.Of(manifold), f.Of(ambient), f.Of(charge)),
                f.Of(fuel),
                f.Of(supply),
                f.Of(command)
            );
            return f.Of(acceleration) is { } moving ? point.WithAcceleration(moving) : point;
        };
    });

    internal static ObjectShape<OperatingList> Shape { get; } =
        new(o =>
        {
            o.Is("operating-list", "Operating points to assess a fuel system at.");
            o.Document("operating list");
            var points = o.Required("points", Point.List(1, Most), l => l.Points)
                .Says("The operating points, each with a name of its own.");
            return f => new(f.Of(points));
        });

    private static Power LossAtExcess(Drive drive) =>
        SiUnits.Power(drive.Cooling.LossAtExcess.InSi() * Excess / drive.Cooling.Excess.InSi());
}
