using UnitsNet;

namespace FuelMath.Joints;

public sealed partial class ORingFit
{
    /// <summary>The changes of size of ring and metal since they were measured: swelling, heat, cold.</summary>
    /// <remarks>
    /// The numbers are the caller's: swelling of a rubber in a fuel from its maker's data, thermal strain from
    /// coefficient
    /// times temperature difference. In the cold, rubber shrinks about ten times as much as steel, and seals may then
    /// leak.
    /// The default is as made.
    /// </remarks>
    public readonly struct Conditions : IEquatable<Conditions>
    {
        private const double Most = 0.5;
        private readonly double ring;
        private readonly double metal;

        /// <summary>Gives both changes.</summary>
        /// <param name="ringChange">Linear change of the ring; from -50 % to 50 %.</param>
        /// <param name="metalChange">Linear change of the metal; from -50 % to 50 %.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public Conditions(Ratio ringChange, Ratio metalChange)
        {
            ring = Guard.InRange(ringChange, ringChange.InSi(), -Most, Most, SiUnits.Ratio);
            metal = Guard.InRange(metalChange, metalChange.InSi(), -Most, Most, SiUnits.Ratio);
        }

        /// <summary>As made and measured.</summary>
        public static Conditions AsMade => default;

        /// <summary>Linear change of the ring.</summary>
        public Ratio RingChange => SiUnits.Ratio(ring);

        /// <summary>Linear change of the metal.</summary>
        public Ratio MetalChange => SiUnits.Ratio(metal);

        internal double RingFactor => 1 + ring;

        internal double MetalFactor => 1 + metal;

        /// <summary>A ring that swelled in fuel, metal as made.</summary>
        /// <param name="volumeSwell">Growth of its volume, as its maker states it for that fuel; from -50 % to 200
        /// %.</param>
        /// <returns>The state: swelling is the same in all directions.</returns>
        /// <exception cref="ArgumentOutOfRangeException">
        /// <paramref name="volumeSwell"/> is not from -50 % to 200 %.
        /// </exception>
        public static Conditions FromSwell(Ratio volumeSwell)
        {
            double swell = Guard.InRange(volumeSwell, volumeSwell.InSi(), -0.5, 2, SiUnits.Ratio);
            return new(SiUnits.Ratio(Math.Cbrt(1 + swell) - 1), SiUnits.Ratio(0));
        }

        /// <summary>Compares for equality.</summary>
        /// <param name="left">One state.</param>
        /// <param name="right">The other.</param>
        /// <returns>Whether both changes are the same numbers.</returns>
        public static bool operator ==(Conditions left, Conditions right) => left.Equals(right);

        /// <summary>Compares for inequality.</summary>
        /// <param name="left">One state.</param>
        /// <param name="right">The other.</param>
        /// <returns>Whether a change differs.</returns>
        public static bool operator !=(Conditions left, Conditions right) => !left.Equals(right);

        /// <inheritdoc />
        public bool Equals(Conditions other) => ring.Equals(other.ring) && metal.Equals(other.metal);

        /// <inheritdoc />
        public override bool Equals(object? obj) => obj is Conditions other && Equals(other);

        /// <inheritdoc />
        public override int GetHashCode() => HashCode.Combine(ring, metal);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"ring {RingChange}, metal {MetalChange}");
    }
}
