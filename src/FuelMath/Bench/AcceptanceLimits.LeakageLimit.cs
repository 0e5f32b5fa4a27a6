using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class AcceptanceLimits
{
    /// <summary>The allowed leakage of a closed injector, in drops per time or volume per time.</summary>
    /// <remarks>Makers' data come first.</remarks>
    public sealed class LeakageLimit
    {
        private LeakageLimit(double si, bool isByDrops, DataSource source)
        {
            ArgumentNullException.ThrowIfNull(source);
            (Si, IsByDrops, Source) = (si, isByDrops, source);
        }

        /// <summary>One drop a minute. Source: [Common-practice] no single work.</summary>
        public static LeakageLimit CommonPractice { get; } =
            new(1 / 60.0, true, new DataSource("Common-practice", "at most one drop a minute"));

        /// <summary>Whether it counts drops; otherwise it is a volume.</summary>
        public bool IsByDrops { get; }

        /// <summary>Where it comes from.</summary>
        public DataSource Source { get; }

        /// <summary>Drops or m³ per second.</summary>
        internal double Si { get; }

        /// <summary>A limit in drops.</summary>
        /// <param name="most">The most drops per time; greater than zero.</param>
        /// <param name="source">Where it comes from.</param>
        /// <returns>The limit.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is not greater than zero.</exception>
        public static LeakageLimit FromDrops(Frequency most, DataSource source) =>
            new(Guard.Positive(most, most.InSi()), true, source);

        /// <summary>A limit in volume.</summary>
        /// <param name="most">The most volume per time; greater than zero.</param>
        /// <param name="source">Where it comes from.</param>
        /// <returns>The limit.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is not greater than zero.</exception>
        public static LeakageLimit FromVolume(VolumeFlow most, DataSource source) =>
            new(Guard.Positive(most, most.InSi()), false, source);

        /// <summary>Formats the limit.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            IsByDrops
                ? FormattableString.Invariant($"{Si * 60:0.###} drops/min")
                : Guard.Show(SiUnits.VolumeFlow(Si), UnitsNet.Units.VolumeFlowUnit.CubicCentimeterPerMinute);
    }
}
