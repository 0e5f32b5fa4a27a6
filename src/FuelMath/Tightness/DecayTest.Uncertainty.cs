using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class DecayTest
{
    /// <summary>Standard uncertainties of the inputs of a leak rate.</summary>
    /// <remarks>
    /// That of a temperature is for the mean of all the trapped fuel, not for the thermometer: hoses near a warm engine
    /// differ by several kelvins from the rail where it is attached. A gauge of resolution d reads to within half of
    /// it,
    /// which is a standard uncertainty of 0.29 d (Source: [JCGM-100] section F.2.2.1).
    /// </remarks>
    public sealed class Uncertainty
    {
        /// <summary>Creates the uncertainties.</summary>
        /// <param name="pressureDifference">Of each pressure reading; not negative.</param>
        /// <param name="temperature">Of each temperature reading; not negative.</param>
        /// <param name="time">Of each time; not negative.</param>
        /// <param name="volume">Of the closed volume.</param>
        /// <exception cref="ArgumentNullException"><paramref name="volume"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is negative or not finite.</exception>
        public Uncertainty(
            Pressure pressureDifference,
            TemperatureDelta temperature,
            Duration time,
            ClosedVolume.Uncertainty volume
        )
        {
            ArgumentNullException.ThrowIfNull(volume);
            Pascals = Guard.NotNegative(pressureDifference, pressureDifference.InSi());
            Kelvins = Guard.NotNegative(temperature, temperature.InSi());
            Seconds = Guard.NotNegative(time, time.InSi());
            (PressureDifference, Temperature, Time, Volume) = (pressureDifference, temperature, time, volume);
        }

        /// <summary>Of each pressure reading.</summary>
        public Pressure PressureDifference { get; }

        /// <summary>Of each temperature reading.</summary>
        public TemperatureDelta Temperature { get; }

        /// <summary>Of each time.</summary>
        public Duration Time { get; }

        /// <summary>Of the closed volume.</summary>
        public ClosedVolume.Uncertainty Volume { get; }

        internal double Pascals { get; }

        internal double Kelvins { get; }

        internal double Seconds { get; }

        /// <summary>
        /// The standard uncertainty of a reading that is rounded to a resolution. Source: [JCGM-100] section F.2.2.1.
        /// </summary>
        /// <param name="resolutionDifference">The smallest step of the gauge; not negative.</param>
        /// <returns>The resolution over the root of twelve.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The resolution is negative or not finite.</exception>
        public static Pressure DifferenceOfResolution(Pressure resolutionDifference) =>
            SiUnits.Pressure(Guard.NotNegative(resolutionDifference, resolutionDifference.InSi()) / Math.Sqrt(12));

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"pressure {PressureDifference}, temperature {Temperature}, gas {Volume.Gas}");
    }
}
