namespace FuelMath;

/// <summary>One of the states that a network can be in, and whether it stays there.</summary>
/// <remarks>
/// <para>
/// Stable is meant as static stability: after a small change of flow the difference between what the pump gives and what
/// the network asks for brings the flow back, because the pressure that the rest asks for rises more steeply with flow than
/// the pump's curve. That is needed for a steady flow but not enough: with a gas volume or a soft hose behind the pump, flow
/// may still surge on a rising part of the curve. Source: [Greitzer-1981].
/// </para>
/// </remarks>
public sealed class NetworkSolution
{
    internal NetworkSolution(NetworkState state, bool isStable) => (State, IsStable) = (state, isStable);

    /// <summary>The state; its remarks name the others.</summary>
    public NetworkState State { get; }

    /// <summary>Whether the flow comes back after a small change; always true where no pump's curve has a hump.</summary>
    public bool IsStable { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{State}, {(IsStable ? "stable" : "not stable")}");
}
