using FuelMath.Internal;
using FuelMath.Quantities;
using UnitsNet;

namespace FuelMath.Systems;

/// <summary>The conditions at which a fuel system is asked about.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class OperatingPoint
{
    /// <summary>Sets down an operating point.</summary>
    /// <param name="name">What it is called, for example "peak power"; not blank.</param>
    /// <param name="speed">Crankshaft or eccentric-shaft speed; not negative. Zero only with <see cref="FuelCommand.Cut"/> or <see cref="FuelCommand.AllOpen"/>.</param>
    /// <param name="manifold">Manifold absolute pressure; greater than zero.</param>
    /// <param name="ambient">Ambient absolute pressure, from which gauge pressures count; greater than zero.</param>
    /// <param name="charge">Temperature of the charge in the manifold.</param>
    /// <param name="fuel">Temperature of the fuel.</param>
    /// <param name="supply">Voltage at the source that feeds pumps and injectors; greater than zero.</param>
    /// <param name="command">What the injectors are told.</param>
    /// <exception cref="ArgumentException">The name is blank, or the command needs a running engine.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="command"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is out of its range.</exception>
    public OperatingPoint(
        string name,
        RotationalSpeed speed,
        AbsolutePressure manifold,
        AbsolutePressure ambient,
        Temperature charge,
        Temperature fuel,
        ElectricPotential supply,
        FuelCommand command
    )
    {
        ArgumentNullException.ThrowIfNull(command);
        Name = Guard.Name(name, nameof(name));
        CheckSpeed(speed, command, nameof(speed));
        Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold));
        Guard.Positive(ambient.AboveVacuum, ambient.Si, nameof(ambient));
        Guard.Positive(charge, charge.InSi(), nameof(charge));
        Guard.Positive(fuel, fuel.InSi(), nameof(fuel));
        Guard.Positive(supply, supply.InSi(), nameof(supply));
        Speed = speed;
        Manifold = manifold;
        Ambient = ambient;
        Charge = charge;
        Fuel = fuel;
        Supply = supply;
        Command = command;
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Crankshaft or eccentric-shaft speed.</summary>
    public RotationalSpeed Speed { get; }

    /// <summary>Manifold absolute pressure.</summary>
    public AbsolutePressure Manifold { get; }

    /// <summary>Ambient absolute pressure, from which gauge pressures count.</summary>
    public AbsolutePressure Ambient { get; }

    /// <summary>Temperature of the charge in the manifold.</summary>
    public Temperature Charge { get; }

    /// <summary>Temperature of the fuel.</summary>
    public Temperature Fuel { get; }

    /// <summary>Voltage at the source that feeds pumps and injectors.</summary>
    public ElectricPotential Supply { get; }

    /// <summary>What the injectors are told.</summary>
    public FuelCommand Command { get; }

    /// <summary>Refuses a speed at which a command can't be carried out.</summary>
    internal static void CheckSpeed(RotationalSpeed speed, FuelCommand command, string paramName)
    {
        double turning = Guard.NotNegative(speed, speed.InSi(), paramName);
        if (turning == 0 && command.Kind is not (FuelCommandKind.Cut or FuelCommandKind.AllOpen))
        {
            throw new ArgumentOutOfRangeException(
                paramName,
                $"Must be greater than zero when fuel is metered; it was {Guard.Show(speed, speed.Unit)}."
            );
        }
    }

    /// <summary>The same conditions with another command.</summary>
    /// <param name="command">The other command.</param>
    /// <returns>A new operating point.</returns>
    public OperatingPoint WithCommand(FuelCommand command) =>
        new(Name, Speed, Manifold, Ambient, Charge, Fuel, Supply, command);

    /// <summary>The same conditions at another speed and manifold pressure.</summary>
    /// <param name="speed">The other speed.</param>
    /// <param name="manifold">The other manifold absolute pressure.</param>
    /// <returns>A new operating point.</returns>
    public OperatingPoint At(RotationalSpeed speed, AbsolutePressure manifold) =>
        new(Name, speed, manifold, Ambient, Charge, Fuel, Supply, Command);
}
