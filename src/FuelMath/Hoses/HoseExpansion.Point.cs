using UnitsNet;

namespace FuelMath;

public sealed partial class HoseExpansion
{
    /// <summary>One point of a hose's volumetric expansion: the added volume of a length under pressure.</summary>
    /// <remarks>The default value is no growth at ambient pressure.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates one point.</summary>
        /// <param name="pressure">Gauge pressure inside; greater than zero.</param>
        /// <param name="gain">Volume at that pressure less volume at ambient pressure; greater than zero.</param>
        /// <param name="ofLength">The length of hose that it was measured on; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is not finite or not greater than zero.</exception>
        public Point(GaugePressure pressure, Volume gain, Length ofLength)
        {
            Guard.Positive(pressure.AboveAmbient, pressure.Si, nameof(pressure));
            Guard.Positive(gain, gain.InSi());
            Guard.Positive(ofLength, ofLength.InSi());
            (Pressure, Gain, OfLength) = (pressure, gain, ofLength);
        }

        /// <summary>Gauge pressure inside.</summary>
        public GaugePressure Pressure { get; }

        /// <summary>Volume at that pressure less volume at ambient pressure.</summary>
        public Volume Gain { get; }

        /// <summary>The length of hose that it was measured on.</summary>
        public Length OfLength { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Gain} at {Pressure} on {OfLength}");
    }
}
