using UnitsNet;

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>A load that draws the same power at any voltage, so that its current rises as voltage falls: an electronic driver.</summary>
    public sealed class PowerLoad : Load
    {
        /// <summary>Describes the load.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="power">Its power; not negative.</param>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The power is out of its range.</exception>
        public PowerLoad(string name, string positive, string negative, Power power)
            : base(
                LoadKind.ConstantPower,
                name,
                positive,
                negative,
                Guard.NotNegative(power, power.InSi(), part: name)
            ) => Power = power;

        /// <summary>Its power.</summary>
        public Power Power { get; }

        internal override double AmperesAt(double volts) => Amount == 0 ? 0 : Amount / volts;
    }
}
