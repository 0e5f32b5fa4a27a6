using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class AcceptanceLimits
{
    /// <summary>The allowed band of a coil's resistance at 20 °C.</summary>
    /// <remarks>From the maker's data, or chosen by the caller.</remarks>
    public sealed class CoilBand
    {
        /// <summary>Creates a band.</summary>
        /// <param name="least">The least resistance at 20 °C; greater than zero.</param>
        /// <param name="most">The largest resistance at 20 °C; above the least.</param>
        /// <param name="source">Where it comes from.</param>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// The least is not greater than zero, or the largest not above the least.
        /// </exception>
        public CoilBand(ElectricResistance least, ElectricResistance most, DataSource source)
        {
            ArgumentNullException.ThrowIfNull(source);
            double low = Guard.Positive(least, least.InSi());
            double high = Guard.Positive(most, most.InSi());
            if (high <= low)
            {
                throw Guard.OutOfRange(most, $"above the least, {least:above}");
            }

            (Least, Most, Source) = (least, most, source);
        }

        /// <summary>The least resistance at 20 °C.</summary>
        public ElectricResistance Least { get; }

        /// <summary>The largest resistance at 20 °C.</summary>
        public ElectricResistance Most { get; }

        /// <summary>Where it comes from.</summary>
        public DataSource Source { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Least} to {Most}");
    }
}
