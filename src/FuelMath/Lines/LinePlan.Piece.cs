namespace FuelMath;

public sealed partial class LinePlan
{
    /// <summary>
    /// One piece of a line: a <see cref="StartPort"/>, an <see cref="EndPort"/>, an <see cref="AdapterPiece"/> or a
    /// <see cref="HosePiece"/>.
    /// </summary>
    public abstract class Piece
    {
        private protected Piece(string name, FittingEnd? start, FittingEnd? end) =>
            (Name, Start, End) = (Guard.Name(name), start, end);

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The end towards the start of the line; null where the line starts with this port.</summary>
        public FittingEnd? Start { get; }

        /// <summary>The end towards the end of the line; null where the line ends with this port.</summary>
        public FittingEnd? End { get; }

        /// <summary>What of it loses pressure; null for a port.</summary>
        internal virtual FlowPart? Losing => null;

        /// <summary>The fittings with losses of their own.</summary>
        internal virtual IEnumerable<Fitting> Fittings => [];

        /// <inheritdoc />
        public override string ToString() => Name;
    }
}
