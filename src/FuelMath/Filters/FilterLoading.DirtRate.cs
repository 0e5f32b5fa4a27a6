using UnitsNet;

namespace FuelMath;

public sealed partial class FilterLoading
{
    /// <summary>The rate of dirt that reaches a filter, between two bounds known to the caller.</summary>
    /// <remarks>
    /// It can't be derived from a drawing. There is no default, and a result is as wide as the bounds.
    /// </remarks>
    public sealed class DirtRate
    {
        /// <summary>Creates bounds.</summary>
        /// <param name="least">The least mass of dirt per time; not negative.</param>
        /// <param name="greatest">The greatest mass of dirt per time; greater than zero and not below the
        /// least.</param>
        /// <param name="source">Where the bounds come from.</param>
        /// <exception cref="ArgumentOutOfRangeException">
        /// <paramref name="least"/> is negative, or <paramref name="greatest"/> is not greater than zero or is below
        /// <paramref name="least"/>.
        /// </exception>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        public DirtRate(MassFlow least, MassFlow greatest, DataSource source)
        {
            ArgumentNullException.ThrowIfNull(source);
            double low = Guard.NotNegative(least, least.InSi());
            if (!(Guard.Positive(greatest, greatest.InSi()) >= low))
            {
                throw Guard.OutOfRange(greatest, $"at least the least, {least:least}");
            }

            (Least, Greatest, Source) = (least, greatest, source);
        }

        /// <summary>The least mass of dirt per time.</summary>
        public MassFlow Least { get; }

        /// <summary>The greatest.</summary>
        public MassFlow Greatest { get; }

        /// <summary>Where the bounds come from.</summary>
        public DataSource Source { get; }

        /// <summary>Bounds from those of the flow and of its dirt content.</summary>
        /// <param name="leastFlow">The least flow; not negative.</param>
        /// <param name="greatestFlow">The greatest flow.</param>
        /// <param name="leastContent">The least mass of dirt per volume; not negative.</param>
        /// <param name="greatestContent">The greatest.</param>
        /// <param name="source">Where the bounds come from.</param>
        /// <returns>The rate: least times least to greatest times greatest.</returns>
        /// <exception cref="ArgumentOutOfRangeException">
        /// A least value is negative, or a greatest one is not greater than zero or is below the least.
        /// </exception>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        public static DirtRate FromContent(
            VolumeFlow leastFlow,
            VolumeFlow greatestFlow,
            MassConcentration leastContent,
            MassConcentration greatestContent,
            DataSource source
        )
        {
            double low = Guard.NotNegative(leastFlow, leastFlow.InSi());
            double high = Guard.Positive(greatestFlow, greatestFlow.InSi());
            double clean = Guard.NotNegative(leastContent, leastContent.InSi());
            double dirty = Guard.Positive(greatestContent, greatestContent.InSi());
            return new(SiUnits.MassFlow(low * clean), SiUnits.MassFlow(high * dirty), source);
        }

        /// <summary>The time until a filter that retains all dirt holds a mass of it.</summary>
        /// <param name="mass">The mass; greater than zero.</param>
        /// <returns>The shortest and the longest time.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The mass is not greater than zero.</exception>
        public ServiceInterval TimeFor(Mass mass)
        {
            double kilograms = Guard.Positive(mass, mass.InSi());
            return new(
                SiUnits.Duration(kilograms / Greatest.InSi()),
                Least.InSi() > 0 ? SiUnits.Duration(kilograms / Least.InSi()) : null,
                Source
            );
        }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Least} to {Greatest}");
    }
}
