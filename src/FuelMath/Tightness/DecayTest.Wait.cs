using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class DecayTest
{
    /// <summary>The wait to detect a leak with a gauge, and the temperature drift that would hide it.</summary>
    public sealed class Wait
    {
        private Wait(Duration time, GaugePressure reading, TemperatureDelta hidingDrift)
        {
            Time = time;
            Reading = reading;
            HidingDrift = hidingDrift;
        }

        /// <summary>The wait, in s.</summary>
        public Duration Time { get; }

        /// <summary>The gauge reading by then.</summary>
        public GaugePressure Reading { get; }

        /// <summary>
        /// The warming over the wait that would compensate the leak, so that the gauge does not move.
        /// </summary>
        public TemperatureDelta HidingDrift { get; }

        /// <summary>Computes a wait.</summary>
        /// <param name="volume">The closed volume.</param>
        /// <param name="start">Gauge pressure at the start.</param>
        /// <param name="leak">The leak to detect.</param>
        /// <param name="resolutionDifference">The smallest step of the gauge; greater than zero.</param>
        /// <param name="steps">
        /// Steps by which the gauge must have moved; at least 2, because the first may be rounding.
        /// </param>
        /// <returns>The wait.</returns>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        /// <exception cref="NoSolutionException">
        /// The pressure never falls that far; the message says where it stops.
        /// </exception>
        public static Wait ToSee(
            ClosedVolume volume,
            GaugePressure start,
            LeakPath leak,
            Pressure resolutionDifference,
            int steps
        )
        {
            ArgumentNullException.ThrowIfNull(volume);
            ArgumentNullException.ThrowIfNull(leak);
            double step = Guard.Positive(resolutionDifference, resolutionDifference.InSi());
            var reading = new GaugePressure(start.Si - (step * Guard.InRange(steps, 2, 1000)));
            Duration time = leak.TimeToFall(volume, start, reading);
            double lost = volume.ReleasedBetween(start, reading).InSi();
            double gasGrowth = volume.Gas / (start.Si + volume.Outside) / volume.Kelvins;
            return new(
                time,
                reading,
                SiUnits.TemperatureDelta(lost / ((volume.Liquid * volume.Expansion) + gasGrowth))
            );
        }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Time} to read {Reading}");
    }
}
