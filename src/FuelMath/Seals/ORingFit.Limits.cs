using UnitsNet;

namespace FuelMath.Joints;

public sealed partial class ORingFit
{
    /// <summary>The limits of a static seal.</summary>
    public sealed class Limits
    {
        /// <summary>Sets limits.</summary>
        /// <param name="leastSqueeze">The least squeeze; greater than zero, because it alone seals at no
        /// pressure.</param>
        /// <param name="greatestSqueeze">The most squeeze; more than the least, and less than 100 %.</param>
        /// <param name="greatestStretch">The most stretch; not negative, up to 25 %.</param>
        /// <param name="greatestFill">The most that the ring may fill of its groove; greater than zero, up to 100
        /// %.</param>
        /// <param name="source">Where the limits come from.</param>
        /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        public Limits(
            Ratio leastSqueeze,
            Ratio greatestSqueeze,
            Ratio greatestStretch,
            Ratio greatestFill,
            DataSource source
        )
        {
            ArgumentNullException.ThrowIfNull(source);
            double least = Guard.Positive(leastSqueeze, leastSqueeze.InSi());
            double most = greatestSqueeze.InSi();
            if (!(most > least && most < 1))
            {
                throw Guard.OutOfRange(
                    greatestSqueeze,
                    $"more than {leastSqueeze:above} and less than {SiUnits.Ratio(1):below}"
                );
            }

            Guard.InRange(greatestStretch, greatestStretch.InSi(), 0, 0.25, SiUnits.Ratio);
            double fill = Guard.PositiveUpTo(greatestFill, greatestFill.InSi(), 1, SiUnits.Ratio);
            (LeastSqueeze, GreatestSqueeze, GreatestStretch, GreatestFill, Source) = (
                leastSqueeze,
                greatestSqueeze,
                greatestStretch,
                greatestFill,
                source
            );
        }

        /// <summary>Static radial seals: squeeze 10 to 30 %, stretch to 5 %, fill to 85 %. Common practice.</summary>
        public static Limits RadialStatic { get; } = Of(0.10, 0.30, "static radial seals of O-ring design guides");

        /// <summary>Static face seals: squeeze 10 to 35 %, stretch to 5 %, fill to 85 %. Common practice.</summary>
        public static Limits FaceStatic { get; } = Of(0.10, 0.35, "static face seals of O-ring design guides");

        /// <summary>The least squeeze.</summary>
        public Ratio LeastSqueeze { get; }

        /// <summary>The most squeeze.</summary>
        public Ratio GreatestSqueeze { get; }

        /// <summary>The most stretch.</summary>
        public Ratio GreatestStretch { get; }

        /// <summary>The most fill.</summary>
        public Ratio GreatestFill { get; }

        /// <summary>Where the limits come from.</summary>
        public DataSource Source { get; }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"squeeze {LeastSqueeze} to {GreatestSqueeze}, stretch {GreatestStretch}, fill {GreatestFill}");

        private static Limits Of(double least, double most, string locator) =>
            new(
                SiUnits.Ratio(least),
                SiUnits.Ratio(most),
                SiUnits.Ratio(0.05),
                SiUnits.Ratio(0.85),
                new DataSource("Common-practice", locator)
            );
    }
}
