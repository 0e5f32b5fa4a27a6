namespace FuelMath;

public sealed partial class LinePlan
{
    /// <summary>The port that a line starts from. It is there already and is not bought.</summary>
    public sealed class StartPort : Piece
    {
        /// <summary>Describes the port.</summary>
        /// <param name="name">Its name, such as the pump's outlet; not blank.</param>
        /// <param name="end">Its end.</param>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="end"/> is null.</exception>
        public StartPort(string name, FittingEnd end)
            : base(name, null, end ?? throw new ArgumentNullException(nameof(end))) { }
    }
}
