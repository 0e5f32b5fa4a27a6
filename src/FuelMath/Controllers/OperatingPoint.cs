using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

/// <summary>The conditions at which a fuel system is asked about.</summary>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class OperatingPoint
{
    /// <summary>Creates an operating point.</summary>
    /// <param name="name">What it is called, for example "peak power"; not blank.</param>
    /// <param name="speed">Crankshaft or eccentric-shaft speed; not negative. Zero only with <see cref="FuelCommand.Cut"/> or <see cref="FuelCommand.AllOpen"/>.</param>
    /// <param name="air">The air that the engine takes in.</param>
    /// <param name="fuel">Temperature of the fuel.</param>
    /// <param name="supply">Voltage at the source that feeds pumps and injectors; greater than zero.</param>
    /// <param name="command">What the injectors are told.</param>
    /// <exception cref="ArgumentException">The name is blank, or the command needs a running engine.</exception>
    /// <exception cref="ArgumentNullException">Air or command is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is out of its range.</exception>
    public OperatingPoint(
        string name,
        RotationalSpeed speed,
        IntakeAir air,
        Temperature fuel,
        ElectricPotential supply,
        FuelCommand command
    )
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(command);
        Name = Guard.Name(name);
        CheckSpeed(speed, command, name);
        Guard.Positive(fuel, fuel.InSi(), part: name);
        Guard.Positive(supply, supply.InSi(), part: name);
        Speed = speed;
        Air = air;
        Fuel = fuel;
        Supply = supply;
        Command = command;
    }

    private OperatingPoint(
        OperatingPoint other,
        RotationalSpeed speed,
        IntakeAir air,
        ElectricPotential supply,
        FuelCommand command
    )
        : this(other.Name, speed, air, other.Fuel, supply, command) =>
        (Drive, Acceleration) = (other.Drive, other.Acceleration);

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Crankshaft or eccentric-shaft speed.</summary>
    public RotationalSpeed Speed { get; }

    /// <summary>The air that the engine takes in.</summary>
    public IntakeAir Air { get; }

    /// <summary>Temperature of the fuel.</summary>
    public Temperature Fuel { get; }

    /// <summary>Voltage at the source that feeds pumps and injectors.</summary>
    public ElectricPotential Supply { get; }

    /// <summary>What the injectors are told.</summary>
    public FuelCommand Command { get; }

    /// <summary>How long the engine is driven here, for an assessment; null where that is not asked.</summary>
    public Drive? Drive { get; private init; }

    /// <summary>How the vehicle speeds up; rest unless it was set.</summary>
    public VehicleAcceleration Acceleration { get; private init; }

    /// <summary>Refuses a speed at which a command can't be carried out.</summary>
    internal static void CheckSpeed(
        RotationalSpeed speed,
        FuelCommand command,
        string? point,
        [CallerArgumentExpression(nameof(speed))] string paramName = ""
    )
    {
        double turning = Guard.NotNegative(speed, speed.InSi(), paramName, point);
        if (turning == 0 && command.Kind is not (FuelCommand.CommandKind.Cut or FuelCommand.CommandKind.AllOpen))
        {
            throw Guard.OutOfRange(
                speed,
                $"greater than {SiUnits.RotationalSpeed(0):above} when fuel is metered",
                paramName,
                point
            );
        }
    }

    /// <summary>The same conditions with another command.</summary>
    /// <param name="command">The other command.</param>
    /// <returns>A new operating point.</returns>
    /// <exception cref="ArgumentException">The command needs a running engine.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="command"/> is null.</exception>
    public OperatingPoint WithCommand(FuelCommand command) => new(this, Speed, Air, Supply, command);

    /// <summary>The same conditions for a drive: an assessment then looks at tank warming and hot soak, too.</summary>
    /// <param name="drive">How long, and with what in the tank.</param>
    /// <returns>A new operating point.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="drive"/> is null.</exception>
    public OperatingPoint WithDrive(Drive drive)
    {
        ArgumentNullException.ThrowIfNull(drive);
        return new(this, Speed, Air, Supply, Command) { Drive = drive };
    }

    /// <summary>The same conditions at another voltage of the source.</summary>
    /// <param name="supply">The other voltage; greater than zero.</param>
    /// <returns>A new operating point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not greater than zero.</exception>
    public OperatingPoint WithSupply(ElectricPotential supply) => new(this, Speed, Air, supply, Command);

    /// <summary>The same conditions in other air.</summary>
    /// <param name="air">The other air.</param>
    /// <returns>A new operating point.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is null.</exception>
    public OperatingPoint WithAir(IntakeAir air) => new(this, Speed, air, Supply, Command);

    /// <summary>The same conditions while the vehicle speeds up steadily.</summary>
    /// <param name="acceleration">How it speeds up; braking is a negative forward one.</param>
    /// <returns>A new operating point; each node of a network counts with its place: see <see cref="Network.Node.AtPlace"/>.</returns>
    public OperatingPoint WithAcceleration(VehicleAcceleration acceleration) =>
        new(this, Speed, Air, Supply, Command) { Acceleration = acceleration };

    /// <summary>The same conditions at another speed and manifold pressure.</summary>
    /// <param name="speed">The other speed.</param>
    /// <param name="manifold">The other manifold absolute pressure.</param>
    /// <returns>A new operating point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public OperatingPoint At(RotationalSpeed speed, AbsolutePressure manifold) =>
        new(this, speed, Air.WithManifold(manifold), Supply, Command);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Speed}, {Air.Manifold}");
}
