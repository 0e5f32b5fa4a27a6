using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class BenchConditions
{
    /// <summary>Standard uncertainties of the readings from which a flow on a bench is computed.</summary>
    /// <remarks>
    /// An instrument of resolution d reads to within half of it, which is a standard uncertainty of 0.29 d (Source:
    /// [JCGM-100] section F.2.2.1).
    /// </remarks>
    public sealed class Uncertainty
    {
        /// <summary>Creates the uncertainties.</summary>
        /// <param name="collected">Of the amount collected, as a fraction of it; not negative.</param>
        /// <param name="time">Of the collection time; not negative.</param>
        /// <param name="differentialPressure">Of the pressure across the injector; not negative.</param>
        /// <param name="density">
        /// Of the density of the fluid, as a fraction of it, with the effect of its temperature; not negative.
        /// </param>
        /// <param name="source">Where they come from.</param>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is negative or not finite.</exception>
        public Uncertainty(
            Ratio collected,
            Duration time,
            Pressure differentialPressure,
            Ratio density,
            DataSource source
        )
        {
            ArgumentNullException.ThrowIfNull(source);
            CollectedShare = Guard.NotNegative(collected, collected.InSi());
            Seconds = Guard.NotNegative(time, time.InSi());
            Pascals = Guard.NotNegative(differentialPressure, differentialPressure.InSi());
            DensityShare = Guard.NotNegative(density, density.InSi());
            (Collected, Time, DifferentialPressure, Density, Source) = (
                collected,
                time,
                differentialPressure,
                density,
                source
            );
        }

        /// <summary>Of the amount collected, as a fraction of it.</summary>
        public Ratio Collected { get; }

        /// <summary>Of the collection time.</summary>
        public Duration Time { get; }

        /// <summary>Of the pressure across the injector.</summary>
        public Pressure DifferentialPressure { get; }

        /// <summary>Of the density of the fluid, as a fraction of it.</summary>
        public Ratio Density { get; }

        /// <summary>Where they come from.</summary>
        public DataSource Source { get; }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"collected {Collected}, time {Time}, pressure {DifferentialPressure}, density {Density}");

        internal double CollectedShare { get; }

        internal double Seconds { get; }

        internal double Pascals { get; }

        internal double DensityShare { get; }
    }
}
