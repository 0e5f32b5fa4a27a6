using UnitsNet;

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>A load that draws the same current at any voltage: a pump at a given operating point.</summary>
    public sealed class CurrentLoad : Load
    {
        /// <summary>Describes the load.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="current">Its current; not negative.</param>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The current is out of its range.</exception>
        public CurrentLoad(string name, string positive, string negative, ElectricCurrent current)
            : base(
                LoadKind.ConstantCurrent,
                name,
                positive,
                negative,
                Guard.NotNegative(current, current.InSi(), part: name)
            ) => Current = current;

        /// <summary>Its current.</summary>
        public ElectricCurrent Current { get; }

        internal override double AmperesAt(double volts) => Amount;
    }
}
