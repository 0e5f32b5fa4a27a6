using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class CoilVerdict
{
    /// <summary>
    /// One reading of a coil's resistance, with the resolution of the meter and the temperature of the coil.
    /// </summary>
    /// <remarks>Kept as read.</remarks>
    public sealed class Reading
    {
        /// <summary>Creates a reading.</summary>
        /// <param name="coil">The resistance, less that of the leads, with the temperature of the coil.</param>
        /// <param name="resolution">The smallest step that can be read; greater than zero, at most the
        /// resistance.</param>
        /// <exception cref="ArgumentNullException"><paramref name="coil"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// <paramref name="resolution"/> is not greater than zero, or is greater than the resistance.
        /// </exception>
        public Reading(CoilResistance coil, ElectricResistance resolution)
        {
            ArgumentNullException.ThrowIfNull(coil);
            double ohms = coil.Measured.InSi();
            StepShare = Guard.PositiveUpTo(resolution, resolution.InSi(), ohms, SiUnits.ElectricResistance) / ohms;
            (Coil, Resolution) = (coil, resolution);
        }

        /// <summary>The resistance with the temperature of the coil.</summary>
        public CoilResistance Coil { get; }

        /// <summary>The smallest step that can be read.</summary>
        public ElectricResistance Resolution { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Coil}");

        internal double StepShare { get; }
    }
}
