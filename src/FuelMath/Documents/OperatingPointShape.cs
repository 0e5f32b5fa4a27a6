using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The conditions at which a system is asked about, and a list of them.</summary>
internal static class OperatingPointShape
{
    private const int Most = 1000;

    private static readonly ValueProperty<OperatingPoint, string> Name = new(
        "name",
        "What it is called.",
        TextShape.Name,
        p => p.Name
    );

    private static readonly ValueProperty<OperatingPoint, RotationalSpeed> Speed = new(
        "speed",
        "Crankshaft or eccentric-shaft speed.",
        QuantityShapes.RotationalSpeed,
        p => p.Speed
    );

    private static readonly ValueProperty<OperatingPoint, AbsolutePressure> Manifold = new(
        "manifold",
        "Manifold absolute pressure.",
        QuantityShapes.AbsolutePressure,
        p => p.Manifold
    );

    private static readonly ValueProperty<OperatingPoint, AbsolutePressure> Ambient = new(
        "ambient",
        "Ambient absolute pressure.",
        QuantityShapes.AbsolutePressure,
        p => p.Ambient
    );

    private static readonly ValueProperty<OperatingPoint, Temperature> Charge = new(
        "charge",
        "Temperature of the charge in the manifold.",
        QuantityShapes.Temperature,
        p => p.Charge
    );

    private static readonly ValueProperty<OperatingPoint, Temperature> Fuel = new(
        "fuel",
        "Temperature of the fuel.",
        QuantityShapes.Temperature,
        p => p.Fuel
    );

    private static readonly ValueProperty<OperatingPoint, ElectricPotential> Supply = new(
        "supply",
        "Voltage at the source that feeds pumps and injectors.",
        QuantityShapes.Voltage,
        p => p.Supply
    );

    private static readonly ValueProperty<OperatingPoint, FuelCommand> Command = new(
        "command",
        "What the injectors are told.",
        CommandShape.Shape,
        p => p.Command
    );

    private static readonly ValueProperty<Humidity, Ratio> Relative = new(
        "relative",
        "Relative humidity.",
        QuantityShapes.Ratio,
        h => h.Relative
    );

    private static readonly ValueProperty<Humidity, Temperature> AirTemperature = new(
        "airTemperature",
        "Temperature of the ambient air that it was read at.",
        QuantityShapes.Temperature,
        h => h.AirTemperature
    );

    private static readonly ValueProperty<OperatingPoint, Humidity> Humid = new(
        "humidity",
        "Humidity of the ambient air; left out where the air is taken as dry.",
        new ObjectShape<Humidity>(
            "humidity",
            "Humidity of the ambient air.",
            [Relative, AirTemperature],
            f => new(f.Of(Relative), f.Of(AirTemperature))
        ),
        p => p.Humidity!,
        p => p.Humidity is not null,
        null!
    );

    /// <summary>The excess at which documents tell what a tank loses, K.</summary>
    private const double Excess = 10;

    private static readonly ValueProperty<Drive, Duration> Time = new(
        "time",
        "How long.",
        QuantityShapes.Duration,
        d => d.Time
    );

    private static readonly ValueProperty<Drive, Mass> FuelMass = new(
        "fuelMass",
        "Fuel in the tank at the start.",
        QuantityShapes.Mass,
        d => d.FuelMass
    );

    private static readonly ValueProperty<Drive, Temperature> Air = new(
        "air",
        "Temperature of the air around the tank.",
        QuantityShapes.Temperature,
        d => d.Air
    );

    private static readonly ValueProperty<Drive, Power> TankLoss = new(
        "tankLossAt10Kelvins",
        "Heat that the tank loses when it is 10 K warmer than the air.",
        QuantityShapes.Power,
        d => SiUnits.Power(d.LossAtExcess.InSi() * Excess / d.Excess.InSi())
    )
    {
        Parameter = "lossAtExcess",
    };

    private static readonly ValueProperty<Drive, Temperature> SoakAt = new(
        "soakTemperature",
        "What the fuel in the rail comes to after switch-off.",
        QuantityShapes.Temperature,
        d => d.SoakTemperature!.Value,
        d => d.SoakTemperature is not null,
        default
    )
    {
        Parameter = "temperature",
    };

    private static readonly ValueProperty<OperatingPoint, Drive> Driven = new(
        "drive",
        "How long the engine is driven here: tank warming and hot soak are then looked at, too.",
        new ObjectShape<Drive>(
            "drive",
            "How long an engine is driven, and what tank and rail come to meet.",
            [Time, FuelMass, Air, TankLoss, SoakAt],
            f =>
            {
                Drive drive = new(
                    f.Of(Time),
                    f.Of(FuelMass),
                    f.Of(Air),
                    f.Of(TankLoss),
                    SiUnits.TemperatureDelta(Excess)
                );
                return f.Has(SoakAt) ? drive.WithSoak(f.Of(SoakAt)) : drive;
            }
        ),
        p => p.Drive!,
        p => p.Drive is not null,
        null!
    );

    private static readonly ValueProperty<OperatingPoint, VehicleAcceleration> Speeding = new(
        "acceleration",
        "How the vehicle speeds up; rest when left out.",
        VehicleAccelerationShape.Shape,
        p => p.Acceleration,
        p => !p.Acceleration.IsRest,
        default
    );

    private static readonly ObjectShape<OperatingPoint> Point = new(
        "operating-point",
        "Conditions at which a fuel system is asked about.",
        [Name, Speed, Manifold, Ambient, Charge, Fuel, Supply, Command, Humid, Driven, Speeding],
        f =>
        {
            OperatingPoint dry = new(
                f.Of(Name),
                f.Of(Speed),
                f.Of(Manifold),
                f.Of(Ambient),
                f.Of(Charge),
                f.Of(Fuel),
                f.Of(Supply),
                f.Of(Command)
            );
            OperatingPoint point = f.Has(Humid) ? dry.WithHumidity(f.Of(Humid)) : dry;
            OperatingPoint moving = f.Has(Speeding) ? point.WithAcceleration(f.Of(Speeding)) : point;
            return f.Has(Driven) ? moving.WithDrive(f.Of(Driven)) : moving;
        }
    );

    private static readonly ValueProperty<OperatingList, ImmutableArray<OperatingPoint>> Points = new(
        "points",
        "The operating points, each with a name of its own.",
        new ListShape<OperatingPoint>(Point, 1, Most),
        l => l.Points
    );

    internal static ObjectShape<OperatingList> Shape { get; } =
        new(
            "operating-list",
            "Operating points to assess a fuel system at.",
            [
                new WordProperty<OperatingList>("document", "What the document is.", "operating list"),
                new WordProperty<OperatingList>("version", "The version of its form.", "1"),
                Points,
            ],
            f => new(f.Of(Points))
        );
}
