using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// A whole fuel delivery: the fuel, the engine that needs it, the path from tank to injector tip, the injectors, the
/// wiring and what the controller was told.
/// </summary>
/// <remarks>
/// <para>
/// A steady state on time means: injectors draw their mean flow. By how much pulsing raises losses in a line that
/// neither damps nor resonates, every result of a stage says.
/// </para>
/// <para>
/// Out of scope: aircraft, direct injection and float carburetors. A predicted lambda is never clearance to load an
/// engine: verify with a sensor at light load first.
/// </para>
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed partial class FuelSystem
{
    private readonly SwitchedSystem? switched;

    /// <summary>Puts a system together.</summary>
    /// <param name="name">What it is called; not blank.</param>
    /// <param name="fuel">The fuel in the tank.</param>
    /// <param name="engine">The engine.</param>
    /// <param name="network">The fuel path, at rest and without conditions; a node of fixed pressure is a tank.</param>
    /// <param name="stages">
    /// One stage, or primaries and then secondaries, which say when they join: <see cref="InjectorStage.WithStaging"/>.
    /// </param>
    /// <param name="power">The circuits that feed pumps and injectors.</param>
    /// <param name="source">Where the description comes from.</param>
    /// <remarks>Findings are held against <see cref="Limits.CommonPractice"/>, unless <see cref="WithLimits"/> says others.</remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The pieces do not fit together; the message says which.</exception>
    public FuelSystem(
        string name,
        Fuel fuel,
        Engine engine,
        Network network,
        IEnumerable<InjectorStage> stages,
        PowerSupply power,
        DataSource source
    )
        : this(
            name,
            fuel,
            engine,
            network,
            stages = [.. stages ?? throw new ArgumentNullException(nameof(stages))],
            stages.FirstOrDefault(s => s?.Staging is not null)?.Staging,
            power,
            FuelMath.Limits.CommonPractice,
            source
        ) { }

    /// <summary>With the staging beside the stages, as documents have it.</summary>
    internal FuelSystem(
        string name,
        Fuel fuel,
        Engine engine,
        Network network,
        IEnumerable<InjectorStage> stages,
        StageSchedule.Transition? staging,
        PowerSupply power,
        Limits limits,
        DataSource source
    )
        : this(name, fuel, engine, network, stages, staging, power, limits, source, null, []) { }

    private FuelSystem(
        string name,
        Fuel fuel,
        Engine engine,
        Network network,
        IEnumerable<InjectorStage> stages,
        StageSchedule.Transition? staging,
        PowerSupply power,
        Limits limits,
        DataSource source,
        ImmutableArray<int>? banks,
        ImmutableArray<UncertainInput> uncertain
    )
    {
        ArgumentNullException.ThrowIfNull(fuel);
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(stages);
        ArgumentNullException.ThrowIfNull(power);
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(source);
        Name = Guard.Name(name);
        Fuel = fuel;
        Engine = engine;
        (Network, Layout) = (network, new SystemLayout(network));
        Stages = [.. Lists.NoNulls(stages)];
        Staging = staging;
        Power = power;
        Limits = limits;
        Source = source;
        CheckStages();
        CheckPower();
        Banks = banks ?? [.. Enumerable.Repeat(1, engine.Chambers)];
        UncertainInputs = uncertain;
        Path = new SystemPath(this);
        switched = SwitchedSystem.Of(this);
    }

    /// <summary>The same system with some of its switched pumps running and the others stopped.</summary>
    private FuelSystem(FuelSystem other, Network running)
    {
        (Name, Fuel, Engine, Stages, Staging) = (other.Name, other.Fuel, other.Engine, other.Stages, other.Staging);
        (Power, Limits, Source) = (other.Power, other.Limits, other.Source);
        (Banks, UncertainInputs) = (other.Banks, other.UncertainInputs);
        (Network, Layout) = (running, other.Layout.Of(running));
        Path = new SystemPath(this, other.Path);
    }

    /// <summary>What was found when its network was looked over.</summary>
    internal SystemLayout Layout { get; }

    /// <summary>Prepared for solving as it stands, with every pump running that is not stopped.</summary>
    internal SystemPath Path { get; }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>The fuel in the tank.</summary>
    public Fuel Fuel { get; }

    /// <summary>The engine.</summary>
    public Engine Engine { get; }

    /// <summary>The fuel path.</summary>
    public Network Network { get; }

    /// <summary>One stage, or primaries and then secondaries.</summary>
    public ImmutableArray<InjectorStage> Stages { get; }

    /// <summary>How two stages share the fuel; null with one stage.</summary>
    public StageSchedule.Transition? Staging { get; }

    /// <summary>The circuits that feed pumps and injectors.</summary>
    public PowerSupply Power { get; }

    /// <summary>What findings are held against.</summary>
    public Limits Limits { get; }

    /// <summary>Where the description comes from.</summary>
    public DataSource Source { get; }

    /// <summary>
    /// The bank of each chamber, numbered from 1: the chambers of one bank share a lambda sensor. All 1 where one sensor
    /// stands behind all.
    /// </summary>
    public ImmutableArray<int> Banks { get; }

    /// <summary>What of the description is uncertain, and by how much; empty where nobody said.</summary>
    public ImmutableArray<UncertainInput> UncertainInputs { get; }

    /// <summary>Finds the steady state at an operating point.</summary>
    /// <param name="point">The operating point.</param>
    /// <returns>
    /// The state, with its findings and its evidence. Where pumps join and leave, the one that lasts, and of several that of the
    /// pumps that were running; its remarks say why.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <exception cref="NoSolutionException">No state satisfies the equations; the message says why.</exception>
    /// <exception cref="OutsideTableException">
    /// A part's data, the fuel's or the engine's do not reach this operating point. Only the state that is found is held
    /// against them, not the guesses on the way to it.
    /// </exception>
    /// <exception cref="UnknownPropertyException">The fuel's viscosity is not known.</exception>
    /// <exception cref="ArgumentException">The command gives pulse widths for another number of stages.</exception>
    public SystemState Solve(OperatingPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        if (switched is not null)
        {
            return switched
                .SolveAll(_ => new OnePoint(point), 1, SystemBatch.RunAlone, null, CancellationToken.None)
                .State();
        }

        var one = new OnePoint(point);
        SystemBatch.RunAlone(Path, one, 1, null, CancellationToken.None);
        return one.State();
    }

    /// <summary>The same system later: each pump with a switch was running if it ran in a state.</summary>
    /// <param name="last">The state: of this system, or of one with the same lines.</param>
    /// <returns>The system; this one if it has no such pumps, or each was as it ran.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="last"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="last"/> lacks a line that has a switch.</exception>
    public FuelSystem After(SystemState last)
    {
        ArgumentNullException.ThrowIfNull(last);
        return switched is null || switched.WasAsIn(last)
            ? this
            : WithNetwork(Network.WithLines(Network.Lines.Select(l => SwitchedNetwork.After(l, last.Network))));
    }

    /// <summary>The same system with some of its switched pumps running, a bit for each, and the others stopped.</summary>
    internal FuelSystem Running(ImmutableArray<SwitchedPump> pumps, int running) =>
        new(
            this,
            Network.WithLines(
                Network.Lines.Select(l =>
                    l.Switch is null
                        ? l
                        : l.Unswitched(SwitchedPump.Runs(pumps, running, l.Name) ? l.Part : new StoppedPump(l.Part))
                )
            )
        );

    /// <summary>Solves many points, each for every set of running pumps, and takes for each the one that lasts.</summary>
    /// <param name="of">Makes the points of a system.</param>
    /// <param name="count">How many.</param>
    /// <param name="run">How the points of one set are solved.</param>
    /// <param name="progress">Told how many points are done; may be null.</param>
    /// <param name="cancellation">Stops between some points.</param>
    internal TPoints SolveAll<TPoints>(
        Func<FuelSystem, TPoints> of,
        int count,
        SystemRun run,
        IProgress<int>? progress,
        CancellationToken cancellation
    )
        where TPoints : class, IChosenPoints<TPoints>
    {
        if (switched is not null)
        {
            return switched.SolveAll(of, count, run, progress, cancellation);
        }

        TPoints points = of(this);
        run(Path, points, count, progress, cancellation);
        return points;
    }

    /// <inheritdoc />
    public override string ToString() => Name;
}
