using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class DecayTest
{
    /// <summary>One reading of a pressure-decay test: time, gauge pressure, temperature of the fuel.</summary>
    public sealed class Reading
    {
        /// <summary>Creates a reading.</summary>
        /// <param name="time">Time since any common start; finite.</param>
        /// <param name="pressure">Gauge pressure.</param>
        /// <param name="temperature">Temperature of the fuel, which the gas shares; greater than zero kelvin.</param>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public Reading(Duration time, GaugePressure pressure, Temperature temperature)
        {
            Seconds = Guard.Finite(time, time.InSi());
            Kelvins = Guard.Positive(temperature, temperature.InSi());
            (Time, Pressure, Temperature) = (time, pressure, temperature);
        }

        /// <summary>When it was taken.</summary>
        public Duration Time { get; }

        /// <summary>The gauge pressure.</summary>
        public GaugePressure Pressure { get; }

        /// <summary>The temperature of the fuel.</summary>
        public Temperature Temperature { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Pressure}, {Temperature} at {Time}");

        internal double Seconds { get; }

        internal double Kelvins { get; }
    }
}
