using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class SystemBrief
{
    /// <summary>What is known of a pump: some points of its curve, and their voltage.</summary>
    public sealed class PumpData
    {
        /// <summary>Describes a pump.</summary>
        /// <param name="voltage">The voltage at the pump for its points; greater than zero.</param>
        /// <param name="pumpPoints">Two or more, with increasing pressure rise and decreasing flow. Copied.</param>
        /// <exception cref="ArgumentNullException"><paramref name="pumpPoints"/> is null.</exception>
        /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The voltage is not greater than zero.</exception>
        public PumpData(ElectricPotential voltage, IEnumerable<PumpPoint> pumpPoints)
        {
            ArgumentNullException.ThrowIfNull(pumpPoints);
            Guard.Positive(voltage, voltage.InSi());
            (Voltage, Points) = (voltage, [.. pumpPoints]);
            Guard.AtLeast(2, Points.Length, "points of a pump", nameof(pumpPoints));
            Guard.StrictlyRising(
                [.. Points.Select(p => p.PressureRise.InSi())],
                "Pressure rise of the pump",
                nameof(pumpPoints)
            );
            Guard.StrictlyFalling([.. Points.Select(p => p.Flow.InSi())], "Flow of the pump", nameof(pumpPoints));
        }

        /// <summary>The voltage at the pump for its points.</summary>
        public ElectricPotential Voltage { get; }

        /// <summary>The points of its curve.</summary>
        public ImmutableArray<PumpPoint> Points { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Points.Length} points at {Voltage}");
    }
}
