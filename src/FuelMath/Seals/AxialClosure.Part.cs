namespace FuelMath.Joints;

public sealed partial class AxialClosure
{
    /// <summary>One length in an axial stack, which opens the gap or fills it.</summary>
    public sealed class Part
    {
        private Part(string name, TolerancedLength length, bool opens)
        {
            Name = Guard.Name(name);
            ArgumentNullException.ThrowIfNull(length);
            (Length, Opens) = (length, opens);
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>Its length along the axis.</summary>
        public TolerancedLength Length { get; }

        /// <summary>Whether it opens the gap; otherwise it fills it.</summary>
        public bool Opens { get; }

        /// <summary>A distance that opens the gap: rail seat to port seat, a spacer under the rail.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="length">Its length along the axis.</param>
        /// <returns>The part.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="length"/> is null.</exception>
        public static Part Opening(string name, TolerancedLength length) => new(name, length, true);

        /// <summary>A part that fills the gap: injector body between its seats, adapter, extension.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="length">Its length along the axis.</param>
        /// <returns>The part.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="length"/> is null.</exception>
        public static Part Filling(string name, TolerancedLength length) => new(name, length, false);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {Length}");
    }
}
