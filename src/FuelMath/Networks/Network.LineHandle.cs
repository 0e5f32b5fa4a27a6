namespace FuelMath;

public sealed partial class Network
{
    /// <summary>
    /// A line of one network, found by its name once: what is asked with it needs no search for the name.
    /// </summary>
    /// <remarks>
    /// It comes from <see cref="Network.FindLine"/> and holds for that network at all conditions, for its states, buffers and
    /// batches, and for the states of a system that it is the path of (<c>SystemState.Network</c>). Another network
    /// refuses it, even one with the same names. The default value is of no network.
    /// </remarks>
    public readonly struct LineHandle
    {
        internal LineHandle(NetworkNames names, int index) => (Names, Index) = (names, index);

        /// <summary>The name of the line; empty in the default value.</summary>
        public string Name => Names?.Lines[Index] ?? "";

        internal NetworkNames? Names { get; }

        internal int Index { get; }

        /// <inheritdoc />
        public override string ToString() => Names is null ? "no line" : Name;
    }
}
