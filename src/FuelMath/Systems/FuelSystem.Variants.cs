namespace FuelMath;

/// <content>The same system with something changed.</content>
public sealed partial class FuelSystem
{
    /// <summary>The same system with other injectors in a stage; what the controller believes stays.</summary>
    /// <param name="stage">The stage's name.</param>
    /// <param name="injectors">One for each seat, in the order of the seats.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentException">There is no such stage, or the number of injectors does not fit.</exception>
    public FuelSystem WithInjectors(string stage, IEnumerable<Injector> injectors) =>
        Stages.Any(s => s.Name == stage)
            ? new(
                Name,
                Fuel,
                Engine,
                Network,
                Stages.Select(s => s.Name == stage ? s.WithInjectors(injectors) : s),
                Staging,
                Power,
                Limits,
                Source
            )
            : throw new RefusedArgumentException(
                $"Must be one of: {string.Join(", ", Stages.Select(s => s.Name))}; it was '{stage}'.",
                nameof(stage)
            );

    /// <summary>The same system with another fuel in the tank; what the controller believes stays.</summary>
    /// <param name="fuel">The other fuel.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public FuelSystem WithFuel(Fuel fuel) => new(Name, fuel, Engine, Network, Stages, Staging, Power, Limits, Source);

    /// <summary>The same system with another fuel path.</summary>
    /// <param name="network">The other path; it has the nodes that the injectors sit at.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentException">An injector sits at a node that the path does not have.</exception>
    public FuelSystem WithNetwork(Network network) =>
        new(Name, Fuel, Engine, network, Stages, Staging, Power, Limits, Source);

    /// <summary>The same system fed by other wiring.</summary>
    /// <param name="power">The other wiring.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">It feeds a pump that the system does not have.</exception>
    public FuelSystem WithPower(PowerSupply power) =>
        new(Name, Fuel, Engine, Network, Stages, Staging, power, Limits, Source);
}
