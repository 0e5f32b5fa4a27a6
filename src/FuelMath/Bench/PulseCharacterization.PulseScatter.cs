using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class PulseCharacterization
{
    /// <summary>The scatter of pulses about their line, which decides the weight of each reading.</summary>
    /// <remarks>
    /// <para>
    /// The weight of a reading is the number of its pulses over the variance of one. Where scatter grows in proportion
    /// to
    /// mass, equal weights overweight long pulses: the standard error of the static flow is then too small, and the
    /// interval of the dead time too long. Only the ratio of the two parts matters; the size of the scatter is
    /// estimated
    /// from the readings.
    /// </para>
    /// <para>Source: [Draper-Smith-1998] chapter 5, weights.</para>
    /// </remarks>
    public sealed class PulseScatter
    {
        private readonly double constant;
        private readonly double proportional;

        private PulseScatter(double constant, double proportional) =>
            (this.constant, this.proportional) = (constant, proportional);

        /// <summary>
        /// A constant mass at any width: for what is lost or gained once per pulse, and a coarse scale.
        /// </summary>
        public static PulseScatter Constant { get; } = new(1, 0);

        /// <summary>
        /// A constant fraction of the mass: for pressure, speed and flow that drift from reading to reading.
        /// </summary>
        public static PulseScatter Proportional { get; } = new(0, 1);

        /// <summary>Both at once; their variances add.</summary>
        /// <param name="constant">
        /// The part of a pulse's standard deviation that does not depend on its width; greater than zero.
        /// </param>
        /// <param name="proportional">
        /// The part that is proportional to its mass, as a fraction of it; greater than zero.
        /// </param>
        /// <returns>The scatter.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
        public static PulseScatter FromParts(Mass constant, Ratio proportional) =>
            new(Guard.Positive(constant, constant.InSi()), Guard.Positive(proportional, proportional.InSi()));

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of(
                $"{(constant > 0 ? "constant" : "")}{(constant > 0 && proportional > 0 ? " and " : "")}{(proportional > 0 ? "proportional" : "")}"
            );

        /// <summary>Whether the scatter depends on the mass of a pulse.</summary>
        internal bool DependsOnMass => proportional > 0;

        /// <summary>The weight of a reading: its pulses over the variance of one, up to a common factor.</summary>
        /// <param name="mass">The mass of a pulse, as a fraction of the largest; greater than zero.</param>
        /// <param name="largest">The largest mass, kg.</param>
        /// <param name="pulses">Number of pulses.</param>
        internal double Weight(double mass, double largest, int pulses)
        {
            (double fixedPart, double part) = (constant / largest, proportional * mass);
            double whole = DependsOnMass ? (fixedPart * fixedPart) + (part * part) : 1;
            return pulses * (DependsOnMass ? Unit(largest) / whole : 1);
        }

        /// <summary>The variance at the largest mass, so that weights are of order one.</summary>
        private double Unit(double largest) =>
            (constant / largest * (constant / largest)) + (proportional * proportional);
    }
}
