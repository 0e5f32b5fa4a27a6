using System.Collections.Immutable;

namespace FuelMath.Bench;

/// <summary>The raw readings of a set of injectors from a bench.</summary>
/// <remarks>
/// The content of a document of readings. Each reading keeps its unit, the resolution of its instrument and its
/// conditions, so that every conclusion can be reproduced.
/// </remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed class BenchRecord
{
    /// <summary>Creates a record.</summary>
    /// <param name="name">A name for the set; not blank.</param>
    /// <param name="injectors">One or more injectors, with different names. Copied.</param>
    /// <exception cref="ArgumentNullException"><paramref name="injectors"/> is null.</exception>
    /// <exception cref="ArgumentException">A name is blank or occurs twice, or there is no injector.</exception>
    public BenchRecord(string name, IEnumerable<BenchedInjector> injectors)
    {
        ArgumentNullException.ThrowIfNull(injectors);
        (Name, Injectors) = (Guard.Name(name), [.. Lists.NoNulls(injectors)]);
        Guard.AtLeast(1, Injectors.Length, "A bench record (its injectors)", nameof(injectors), part: name);
        Guard.DifferentNames(Injectors.Select(i => i.Name), nameof(injectors), part: name);
    }

    /// <summary>The name of the set.</summary>
    public string Name { get; }

    /// <summary>The injectors, in the order given.</summary>
    public ImmutableArray<BenchedInjector> Injectors { get; }

    /// <summary>An injector by its name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentException">There is no such injector.</exception>
    public BenchedInjector Injector(string name) =>
        Injectors.FirstOrDefault(i => i.Name == name)
        ?? throw Guard.NoName(name, Injectors.Select(i => i.Name), nameof(name));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Injectors.Length} injectors");
}
