using UnitsNet;

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>A load whose current is in proportion to voltage: a coil, a lamp, a heater.</summary>
    public sealed class ResistanceLoad : Load
    {
        /// <summary>Describes the load.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="resistance">Its resistance; greater than zero.</param>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The resistance is out of its range.</exception>
        public ResistanceLoad(string name, string positive, string negative, ElectricResistance resistance)
            : base(
                LoadKind.Resistance,
                name,
                positive,
                negative,
                Guard.Positive(resistance, resistance.InSi(), part: name)
            ) => Resistance = resistance;

        /// <summary>Its resistance.</summary>
        public ElectricResistance Resistance { get; }

        internal override double AmperesAt(double volts) => volts / Amount;
    }
}
