using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// What feeds the pumps and the injectors from the source whose voltage an operating point states: two circuits
/// (<see cref="TwoCircuits"/>), or a mesh in which they share wires and grounds (<see cref="Meshed"/>).
/// </summary>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public abstract partial class PowerSupply
{
    private protected PowerSupply(ImmutableArray<PumpFeed> feeds) => Feeds = feeds;

    /// <summary>Pumps with a circuit or a load of their own; often none.</summary>
    public ImmutableArray<PumpFeed> Feeds { get; }

    /// <inheritdoc />
    public abstract override string ToString();

    /// <summary>Wiring that loses nothing, to compare with.</summary>
    internal static PowerSupply Lossless { get; } =
        new TwoCircuits(new Circuit("no loss", [], [], default), new Circuit("no loss", [], [], default));

    /// <summary>The same supply with a circuit or a load of its own for some pumps.</summary>
    /// <param name="feeds">One for each such pump: circuits beside two circuits, loads in a mesh.</param>
    /// <returns>The supply; all other pumps share what they shared.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="feeds"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// A line comes twice, a feed is a circuit in a mesh or a load without one, or its load is not there or taken.
    /// </exception>
    public PowerSupply WithFeeds(IEnumerable<PumpFeed> feeds)
    {
        ArgumentNullException.ThrowIfNull(feeds);
        ImmutableArray<PumpFeed> all = [.. Lists.NoNulls(feeds)];
        HashSet<string> lines = [];
        foreach (PumpFeed feed in all)
        {
            if (!lines.Add(feed.Line))
            {
                throw new RefusedArgumentException(
                    RefusalCode.Duplicate,
                    $"Pump '{feed.Line:given}' is fed twice.",
                    nameof(feeds)
                );
            }
        }

        return FedBy(all, nameof(feeds));
    }

    /// <summary>The same supply with other feeds, of which each has a line of its own.</summary>
    private protected abstract PowerSupply FedBy(ImmutableArray<PumpFeed> feeds, string paramName);

    /// <summary>The voltages at pumps and at injectors, in V; not above zero where a guessed current takes more than there is.</summary>
    /// <param name="supply">What the operating point states.</param>
    /// <param name="amperes">Current of the pumps that share the supply, then that of each pump with a feed of its own.</param>
    /// <param name="injectorConductance">Mean conductance of all injectors: duty cycle over resistance of the coil, in S.</param>
    /// <param name="pumps">Room for the voltages at the pumps, in the same order; may be empty.</param>
    /// <returns>The voltage at the injectors, and that between the terminals of the source.</returns>
    internal abstract (double Injectors, double Source) VoltsAt(
        ElectricPotential supply,
        ReadOnlySpan<double> amperes,
        double injectorConductance,
        Span<double> pumps
    );

    /// <summary>
    /// Whether current moves the voltage between the terminals of the source: behind the internal resistance of a battery,
    /// or of an alternator at its limit.
    /// </summary>
    internal virtual bool SourceYields => false;

    /// <summary>The mesh at these draws; null where there is none.</summary>
    internal virtual WiringMesh.State? StateAt(
        ElectricPotential supply,
        ReadOnlySpan<double> amperes,
        double injectorConductance
    ) => null;

    /// <summary>The place of what feeds the pump of a line: 0 for what all share, then each of <see cref="Feeds"/>.</summary>
    internal int FeedOf(string line)
    {
        for (int i = 0; i < Feeds.Length; i++)
        {
            if (Feeds[i].Line == line)
            {
                return i + 1;
            }
        }

        return 0;
    }
}
