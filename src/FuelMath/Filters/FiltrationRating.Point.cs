using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class FiltrationRating
{
    /// <summary>
    /// The beta ratio of a filter at one particle size: particles of it and above, upstream over downstream.
    /// </summary>
    /// <remarks>The default value is not a valid point and is refused.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates one point.</summary>
        /// <param name="size">The particle size; greater than zero.</param>
        /// <param name="betaRatio">Particles of that size and above, upstream over downstream; 1 or more.</param>
        /// <exception cref="ArgumentOutOfRangeException">
        /// <paramref name="size"/> is not greater than zero, or <paramref name="betaRatio"/> is less than 1.
        /// </exception>
        public Point(Length size, Ratio betaRatio)
        {
            Guard.Positive(size, size.InSi());
            if (!(Guard.Finite(betaRatio, betaRatio.InSi()) >= 1))
            {
                throw Guard.OutOfRange(betaRatio, $"{SiUnits.Ratio(1):least} or more: no filter adds particles");
            }

            (Size, BetaRatio) = (size, betaRatio);
        }

        /// <summary>The particle size.</summary>
        public Length Size { get; }

        /// <summary>Particles of that size and above, upstream over downstream.</summary>
        public Ratio BetaRatio { get; }

        /// <summary>The fraction of such particles that is held back.</summary>
        public Ratio Efficiency => SiUnits.Ratio(Filtration.Efficiency(new Real(BetaRatio.InSi())).Value);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"beta {BetaRatio:1} at {Size:um}");
    }
}
