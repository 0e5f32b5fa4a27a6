namespace FuelMath;

public sealed partial class LinePlan
{
    /// <summary>An adapter in a line.</summary>
    public sealed class AdapterPiece : Piece
    {
        /// <summary>Puts an adapter into a line; its first end is towards the start of the line.</summary>
        /// <param name="adapter">The adapter.</param>
        /// <param name="loss">Its loss.</param>
        /// <exception cref="ArgumentNullException">Either is null.</exception>
        public AdapterPiece(Adapter adapter, Fitting loss)
            : base((adapter ?? throw new ArgumentNullException(nameof(adapter))).Name, adapter.First, adapter.Second)
        {
            ArgumentNullException.ThrowIfNull(loss);
            (Adapter, Loss) = (adapter, loss);
        }

        /// <summary>The adapter.</summary>
        public Adapter Adapter { get; }

        /// <summary>Its loss.</summary>
        public Fitting Loss { get; }

        /// <inheritdoc />
        internal override FlowPart Losing => Loss;

        /// <inheritdoc />
        internal override IEnumerable<Fitting> Fittings => [Loss];
    }
}
