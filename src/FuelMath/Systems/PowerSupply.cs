using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// What feeds the pumps and the injectors from the source whose voltage an operating point states: two circuits, or a
/// mesh in which they share wires and grounds.
/// </summary>
public sealed partial class PowerSupply
{
    /// <summary>Creates two circuits.</summary>
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

    private PowerSupply(WiringMesh mesh, string source, string pumpLoad, string injectorLoad)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        Mesh = mesh;
        Source = mesh.Sources[MeshChecks.Find(mesh.Sources, s => s.Name, source, nameof(source))].Name;
        PumpLoad = Load(pumpLoad);
        InjectorLoad = Load(injectorLoad);
        if (pumpLoad == injectorLoad)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotDifferent,
                $"Must be another load than that of the pumps; it was '{injectorLoad:given}'.",
                nameof(injectorLoad)
            );
        }

        // Neither load may be what ties a node: a set current ties nothing.
        _ = At(null, [0], 0);
    }

    private PowerSupply(PowerSupply other, Circuit? pumps, WiringMesh? mesh, ImmutableArray<PumpFeed> feeds)
    {
        (Pumps, Injectors, Mesh, Feeds) = (pumps, other.Injectors, mesh, feeds);
        (Source, PumpLoad, InjectorLoad) = (other.Source, other.PumpLoad, other.InjectorLoad);
        if (mesh is not null)
        {
            _ = At(null, new double[feeds.Length + 1], 0);
        }
    }

    /// <summary>Feeds all pumps together that have no feed of their own; null where there is a mesh.</summary>
    public Circuit? Pumps { get; }

    /// <summary>Pumps with a circuit or a load of their own; often none.</summary>
    public ImmutableArray<PumpFeed> Feeds { get; } = [];

    /// <summary>Feeds all injectors together; null where there is a mesh.</summary>
    public Circuit? Injectors { get; }

    /// <summary>The mesh; null where there are two circuits.</summary>
    public WiringMesh? Mesh { get; }

    /// <summary>The source of the mesh whose voltage an operating point states; null without a mesh.</summary>
    public string? Source { get; }

    /// <summary>The load of the mesh that stands for all pumps; null without a mesh.</summary>
    public string? PumpLoad { get; }

    /// <summary>The load of the mesh that stands for all injectors; null without a mesh.</summary>
    public string? InjectorLoad { get; }

    /// <summary>A supply by a mesh: what else draws from it, a fan or the ignition, lowers the voltage of both.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="source">
    /// The source whose voltage an operating point states: the terminals' where it is held, the open-circuit voltage of a
    /// battery, the regulated voltage of an alternator.
    /// </param>
    /// <param name="pumpLoad">The load that stands for all pumps: solved as the current that they draw.</param>
    /// <param name="injectorLoad">The load that stands for all injectors: solved as coils connected for their duty cycle.</param>
    /// <returns>The supply.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="mesh"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such source or load, or both loads are one.</exception>
    public static PowerSupply FromMesh(WiringMesh mesh, string source, string pumpLoad, string injectorLoad) =>
        new(mesh, source, pumpLoad, injectorLoad);

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
        feeds = Lists.NoNulls(feeds);
        ImmutableArray<PumpFeed> all = [.. feeds];
        HashSet<string> lines = [];
        HashSet<string> loads = Mesh is null ? [] : [PumpLoad!, InjectorLoad!];
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

            if ((Mesh is null) != (feed.Load is null))
            {
                throw new RefusedArgumentException(
                    RefusalCode.WrongKind,
                    $"Pump '{feed.Line:part}' must be fed by {(Mesh is null ? "a circuit: there is no mesh" : "a load of the mesh"):allowed}.",
                    nameof(feeds)
                );
            }

            if (feed.Load is not null && !loads.Add(Load(feed.Load, nameof(feeds))))
            {
                throw new RefusedArgumentException(
                    RefusalCode.Duplicate,
                    $"Pump '{feed.Line:part}' must have a load of its own; '{feed.Load:given}' is taken.",
                    nameof(feeds)
                );
            }
        }

        return new(this, Pumps, Mesh, all);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{(Mesh is null ? "circuits" : Mesh.Name)}");

    /// <summary>The same supply with another circuit: for the pumps that share one, or for one with its own.</summary>
    internal PowerSupply With(int feed, Circuit circuit) =>
        feed == 0
            ? new(this, circuit, Mesh, Feeds)
            : new(this, Pumps, Mesh, Feeds.SetItem(feed - 1, new(Feeds[feed - 1].Line, circuit)));

    /// <summary>The same supply with another mesh of the same names.</summary>
    internal PowerSupply With(WiringMesh mesh) => new(this, Pumps, mesh, Feeds);

    /// <summary>Wiring that loses nothing, to compare with.</summary>
    internal static PowerSupply Lossless { get; } =
        new(new Circuit("no loss", [], [], default), new Circuit("no loss", [], [], default));

    /// <summary>The voltages at pumps and at injectors, in V; not above zero where a guessed current takes more than there is.</summary>
    /// <param name="supply">What the operating point states.</param>
    /// <param name="amperes">Current of the pumps that share the supply, then that of each pump with a feed of its own.</param>
    /// <param name="injectorConductance">Mean conductance of all injectors: duty cycle over resistance of the coil, in S.</param>
    /// <param name="pumps">Room for the voltages at the pumps, in the same order; may be empty.</param>
    /// <returns>The voltage at the injectors, and that between the terminals of the source.</returns>
    internal (double Injectors, double Source) VoltsAt(
        ElectricPotential supply,
        ReadOnlySpan<double> amperes,
        double injectorConductance,
        Span<double> pumps
    )
    {
        if (Mesh is null)
        {
            for (int feed = 0; feed < pumps.Length; feed++)
            {
                pumps[feed] = supply.InSi() - (CircuitOf(feed).Resistance.InSi() * amperes[feed]);
            }

            return (supply.InSi() / (1 + (Injectors!.Resistance.InSi() * injectorConductance)), supply.InSi());
        }

        WiringMesh.State state = StateAt(supply, amperes, injectorConductance);
        for (int feed = 0; feed < pumps.Length; feed++)
        {
            pumps[feed] = state.VoltageAcross(LoadOf(feed)).InSi();
        }

        return (state.VoltageAcross(InjectorLoad!).InSi(), state.VoltageOf(Source!).InSi());
    }

    /// <summary>
    /// Whether current moves the voltage between the terminals of the source: behind the internal resistance of a battery,
    /// or of an alternator at its limit.
    /// </summary>
    internal bool SourceYields =>
        Mesh is not null && Mesh.Sources.First(s => s.Name == Source).Kind != WiringMesh.SourceKind.Held;

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

    /// <summary>The mesh at these draws.</summary>
    internal WiringMesh.State StateAt(
        ElectricPotential supply,
        ReadOnlySpan<double> amperes,
        double injectorConductance
    ) => At(supply, amperes, injectorConductance).Solve();

    /// <summary>The circuit that pumps share, or that of a pump with its own.</summary>
    internal Circuit CircuitOf(int feed) => feed == 0 ? Pumps! : Feeds[feed - 1].Circuit!;

    private string LoadOf(int feed) => feed == 0 ? PumpLoad! : Feeds[feed - 1].Load!;

    private WiringMesh At(ElectricPotential? supply, ReadOnlySpan<double> amperes, double injectorConductance)
    {
        WiringMesh fed = supply is { } volts ? Mesh!.WithVoltage(Source!, volts) : Mesh!;
        for (int feed = 0; feed < amperes.Length; feed++)
        {
            WiringMesh.Load pump = Find(LoadOf(feed));
            fed = fed.WithLoad(
                WiringMesh.Load.ConstantCurrent(
                    pump.Name,
                    pump.Positive,
                    pump.Negative,
                    SiUnits.ElectricCurrent(amperes[feed])
                )
            );
        }

        WiringMesh.Load injectors = Find(InjectorLoad!);
        return fed.WithLoad(
            injectorConductance > 0
                ? WiringMesh.Load.FromResistance(
                    injectors.Name,
                    injectors.Positive,
                    injectors.Negative,
                    SiUnits.ElectricResistance(1 / injectorConductance)
                )
                : WiringMesh.Load.ConstantCurrent(injectors.Name, injectors.Positive, injectors.Negative, default)
        );
    }

    private WiringMesh.Load Find(string load) => Mesh!.Loads.First(l => l.Name == load);

    private string Load(string name, [CallerArgumentExpression(nameof(name))] string paramName = "") =>
        Mesh!.Loads[MeshChecks.Find(Mesh.Loads, l => l.Name, name, paramName)].Name;
}
