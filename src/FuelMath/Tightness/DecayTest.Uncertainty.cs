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
        /// <param name="fuelVolume">Of the volume of fuel, as a fraction of it; not negative.</param>
        /// <param name="bulkModulus">Of the bulk modulus, as a fraction of it; not negative.</param>
        /// <param name="swelling">Of the swelling of the walls, as a fraction of it; not negative.</param>
        /// <param name="fuelExpansion">Of the expansion of the fuel, as a fraction of it; not negative.</param>
        /// <param name="wallExpansion">Of the expansion of the walls, as a fraction of it; not negative.</param>
        /// <param name="gas">Of the volume of gas at ambient pressure; not negative.</param>
        /// <exception cref="ArgumentOutOfRangeException">A number is negative or not finite.</exception>
        public Uncertainty(
            Pressure pressureDifference,
            TemperatureDelta temperature,
            Duration time,
            Ratio fuelVolume,
            Ratio bulkModulus,
            Ratio swelling,
            Ratio fuelExpansion,
            Ratio wallExpansion,
            Volume gas
        )
        {
            Pascals = Guard.NotNegative(pressureDifference, pressureDifference.InSi());
            Kelvins = Guard.NotNegative(temperature, temperature.InSi());
            Seconds = Guard.NotNegative(time, time.InSi());
            VolumeShare = Guard.NotNegative(fuelVolume, fuelVolume.InSi());
            ModulusShare = Guard.NotNegative(bulkModulus, bulkModulus.InSi());
            SwellingShare = Guard.NotNegative(swelling, swelling.InSi());
            FuelExpansionShare = Guard.NotNegative(fuelExpansion, fuelExpansion.InSi());
            WallExpansionShare = Guard.NotNegative(wallExpansion, wallExpansion.InSi());
            GasVolume = Guard.NotNegative(gas, gas.InSi());
            PressureDifference = pressureDifference;
            Temperature = temperature;
            Time = time;
            FuelVolume = fuelVolume;
            BulkModulus = bulkModulus;
            Swelling = swelling;
            FuelExpansion = fuelExpansion;
            WallExpansion = wallExpansion;
            Gas = gas;
        }

        /// <summary>Of each pressure reading.</summary>
        public Pressure PressureDifference { get; }

        /// <summary>Of each temperature reading.</summary>
        public TemperatureDelta Temperature { get; }

        /// <summary>Of each time.</summary>
        public Duration Time { get; }

        /// <summary>Of the volume of fuel.</summary>
        public Ratio FuelVolume { get; }

        /// <summary>Of the bulk modulus.</summary>
        public Ratio BulkModulus { get; }

        /// <summary>Of the swelling of the walls.</summary>
        public Ratio Swelling { get; }

        /// <summary>Of the expansion of the fuel.</summary>
        public Ratio FuelExpansion { get; }

        /// <summary>Of the expansion of the walls.</summary>
        public Ratio WallExpansion { get; }

        /// <summary>Of the volume of gas at ambient pressure.</summary>
        public Volume Gas { get; }

        internal double Pascals { get; }

        internal double Kelvins { get; }

        internal double Seconds { get; }

        internal double VolumeShare { get; }

        internal double ModulusShare { get; }

        internal double SwellingShare { get; }

        internal double FuelExpansionShare { get; }

        internal double WallExpansionShare { get; }

        internal double GasVolume { get; }

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
            LogText.Of($"pressure {PressureDifference}, temperature {Temperature}, gas {Gas}");
    }
}
