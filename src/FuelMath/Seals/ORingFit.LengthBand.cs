using UnitsNet;

namespace FuelMath.Joints;

public sealed partial class ORingFit
{
    /// <summary>A length, such as a gap, with its limits from tolerances.</summary>
    /// <remarks>
    /// Worst: every part at its worst limit at once. Likely: root-sum-square, which assumes many independent parts,
    /// each
    /// centered on its nominal; it does not hold for few parts, or parts made to one limit.
    /// </remarks>
    public sealed class LengthBand
    {
        internal LengthBand(Spread spread) => Si = spread;

        /// <summary>With every part at its nominal.</summary>
        public Length Nominal => SiUnits.Length(Si.Nominal);

        /// <summary>The least, with every part at its worst.</summary>
        public Length WorstLeast => SiUnits.Length(Si.WorstLeast);

        /// <summary>The most, with every part at its worst.</summary>
        public Length WorstGreatest => SiUnits.Length(Si.WorstGreatest);

        /// <summary>The least by root-sum-square.</summary>
        public Length LikelyLeast => SiUnits.Length(Si.LikelyLeast);

        /// <summary>The most by root-sum-square.</summary>
        public Length LikelyGreatest => SiUnits.Length(Si.LikelyGreatest);

        internal Spread Si { get; }

        /// <summary>Formats nominal, likely and worst.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{Show(Si.Nominal)} (likely {Show(Si.LikelyLeast)} to {Show(Si.LikelyGreatest)}, at worst {Show(Si.WorstLeast)} to {Show(Si.WorstGreatest)})";

        internal static string Show(double value) => FormattableString.Invariant($"{value * 1e3:0.00} mm");
    }
}
