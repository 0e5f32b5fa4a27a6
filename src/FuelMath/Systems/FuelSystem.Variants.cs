using System.Collections.Immutable;

namespace FuelMath;

/// <content>The same system with something else in it.</content>
public sealed partial class FuelSystem
{
    /// <summary>The same system with other injectors in a stage; what the controller believes stays.</summary>
    /// <param name="stage">The stage's name.</param>
    /// <param name="injectors">One for each seat, in the order of the seats.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentException">There is no such stage, or the number of injectors does not fit.</exception>
    public FuelSystem WithInjectors(string stage, IEnumerable<Injector> injectors)
    {
        ArgumentNullException.ThrowIfNull(injectors);
        Injector[] fitted = Lists.NoNulls(injectors);
        return Stages.Any(s => s.Name == stage)
            ? Copy(Fuel, Network, Stages.Select(s => s.Name == stage ? s.WithInjectors(fitted) : s), Power)
            : throw Guard.NoName(stage, Stages.Select(s => s.Name), nameof(stage), Name);
    }

    /// <summary>The same system with another fuel in the tank; what the controller believes stays.</summary>
    /// <param name="fuel">The other fuel.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public FuelSystem WithFuel(Fuel fuel) => Copy(fuel, Network, Stages, Power);

    /// <summary>The same system with another fuel path.</summary>
    /// <param name="network">The other path; it has the nodes that the injectors sit at.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentException">An injector sits at a node that the path does not have.</exception>
    public FuelSystem WithNetwork(Network network) => Copy(Fuel, network, Stages, Power);

    /// <summary>The same system fed by other wiring.</summary>
    /// <param name="power">The other wiring.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">It feeds a pump that the system does not have.</exception>
    public FuelSystem WithPower(PowerSupply power) => Copy(Fuel, Network, Stages, power);

    /// <summary>The same system with findings held against other limits.</summary>
    /// <param name="limits">The limits.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limits"/> is null.</exception>
    public FuelSystem WithLimits(Limits limits) =>
        new(Name, Fuel, Engine, Network, Stages, Staging, Power, limits, Source, Banks, UncertainInputs);

    /// <summary>
    /// The same system with a lambda sensor for each bank of chambers: where lambda is held, each bank gets pulse widths of its
    /// own, and each is judged by itself.
    /// </summary>
    /// <param name="banks">The bank of each chamber in turn: numbers from 1, each up to the greatest in use. Copied.</param>
    /// <returns>A new system.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="banks"/> is null.</exception>
    /// <exception cref="ArgumentException">There is not a bank for each chamber, or a number is left out.</exception>
    public FuelSystem WithBanks(IEnumerable<int> banks)
    {
        ArgumentNullException.ThrowIfNull(banks);
        ImmutableArray<int> all = [.. banks];
        if (all.Length != Engine.Chambers)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must name a bank for each chamber, {Engine.Chambers:exactly} in all; {all.Length:value} given.",
                nameof(banks)
            );
        }

        int[] used = [.. all.Distinct().Order()];
        return used.SequenceEqual(Enumerable.Range(1, used.Length))
            ? new(Name, Fuel, Engine, Network, Stages, Staging, Power, Limits, Source, all, UncertainInputs)
            : throw new RefusedArgumentException(
                RefusalCode.NumbersHaveGaps,
                $"Banks must be numbered from {1:first} on without a gap; they were {used:given}.",
                nameof(banks)
            );
    }

    /// <summary>The same system, told what of its description is uncertain.</summary>
    /// <param name="inputs">What is uncertain; none where the description counts as exact. Copied.</param>
    /// <returns>A new system. An assessment of it says which input makes the scatter; results and verdicts are the same.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="inputs"/> is null.</exception>
    /// <exception cref="ArgumentException">One of them is null.</exception>
    public FuelSystem WithUncertainInputs(IEnumerable<UncertainInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        return new(
            Name,
            Fuel,
            Engine,
            Network,
            Stages,
            Staging,
            Power,
            Limits,
            Source,
            Banks,
            [.. Lists.NoNulls(inputs)]
        );
    }

    private FuelSystem Copy(Fuel fuel, Network network, IEnumerable<InjectorStage> stages, PowerSupply power) =>
        new(Name, fuel, Engine, network, stages, Staging, power, Limits, Source, Banks, UncertainInputs);
}
