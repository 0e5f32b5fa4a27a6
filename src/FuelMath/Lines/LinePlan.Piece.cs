namespace FuelMath;

public sealed partial class LinePlan
{
    /// <summary>One piece of a line: an existing port, an adapter, or a hose with its fittings.</summary>
    public sealed class Piece
    {
        private Piece(string name, FittingEnd? start, FittingEnd? end) =>
            (Name, Start, End) = (Guard.Name(name), start, end);

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The end towards the start of the line; null where the line starts with this port.</summary>
        public FittingEnd? Start { get; }

        /// <summary>The end towards the end of the line; null where the line ends with this port.</summary>
        public FittingEnd? End { get; }

        /// <summary>The adapter, where it is one.</summary>
        public Adapter? Adapter { get; private init; }

        /// <summary>The loss of the adapter, where it is one.</summary>
        public Fitting? AdapterLoss { get; private init; }

        /// <summary>The hose, where it is one.</summary>
        public HoseAssembly? Hose { get; private init; }

        /// <summary>Whether it is an existing port, which is not bought.</summary>
        public bool IsPort => Adapter is null && Hose is null;

        /// <summary>The port that a line starts from.</summary>
        /// <param name="name">Its name, such as the pump's outlet; not blank.</param>
        /// <param name="end">Its end.</param>
        /// <returns>The piece.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="end"/> is null.</exception>
        public static Piece FromPort(string name, FittingEnd end)
        {
            ArgumentNullException.ThrowIfNull(end);
            return new(name, null, end);
        }

        /// <summary>The port that a line leads to.</summary>
        /// <param name="name">Its name, such as the rail's inlet; not blank.</param>
        /// <param name="end">Its end.</param>
        /// <returns>The piece.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="end"/> is null.</exception>
        public static Piece ToPort(string name, FittingEnd end)
        {
            ArgumentNullException.ThrowIfNull(end);
            return new(name, end, null);
        }

        /// <summary>An adapter; its first end is towards the start of the line.</summary>
        /// <param name="adapter">The adapter.</param>
        /// <param name="loss">Its loss.</param>
        /// <returns>The piece.</returns>
        /// <exception cref="ArgumentNullException">Either is null.</exception>
        public static Piece Between(Adapter adapter, Fitting loss)
        {
            ArgumentNullException.ThrowIfNull(adapter);
            ArgumentNullException.ThrowIfNull(loss);
            return new(adapter.Name, adapter.First, adapter.Second) { Adapter = adapter, AdapterLoss = loss };
        }

        /// <summary>A hose with its fittings; its first is towards the start of the line.</summary>
        /// <param name="hose">The hose.</param>
        /// <returns>The piece.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="hose"/> is null.</exception>
        public static Piece Along(HoseAssembly hose)
        {
            ArgumentNullException.ThrowIfNull(hose);
            return new(hose.Name, hose.First.End, hose.Second.End) { Hose = hose };
        }

        /// <inheritdoc />
        public override string ToString() => Name;
    }
}
