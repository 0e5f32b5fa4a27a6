using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class Placement
{
    /// <summary>An operating point for placement: the pulse commanded to each stage.</summary>
    public sealed class Point
    {
        /// <summary>Creates a point.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="pulseWidths">
        /// The commanded width of each stage, one or more; zero for an inactive stage. Copied.
        /// </param>
        /// <param name="period">Time from one pulse to the next; greater than zero.</param>
        /// <param name="differentialPressure">Rail less discharge pressure; greater than zero.</param>
        /// <param name="density">Density of the fuel at the injectors; greater than zero.</param>
        /// <param name="atInjector">Voltage at the injectors; greater than zero.</param>
        /// <exception cref="ArgumentNullException"><paramref name="pulseWidths"/> is null.</exception>
        /// <exception cref="ArgumentException">The name is blank, or there is no stage.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public Point(
            string name,
            IEnumerable<Duration> pulseWidths,
            Duration period,
            Pressure differentialPressure,
            Density density,
            ElectricPotential atInjector
        )
        {
            ArgumentNullException.ThrowIfNull(pulseWidths);
            Name = Guard.Name(name);
            PulseWidths = [.. pulseWidths];
            Guard.AtLeast(1, PulseWidths.Length, "A placement (its stages)", nameof(pulseWidths), part: name);
            foreach (Duration width in PulseWidths)
            {
                Guard.NotNegative(width, width.InSi(), nameof(pulseWidths), part: name);
            }

            Guard.Positive(period, period.InSi(), part: name);
            Guard.Positive(differentialPressure, differentialPressure.InSi(), part: name);
            Guard.Positive(density, density.InSi(), part: name);
            Guard.Positive(atInjector, atInjector.InSi(), part: name);
            (Period, DifferentialPressure, Density, AtInjector) = (period, differentialPressure, density, atInjector);
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The commanded width of each stage.</summary>
        public ImmutableArray<Duration> PulseWidths { get; }

        /// <summary>Time from one pulse to the next.</summary>
        public Duration Period { get; }

        /// <summary>Rail less discharge pressure.</summary>
        public Pressure DifferentialPressure { get; }

        /// <summary>Density of the fuel at the injectors.</summary>
        public Density Density { get; }

        /// <summary>Voltage at the injectors.</summary>
        public ElectricPotential AtInjector { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {PulseWidths.Length} stages every {Period}");
    }
}
