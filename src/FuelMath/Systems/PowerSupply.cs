using FuelMath.Wiring;

namespace FuelMath.Systems;

/// <summary>The circuits that feed the pumps and the injectors from the source whose voltage an operating point states.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class PowerSupply
{
    /// <summary>Sets down the circuits.</summary>
    /// <param name="pumps">Feeds all pumps together.</param>
    /// <param name="injectors">Feeds all injectors together.</param>
    /// <exception cref="ArgumentNullException">Either is null.</exception>
    public PowerSupply(Circuit pumps, Circuit injectors)
    {
        ArgumentNullException.ThrowIfNull(pumps);
        ArgumentNullException.ThrowIfNull(injectors);
        Pumps = pumps;
        Injectors = injectors;
    }

    /// <summary>Feeds all pumps together.</summary>
    public Circuit Pumps { get; }

    /// <summary>Feeds all injectors together.</summary>
    public Circuit Injectors { get; }
}
