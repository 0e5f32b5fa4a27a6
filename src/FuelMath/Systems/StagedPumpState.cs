namespace FuelMath;

/// <summary>What a staged pump does at an operating point, and the state of the system with that.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class StagedPumpState
{
    internal StagedPumpState(bool isRunning, SystemState state, string reason, string other) =>
        (IsRunning, State, Reason, Other) = (isRunning, state, reason, other);

    /// <summary>Whether the staged pump runs.</summary>
    public bool IsRunning { get; }

    /// <summary>The state of the system; without the staged pump's line while that stands still.</summary>
    public SystemState State { get; }

    /// <summary>Why it runs or does not, with what the switch sees and its thresholds; sentences.</summary>
    public string Reason { get; }

    /// <summary>What is to be said of the other possibility, a sentence; empty when it would not last.</summary>
    public string Other { get; }
}
