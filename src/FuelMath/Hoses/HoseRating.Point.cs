using UnitsNet;

namespace FuelMath;

public sealed partial class HoseRating
{
    /// <summary>The working pressure of a hose at one temperature.</summary>
    /// <remarks>The default value is refused.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates one point.</summary>
        /// <param name="temperature">Temperature of the hose.</param>
        /// <param name="workingPressure">
        /// Greatest gauge pressure for continuous use at that temperature; greater than zero.
        /// </param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public Point(Temperature temperature, GaugePressure workingPressure)
        {
            Guard.Positive(temperature, temperature.InSi());
            Guard.Positive(workingPressure.AboveAmbient, workingPressure.Si, nameof(workingPressure));
            (Temperature, WorkingPressure) = (temperature, workingPressure);
        }

        /// <summary>Temperature of the hose.</summary>
        public Temperature Temperature { get; }

        /// <summary>Greatest gauge pressure for continuous use.</summary>
        public GaugePressure WorkingPressure { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{WorkingPressure} at {Temperature}");
    }
}
