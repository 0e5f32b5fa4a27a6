using UnitsNet;

namespace FuelMath.Bench;

public sealed partial class LeakageVerdict
{
    /// <summary>The volume of one drop, which converts counted drops to a flow.</summary>
    /// <remarks>
    /// It depends on the tip and the surface tension of the fluid. Where it matters, collect and weigh a hundred drops.
    /// </remarks>
    public sealed class DropVolume
    {
        private DropVolume(double cubicMeters, bool isEstimate, DataSource source) =>
            (Si, IsEstimate, Source) = (cubicMeters, isEstimate, source);

        /// <summary>
        /// 0.02 cm³, an estimate: a drop of water from a small tip is about 0.05 cm³, and the surface tension of light
        /// hydrocarbons
        /// over their density is less than half of water's. Source: [Common-practice] no single work.
        /// </summary>
        public static DropVolume Estimate { get; } =
            new(2e-8, true, new DataSource("Common-practice", "drop of a light hydrocarbon, estimate"));

        /// <summary>The volume, in m³.</summary>
        public Volume Volume => SiUnits.Volume(Si);

        /// <summary>Whether it is an estimate and not a measurement.</summary>
        public bool IsEstimate { get; }

        /// <summary>Where it comes from.</summary>
        public DataSource Source { get; }

        internal double Si { get; }

        /// <summary>A measured volume.</summary>
        /// <param name="volume">The volume of one drop; greater than zero.</param>
        /// <param name="source">Where it was measured.</param>
        /// <returns>The drop.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is not greater than
        /// zero.</exception>
        public static DropVolume FromVolume(Volume volume, DataSource source)
        {
            ArgumentNullException.ThrowIfNull(source);
            return new(Guard.Positive(volume, volume.InSi()), false, source);
        }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Volume}");
    }
}
