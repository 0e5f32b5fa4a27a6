using UnitsNet;

namespace FuelMath.Joints;

public sealed partial class TolerancedLength
{
    /// <summary>A length, such as a gap, or a fraction, such as a squeeze, with its limits from tolerances.</summary>
    /// <typeparam name="TQuantity">What it is: a <see cref="Length"/> or a <see cref="Ratio"/>.</typeparam>
    /// <remarks>
    /// Worst: every part at its worst limit at once. Likely: root-sum-square, which assumes many independent parts, each
    /// centered on its nominal; it does not hold for few parts, or parts made to one limit.
    /// </remarks>
    public sealed class Band<TQuantity>
        where TQuantity : struct, IQuantity
    {
        private readonly Func<double, TQuantity> unit;
        private readonly Func<double, string> show;

        internal Band(Spread spread, Func<double, TQuantity> unit, Func<double, string> show) =>
            (Si, this.unit, this.show) = (spread, unit, show);

        /// <summary>With every part at its nominal.</summary>
        public TQuantity Nominal => unit(Si.Nominal);

        /// <summary>The least, with every part at its worst.</summary>
        public TQuantity WorstLeast => unit(Si.WorstLeast);

        /// <summary>The most, with every part at its worst.</summary>
        public TQuantity WorstGreatest => unit(Si.WorstGreatest);

        /// <summary>The least by root-sum-square.</summary>
        public TQuantity LikelyLeast => unit(Si.LikelyLeast);

        /// <summary>The most by root-sum-square.</summary>
        public TQuantity LikelyGreatest => unit(Si.LikelyGreatest);

        internal Spread Si { get; }

        /// <summary>Formats nominal, likely and worst.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{show(Si.Nominal)} (likely {show(Si.LikelyLeast)} to {show(Si.LikelyGreatest)}, at worst {show(Si.WorstLeast)} to {show(Si.WorstGreatest)})";
    }
}
