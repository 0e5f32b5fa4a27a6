using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace FuelMath.Bench;

/// <summary>One injector of a set with its readings, and optionally those from before it was cleaned.</summary>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class BenchedInjector
{
    /// <summary>Creates an injector with readings of static flow alone.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="readings">One or more readings of its present state. Copied.</param>
    /// <exception cref="ArgumentException">The name is blank, or there is no reading.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    public BenchedInjector(string name, IEnumerable<StaticFlowReading> readings)
        : this(name, Static(readings), null) { }

    private BenchedInjector(string name, Series now, Series? before)
    {
        ArgumentNullException.ThrowIfNull(now);
        (Name, Now, Before) = (Guard.Name(name), now, before);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>All readings of its present state.</summary>
    public Series Now { get; }

    /// <summary>All readings from before it was cleaned; null without such readings.</summary>
    public Series? Before { get; }

    /// <summary>Readings of static flow of its present state.</summary>
    public ImmutableArray<StaticFlowReading> Readings => Now.StaticFlow;

    /// <summary>Readings of static flow from before it was cleaned; empty without such readings.</summary>
    public ImmutableArray<StaticFlowReading> BeforeCleaning => Before?.StaticFlow ?? [];

    /// <summary>An injector with readings of every kind.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="now">Readings of its present state.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="now"/> is null.</exception>
    public static BenchedInjector FromSeries(string name, Series now) => new(name, now, null);

    /// <summary>An injector with readings of every kind, before and after cleaning.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="before">Its readings from before.</param>
    /// <param name="after">Its readings from after.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BenchedInjector FromCleaning(string name, Series before, Series after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new(name, after, before);
    }

    /// <summary>An injector whose static flow was read before and after cleaning.</summary>
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
    ) => new(name, Static(after), Static(before));

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>Volume flows converted to the conditions of a rating, m³/s.</summary>
    internal static double[] FlowsSi(ImmutableArray<StaticFlowReading> readings, FlowRating rating) =>
        [.. readings.Select(r => r.ToRating().VolumeFlowAt(rating.DifferentialPressure, rating.FluidDensity).InSi())];

    private static Series Static(
        IEnumerable<StaticFlowReading> readings,
        [CallerArgumentExpression(nameof(readings))] string paramName = ""
    )
    {
        ArgumentNullException.ThrowIfNull(readings, paramName);
        StaticFlowReading[] all = Lists.NoNulls(readings, paramName);
        Guard.AtLeast(1, all.Length, "A benched injector", paramName);
        return Series.FromStaticFlow(all);
    }
}
