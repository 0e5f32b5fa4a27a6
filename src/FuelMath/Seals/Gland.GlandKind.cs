namespace FuelMath.Joints;

public sealed partial class Gland
{
    /// <summary>How a groove holds its ring.</summary>
    public enum GlandKind
    {
        /// <summary>Groove outside on the inner part; the ring is stretched on it and pressed against a bore.</summary>
        Piston,

        /// <summary>Groove inside the outer part; the ring is pressed on the inner part.</summary>
        Rod,

        /// <summary>Groove in a face; the ring is pressed by a cover or flange.</summary>
        Face,
    }
}
