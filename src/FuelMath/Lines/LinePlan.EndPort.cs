namespace FuelMath;

public sealed partial class LinePlan
{
    /// <summary>The port that a line leads to. It is there already and is not bought.</summary>
    public sealed class EndPort : Piece
    {
        /// <summary>Describes the port.</summary>
        /// <param name="name">Its name, such as the rail's inlet; not blank.</param>
        /// <param name="end">Its end.</param>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="end"/> is null.</exception>
        public EndPort(string name, FittingEnd end)
            : base(name, end ?? throw new ArgumentNullException(nameof(end)), null) { }
    }
}
