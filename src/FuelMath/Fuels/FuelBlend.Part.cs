using UnitsNet;

namespace FuelMath;

public static partial class FuelBlend
{
    /// <summary>One part of a blend: a fuel and its fraction, by volume or by mass as the blend says.</summary>
    public sealed class Part
    {
        /// <summary>Creates a part.</summary>
        /// <param name="fuel">The fuel.</param>
        /// <param name="fraction">Its fraction, from 0 % to 100 %.</param>
        /// <exception cref="ArgumentNullException"><paramref name="fuel"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The fraction is not from 0 % to 100 %.</exception>
        public Part(Fuel fuel, Ratio fraction)
        {
            ArgumentNullException.ThrowIfNull(fuel);
            Fuel = fuel;
            Si = Guard.InRange(fraction, fraction.InSi(), 0, 1, SiUnits.Ratio);
            Fraction = fraction;
        }

        /// <summary>The fuel.</summary>
        public Fuel Fuel { get; }

        /// <summary>Its fraction, in the unit it was given in.</summary>
        public Ratio Fraction { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Fraction} {Fuel}");

        internal double Si { get; }
    }
}
