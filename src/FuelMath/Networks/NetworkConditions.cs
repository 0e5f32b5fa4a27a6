using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The conditions of a network's solve: its fluid, and the further inputs of its parts.</summary>
/// <remarks>
/// A part states its inputs: a pump the voltage at its terminals, a regulator the pressure on its reference port. A
/// missing input is refused with the name of the line; there are no defaults.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class NetworkConditions
{
    /// <summary>Conditions of a network whose parts need nothing but a fluid.</summary>
    /// <param name="density">Density of the fluid; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fluid; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
    public NetworkConditions(Density density, DynamicViscosity viscosity)
    {
        DensitySi = Guard.Positive(density, density.InSi());
        ViscositySi = Guard.Positive(viscosity, viscosity.InSi());
        (Density, Viscosity) = (density, viscosity);
    }

    /// <summary>Conditions whose fluid is given by its kinematic viscosity.</summary>
    /// <param name="density">Density of the fluid; greater than zero.</param>
    /// <param name="viscosity">Kinematic viscosity of the fluid; greater than zero.</param>
    /// <returns>The conditions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
    public static NetworkConditions FromKinematicViscosity(Density density, KinematicViscosity viscosity) =>
        new(
            density,
            SiUnits.DynamicViscosity(
                Guard.Positive(viscosity, viscosity.InSi()) * Guard.Positive(density, density.InSi())
            )
        );

    private NetworkConditions(NetworkConditions other)
        : this(other.Density, other.Viscosity) =>
        (PumpVoltage, Manifold, Tank, Commands) = (other.PumpVoltage, other.Manifold, other.Tank, other.Commands);

    /// <summary>Density of the fluid.</summary>
    public Density Density { get; }

    /// <summary>Dynamic viscosity of the fluid.</summary>
    public DynamicViscosity Viscosity { get; }

    /// <summary>The voltage at the pumps' terminals; null where none was given.</summary>
    public ElectricPotential? PumpVoltage { get; private init; }

    /// <summary>The pressure in the manifold; null where none was given.</summary>
    public GaugePressure? Manifold { get; private init; }

    /// <summary>
    /// The pressure in the tank, for regulators in a tank that return to no node of fixed pressure; null where none was
    /// given.
    /// </summary>
    public GaugePressure? Tank { get; private init; }

    /// <summary>The commands of injector draws, by the name of the line.</summary>
    public ImmutableSortedDictionary<string, VolumeFlow> Commands { get; private init; } =
        ImmutableSortedDictionary.Create<string, VolumeFlow>(StringComparer.Ordinal);

    internal double DensitySi { get; }

    internal double ViscositySi { get; }

    /// <summary>The same conditions with a voltage at the pumps' terminals, or at their controllers'.</summary>
    /// <param name="voltage">The voltage; greater than zero.</param>
    /// <returns>The conditions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not greater than zero.</exception>
    public NetworkConditions WithPumpVoltage(ElectricPotential voltage)
    {
        Guard.Positive(voltage, voltage.InSi());
        return new(this) { PumpVoltage = voltage };
    }

    /// <summary>The same conditions with a pressure in the manifold, for regulators referenced to it.</summary>
    /// <param name="manifold">The pressure.</param>
    /// <returns>The conditions.</returns>
    public NetworkConditions WithManifold(GaugePressure manifold) => new(this) { Manifold = manifold };

    /// <summary>The same conditions with a pressure in the tank, for regulators referenced to it.</summary>
    /// <param name="tank">The pressure.</param>
    /// <returns>The conditions.</returns>
    public NetworkConditions WithTank(GaugePressure tank) => new(this) { Tank = tank };

    /// <summary>The same conditions with a command to the injectors of a line.</summary>
    /// <param name="line">The name of the line; its part is an <see cref="InjectorDraw"/> without a command of its own.</param>
    /// <param name="commanded">The commanded mean flow; zero closes them.</param>
    /// <returns>The conditions.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The flow is negative or not finite.</exception>
    public NetworkConditions WithCommandedFlow(string line, VolumeFlow commanded)
    {
        Guard.Name(line);
        Guard.NotNegative(commanded, commanded.InSi());
        return new(this) { Commands = Commands.SetItem(line, commanded) };
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Density}, {Viscosity}");
}
