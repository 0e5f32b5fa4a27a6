using UnitsNet;

namespace FuelMath;

/// <summary>
/// A switch that starts a pump at one value of a watched quantity and stops it at another. Between the two the pump
/// stays as it was.
/// </summary>
/// <remarks>
/// It acts on the steady state only: its timing is not modeled. A switch of a fuel pump is no safety device: a pump
/// must stop when the engine stalls or in a crash, whatever its switch.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class PumpSwitch
{
    private PumpSwitch(PumpSwitchKind kind, string watched, double join, double leave, bool wasRunning)
    {
        (Kind, Watched, JoinSi, LeaveSi, WasRunning) = (kind, watched, join, leave, wasRunning);
        if (JoinsBelow ? leave < join : leave > join)
        {
            RefusalText sentence = JoinsBelow
                ? (RefusalText)
                    $"A pump must leave at or above where it joins, {Watch(join):least}; it was {Watch(leave):value}."
                : $"A pump must leave at or below where it joins, {Watch(join):most}; it was {Watch(leave):value}.";
            throw new RefusedArgumentException(
                RefusalCode.OutOfRange,
                sentence,
                JoinsBelow ? "leaveAbove" : "leaveBelow"
            );
        }
    }

    /// <summary>Joins when a pressure is low, as that of a rail.</summary>
    /// <param name="node">The node of the watched pressure.</param>
    /// <param name="joinBelow">Below this a stopped pump joins.</param>
    /// <param name="leaveAbove">Above this a running pump leaves; not below the other.</param>
    /// <param name="wasRunning">Whether it was running.</param>
    /// <returns>The switch.</returns>
    /// <exception cref="ArgumentException">The name is blank, or the pump would leave before it joined.</exception>
    public static PumpSwitch PressureBelow(
        string node,
        GaugePressure joinBelow,
        GaugePressure leaveAbove,
        bool wasRunning
    ) => new(PumpSwitchKind.PressureBelow, Guard.Name(node), joinBelow.Si, leaveAbove.Si, wasRunning);

    /// <summary>Joins when a pressure is high, as in a manifold under boost.</summary>
    /// <param name="node">The node of the watched pressure.</param>
    /// <param name="joinAbove">Above this a stopped pump joins.</param>
    /// <param name="leaveBelow">Below this a running pump leaves; not above the other.</param>
    /// <param name="wasRunning">Whether it was running.</param>
    /// <returns>The switch.</returns>
    /// <exception cref="ArgumentException">The name is blank, or the pump would leave before it joined.</exception>
    public static PumpSwitch PressureAbove(
        string node,
        GaugePressure joinAbove,
        GaugePressure leaveBelow,
        bool wasRunning
    ) => new(PumpSwitchKind.PressureAbove, Guard.Name(node), joinAbove.Si, leaveBelow.Si, wasRunning);

    /// <summary>Joins when the pressure in the intake manifold is high, as under boost.</summary>
    /// <param name="joinAbove">Above this a stopped pump joins.</param>
    /// <param name="leaveBelow">Below this a running pump leaves; not above the other.</param>
    /// <param name="wasRunning">Whether it was running.</param>
    /// <returns>The switch.</returns>
    /// <exception cref="ArgumentException">The pump would leave before it joined.</exception>
    public static PumpSwitch ManifoldAbove(GaugePressure joinAbove, GaugePressure leaveBelow, bool wasRunning) =>
        new(PumpSwitchKind.ManifoldAbove, "", joinAbove.Si, leaveBelow.Si, wasRunning);

    /// <summary>Joins when the flow through a line is high.</summary>
    /// <param name="line">The line of the watched flow, positive in its direction.</param>
    /// <param name="joinAbove">Above this a stopped pump joins; finite.</param>
    /// <param name="leaveBelow">Below this a running pump leaves; finite, not above the other.</param>
    /// <param name="wasRunning">Whether it was running.</param>
    /// <returns>The switch.</returns>
    /// <exception cref="ArgumentException">
    /// The name is blank, a flow is not finite, or the pump would leave before it joined.
    /// </exception>
    public static PumpSwitch FlowAbove(string line, VolumeFlow joinAbove, VolumeFlow leaveBelow, bool wasRunning) =>
        new(
            PumpSwitchKind.FlowAbove,
            Guard.Name(line),
            Guard.Finite(joinAbove, joinAbove.InSi()),
            Guard.Finite(leaveBelow, leaveBelow.InSi()),
            wasRunning
        );

    /// <summary>Joins when the total draw is high: at all junctions and through all openings together.</summary>
    /// <param name="joinAbove">Above this a stopped pump joins; finite.</param>
    /// <param name="leaveBelow">Below this a running pump leaves; finite, not above the other.</param>
    /// <param name="wasRunning">Whether it was running.</param>
    /// <returns>The switch.</returns>
    /// <exception cref="ArgumentException">A flow is not finite, or the pump would leave before it joined.</exception>
    public static PumpSwitch TotalDrawAbove(VolumeFlow joinAbove, VolumeFlow leaveBelow, bool wasRunning) =>
        new(
            PumpSwitchKind.TotalDrawAbove,
            "",
            Guard.Finite(joinAbove, joinAbove.InSi()),
            Guard.Finite(leaveBelow, leaveBelow.InSi()),
            wasRunning
        );

    /// <summary>The name of the watched node or line; empty for the total draw and for the manifold.</summary>
    public string Watched { get; }

    /// <summary>Whether the pump was running: it decides where running and stopped are both consistent.</summary>
    public bool WasRunning { get; }

    internal PumpSwitchKind Kind { get; }

    /// <summary>Pa gauge or m³/s.</summary>
    internal double JoinSi { get; }

    /// <summary>Pa gauge or m³/s.</summary>
    internal double LeaveSi { get; }

    /// <summary>Whether it watches a pressure rather than a flow.</summary>
    internal bool WatchesPressure => !WatchesFlow;

    /// <summary>Whether it watches a flow.</summary>
    private bool WatchesFlow => Kind is PumpSwitchKind.FlowAbove or PumpSwitchKind.TotalDrawAbove;

    /// <summary>Whether the watched quantity has a name.</summary>
    internal bool WatchesName => Watched.Length > 0;

    private bool JoinsBelow => Kind == PumpSwitchKind.PressureBelow;

    /// <summary>The same switch for a pump that was running, or not.</summary>
    /// <param name="wasRunning">Whether it was running.</param>
    /// <returns>The switch.</returns>
    public PumpSwitch After(bool wasRunning) => new(Kind, Watched, JoinSi, LeaveSi, wasRunning);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Subject}: {(WasRunning ? "was running" : "was not running")}");

    /// <summary>Whether a running or stopped pump stays so at a value of the watched quantity.</summary>
    internal bool Agrees(bool running, double value) =>
        (running, JoinsBelow) switch
        {
            (true, true) => value <= LeaveSi,
            (true, false) => value >= LeaveSi,
            (false, true) => value >= JoinSi,
            (false, false) => value <= JoinSi,
        };

    /// <summary>The watched quantity, as a noun.</summary>
    internal string Subject =>
        Kind switch
        {
            PumpSwitchKind.FlowAbove => $"the flow in '{Watched}'",
            PumpSwitchKind.TotalDrawAbove => "the total draw",
            PumpSwitchKind.ManifoldAbove => "the pressure in the manifold",
            _ => $"the pressure at '{Watched}'",
        };

    /// <summary>When it acts, as a clause.</summary>
    internal string Thresholds =>
        JoinsBelow
            ? $"it joins below {Show(JoinSi)} and leaves above {Show(LeaveSi)}"
            : $"it joins above {Show(JoinSi)} and leaves below {Show(LeaveSi)}";

    /// <summary>A value of the watched quantity, with its unit.</summary>
    internal string Show(double value) => Watch(value).Text();

    private Amount Watch(double value) =>
        WatchesPressure ? Amount.KilopascalsGauge(value) : Amount.LitersPerHour(value);
}
