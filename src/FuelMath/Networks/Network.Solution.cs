namespace FuelMath;

public sealed partial class Network
{
    /// <summary>One of the possible states of a network, and whether it is stable.</summary>
    /// <remarks>
    /// <para>
    /// This is static stability: after a small change of flow the difference between the given and the required rise
    /// restores the flow, because the required rise increases more steeply with flow than the pump's curve. That is
    /// necessary for a steady flow but not sufficient: with a gas volume or a soft hose behind the pump, flow may still
    /// surge on a rising part of the curve. Source: [Greitzer-1981].
    /// </para>
    /// </remarks>
    public sealed class Solution
    {
        internal Solution(NetworkState state, bool isStable) => (State, IsStable) = (state, isStable);

        /// <summary>The state; its remarks name the others.</summary>
        public NetworkState State { get; }

        /// <summary>
        /// Whether the flow returns after a small change; always true where no pump curve has a hump.
        /// </summary>
        public bool IsStable { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{State}, {(IsStable ? "stable" : "not stable")}");
    }
}
