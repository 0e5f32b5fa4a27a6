namespace FuelMath;

public sealed partial class LinePlan
{
    /// <summary>A hose with its fittings in a line.</summary>
    public sealed class HosePiece : Piece
    {
        /// <summary>Puts a hose into a line; its first fitting is towards the start of the line.</summary>
        /// <param name="hose">The hose.</param>
        /// <exception cref="ArgumentNullException"><paramref name="hose"/> is null.</exception>
        public HosePiece(HoseAssembly hose)
            : base((hose ?? throw new ArgumentNullException(nameof(hose))).Name, hose.First.End, hose.Second.End) =>
            Hose = hose;

        /// <summary>The hose.</summary>
        public HoseAssembly Hose { get; }

        /// <inheritdoc />
        internal override FlowPart Losing => Hose.Hose;

        /// <inheritdoc />
        internal override IEnumerable<Fitting> Fittings => [Hose.First.Loss, Hose.Second.Loss];
    }
}
