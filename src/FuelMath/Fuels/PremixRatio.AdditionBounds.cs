using UnitsNet;

namespace FuelMath;

public readonly partial struct PremixRatio
{
    /// <summary>Bounds on what to add to a tank whose remaining volume and mix are known only within limits.</summary>
    /// <remarks>
    /// The right amounts lie between the bounds. The most oil ensures lubrication, but its unburned part makes the
    /// mixture
    /// leaner; the least oil does the opposite. When the bounds are far apart, drain the tank and mix anew.
    /// </remarks>
    public sealed class AdditionBounds
    {
        private AdditionBounds(Additions[] corners)
        {
            LeastOil = SiUnits.Volume(corners.Min(c => c.Oil.InSi()));
            MostOil = SiUnits.Volume(corners.Max(c => c.Oil.InSi()));
            LeastFuel = SiUnits.Volume(corners.Min(c => c.Fuel.InSi()));
            MostFuel = SiUnits.Volume(corners.Max(c => c.Fuel.InSi()));
        }

        /// <summary>The least oil that may be missing.</summary>
        public Volume LeastOil { get; }

        /// <summary>The most oil that may be missing.</summary>
        public Volume MostOil { get; }

        /// <summary>The least fuel that may be missing.</summary>
        public Volume LeastFuel { get; }

        /// <summary>The most fuel that may be missing.</summary>
        public Volume MostFuel { get; }

        /// <summary>Computes the bounds for a remainder that is known within limits.</summary>
        /// <param name="wanted">The ratio that the whole is to have.</param>
        /// <param name="leastRemaining">The least volume that the tank may hold; not negative.</param>
        /// <param name="mostRemaining">The most volume that it may hold; not below the least.</param>
        /// <param name="leanest">
        /// The mix with the least oil that it may hold; <see cref="PremixRatio.NoOil"/> if unknown.
        /// </param>
        /// <param name="richest">The mix with the most oil that it may hold.</param>
        /// <param name="finalVolume">Volume in the tank afterwards; not below the most.</param>
        /// <returns>
        /// The bounds: oil and fuel are linear in volume and in oil content, so the extremes lie at the corners.
        /// </returns>
        /// <exception cref="ArgumentOutOfRangeException">
        /// A volume is outside its range, the leanest mix holds more oil than the richest, or a remainder in the limits
        /// can't be
        /// brought to the ratio.
        /// </exception>
        public static AdditionBounds For(
            PremixRatio wanted,
            Volume leastRemaining,
            Volume mostRemaining,
            PremixRatio leanest,
            PremixRatio richest,
            Volume finalVolume
        )
        {
            double least = Guard.NotNegative(leastRemaining, leastRemaining.InSi());
            double most = mostRemaining.InSi();
            if (!(most >= least * (1 - Guard.EdgeTolerance) && double.IsFinite(most)))
            {
                throw Guard.OutOfRange(mostRemaining, $"at least the least, {leastRemaining:least}");
            }

            if (leanest.Fraction > richest.Fraction)
            {
                throw Guard.Outside(
                    leanest,
                    RefusalCode.MoreOilThanRichest,
                    $"Must hold no more oil than the richest, {richest.ToString():other}; it was {leanest.ToString():given}."
                );
            }

            return new([
                wanted.TopUp(leastRemaining, leanest, finalVolume),
                wanted.TopUp(leastRemaining, richest, finalVolume),
                wanted.TopUp(mostRemaining, leanest, finalVolume),
                wanted.TopUp(mostRemaining, richest, finalVolume),
            ]);
        }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{LeastFuel} to {MostFuel} fuel, {LeastOil} to {MostOil} oil");
    }
}
