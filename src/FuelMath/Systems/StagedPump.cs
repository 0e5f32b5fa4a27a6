using UnitsNet;

namespace FuelMath;

/// <summary>A fuel system with a second pump that joins and leaves by a switch.</summary>
/// <remarks>
/// <para>
/// The system is solved with the pump and without it, and a state lasts if the switch leaves the pump as it is there. While
/// the pump stands still its line is shut, as its check valve shuts it, and its motor draws no current.
/// </para>
/// <para>
/// Caution: a switch that joins a pump is no safety device. A pump must stop when the engine stalls or crashes. Where the
/// second pump does not join, the engine runs lean at full load: watch the rail pressure on the first runs, at light load.
/// </para>
/// <para>Immutable and safe to share between threads. Equality is by reference.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SystemExamples.cs" region="StagedPump" />
/// </example>
public sealed class StagedPump
{
    /// <summary>What a switch watches that looks at the pressure in the intake manifold: "manifold".</summary>
    public const string Manifold = "manifold";

    private readonly FuelSystem alone;

    /// <summary>Puts a switch on one pump of a system.</summary>
    /// <param name="system">The system, with the pump running.</param>
    /// <param name="line">The line that holds the pump; another line holds another one.</param>
    /// <param name="by">
    /// The switch. It watches a node of the plan or the <see cref="Manifold"/>, the flow through another line, or all that the
    /// injectors draw; and it knows whether the pump was running.
    /// </param>
    /// <exception cref="ArgumentNullException">System or switch is null.</exception>
    /// <exception cref="ArgumentException">
    /// The line holds no pump or the only one, or the switch watches nothing that the system has.
    /// </exception>
    public StagedPump(FuelSystem system, string line, PumpSwitch by)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(by);
        string[] pumps = [.. system.Plan.Lines.Where(l => l.Part is Pump).Select(l => l.Name)];
        if (!pumps.Contains(line))
        {
            throw new ArgumentException($"Must be one of: {string.Join(", ", pumps)}; it was '{line}'.", nameof(line));
        }

        if (pumps.Length == 1)
        {
            throw new ArgumentException($"A staged pump joins another; '{line}' is the only one.", nameof(line));
        }

        (System, Line, Switch) = (system, line, by);
        CheckWatched();
        alone = system.WithPlan(new(system.Plan.Nodes, system.Plan.Lines.Where(l => l.Name != line)));
    }

    /// <summary>The system, with the pump running.</summary>
    public FuelSystem System { get; }

    /// <summary>The line that holds the pump.</summary>
    public string Line { get; }

    /// <summary>The switch.</summary>
    public PumpSwitch Switch { get; }

    /// <summary>The same pump when it was running before, or was not.</summary>
    /// <param name="wasRunning">Whether it was running.</param>
    /// <returns>The pump; hand on <see cref="StagedPumpState.IsRunning"/> from point to point.</returns>
    public StagedPump After(bool wasRunning) => new(System, Line, Switch.After(wasRunning));

    /// <summary>Finds the state that lasts at an operating point.</summary>
    /// <param name="point">The operating point.</param>
    /// <returns>The state; where both would last, that of what was running.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <exception cref="NoSolutionException">
    /// Neither lasts: stopped the switch would start the pump, running it would stop it, so that it chatters; or there is no
    /// state. The message has both numbers.
    /// </exception>
    /// <exception cref="OutsideTableException">A part's data do not reach this operating point.</exception>
    public StagedPumpState Solve(OperatingPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        StagedPumpCase asWas = CaseOf(point, Switch.WasRunning);
        if (asWas.Lasts)
        {
            return new StagedPumpState(Switch.WasRunning, asWas.State!, asWas.Words, OtherOf(point));
        }

        StagedPumpCase other = CaseOf(point, !Switch.WasRunning);
        return other.Lasts
            ? new StagedPumpState(!Switch.WasRunning, other.State!, $"{asWas.Words} {other.Words}", "")
            : throw new NoSolutionException(
                "the state of a fuel system with a staged pump",
                $"It lasts neither running nor stopped. {asWas.Words} {other.Words}",
                Line,
                double.NaN,
                0
            );
    }

    private string OtherOf(OperatingPoint point)
    {
        try
        {
            return CaseOf(point, !Switch.WasRunning).Lasts
                ? $"It would last {(Switch.WasRunning ? "stopped" : "running")}, too; what was running decides."
                : "";
        }
        catch (OutsideTableException unknown)
        {
            return $"Whether it would last {(Switch.WasRunning ? "stopped" : "running")}, too, is not known: {unknown.Message}";
        }
    }

    private StagedPumpCase CaseOf(OperatingPoint point, bool running)
    {
        SystemState state;
        try
        {
            state = (running ? System : alone).Solve(point);
        }
        catch (NoSolutionException none)
        {
            return new(null, false, $"With '{Line}' {Word(running)} there is no state: {none.Reason}");
        }

        double value = ValueIn(state);
        bool lasts = Switch.Agrees(running, value);
        string acts = running ? "stops" : "starts";
        return new(
            state,
            lasts,
            $"With '{Line}' {Word(running)} {Switch.Subject} is {Switch.Show(value)}{(lasts ? "" : $", which {acts} it")}: {Switch.Thresholds}."
        );
    }

    private double ValueIn(SystemState state) =>
        Switch.Kind switch
        {
            PumpSwitchKind.FlowAbove => state.FlowThrough(Switch.Watched).InSi(),
            PumpSwitchKind.TotalDrawAbove => state.Injectors.Sum(i => i.MeanFlow.InSi()),
            _ when IsManifold => state.Point.Manifold.ToGauge(state.Point.Ambient).Si,
            _ => state.PressureAt(Switch.Watched).Si,
        };

    private bool IsManifold => Switch.WatchesPressure && Switch.Watched == Manifold;

    private void CheckWatched()
    {
        bool isNode = System.Plan.Nodes.Any(n => n.Name == Switch.Watched);
        if (IsManifold && isNode)
        {
            throw new ArgumentException(
                $"A switch may not watch '{Manifold}' where a node of the plan is called so; rename the node.",
                "by"
            );
        }

        string[] known = Switch.WatchesPressure
            ? [.. System.Plan.Nodes.Select(n => n.Name), Manifold]
            : [.. System.Plan.Lines.Select(l => l.Name).Where(n => n != Line)];
        if (Switch.Kind != PumpSwitchKind.TotalDrawAbove && !known.Contains(Switch.Watched))
        {
            throw new ArgumentException(
                $"A switch must watch one of: {string.Join(", ", known)}; it was '{Switch.Watched}'.",
                "by"
            );
        }
    }

    private static string Word(bool running) => running ? "running" : "stopped";
}
