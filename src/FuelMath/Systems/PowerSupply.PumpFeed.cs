namespace FuelMath;

public abstract partial class PowerSupply
{
    /// <summary>The separate supply of one pump: a circuit, or a load in a mesh.</summary>
    public sealed class PumpFeed
    {
        /// <summary>A pump with a circuit of its own, beside a supply of two circuits.</summary>
        /// <param name="line">The line that holds the pump.</param>
        /// <param name="circuit">Feeds it alone.</param>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="circuit"/> is null.</exception>
        public PumpFeed(string line, Circuit circuit)
        {
            ArgumentNullException.ThrowIfNull(circuit);
            (Line, Circuit) = (Guard.Name(line), circuit);
        }

        /// <summary>A pump that is a load of its own in a supply by a mesh.</summary>
        /// <param name="line">The line that holds the pump.</param>
        /// <param name="load">The load of the mesh that represents it, solved with the current that it draws.</param>
        /// <exception cref="ArgumentException">A name is blank.</exception>
        public PumpFeed(string line, string load) => (Line, Load) = (Guard.Name(line), Guard.Name(load));

        /// <summary>The line that holds the pump.</summary>
        public string Line { get; }

        /// <summary>The circuit; null in a mesh.</summary>
        public Circuit? Circuit { get; }

        /// <summary>The load of the mesh; null with a circuit.</summary>
        public string? Load { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Line}");
    }
}
