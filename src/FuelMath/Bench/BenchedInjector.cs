using System.Collections.Immutable;
using FuelMath.Injectors;
using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>One injector of a set with its static-flow readings, and those from before it was cleaned if there are.</summary>
/// <remarks>Instances are immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class BenchedInjector
{
    /// <summary>Sets down an injector.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="readings">One or more readings, as it is now. Copied.</param>
    /// <exception cref="ArgumentException">The name is blank, or there is no reading.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    public BenchedInjector(string name, IEnumerable<StaticFlowReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        Name = Guard.Name(name, nameof(name));
        Readings = [.. readings];
        Guard.AtLeast(1, Readings.Length, "A benched injector", nameof(readings));
        BeforeCleaning = [];
    }

    private BenchedInjector(string name, IEnumerable<StaticFlowReading> before, IEnumerable<StaticFlowReading> after)
        : this(name, after)
    {
        ArgumentNullException.ThrowIfNull(before);
        BeforeCleaning = [.. before];
        Guard.AtLeast(1, BeforeCleaning.Length, "A benched injector", nameof(before));
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Readings as it is now.</summary>
    public ImmutableArray<StaticFlowReading> Readings { get; }

    /// <summary>Readings from before it was cleaned; empty when there are none.</summary>
    public ImmutableArray<StaticFlowReading> BeforeCleaning { get; }

    /// <summary>An injector that was read before and after cleaning.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="before">One or more readings from before. Copied.</param>
    /// <param name="after">One or more readings from after. Copied.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentException">The name is blank, or there is no reading.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BenchedInjector FromCleaning(
        string name,
        IEnumerable<StaticFlowReading> before,
        IEnumerable<StaticFlowReading> after
    ) => new(name, before, after);

    /// <summary>Volume flows carried to the conditions of a rating, m³/s.</summary>
    internal static double[] FlowsSi(ImmutableArray<StaticFlowReading> readings, FlowRating rating) =>
        [.. readings.Select(r => r.ToRating().VolumeFlowAt(rating.DifferentialPressure, rating.FluidDensity).InSi())];
}
