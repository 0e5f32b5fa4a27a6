using UnitsNet;

namespace FuelMath.Joints;

public sealed partial class ORingFit
{
    /// <summary>A fraction, such as a squeeze, with its limits from tolerances.</summary>
    /// <remarks>
    /// Worst: every part at its worst limit at once. Likely: root-sum-square, which assumes many independent parts,
    /// each
    /// centered on its nominal; it does not hold for few parts, or parts made to one limit.
    /// </remarks>
    public sealed class RatioBand
    {
        internal RatioBand(Spread spread) => Si = spread;

        /// <summary>With every part at its nominal.</summary>
        public Ratio Nominal => SiUnits.Ratio(Si.Nominal);

        /// <summary>The least, with every part at its worst.</summary>
        public Ratio WorstLeast => SiUnits.Ratio(Si.WorstLeast);

        /// <summary>The most, with every part at its worst.</summary>
        public Ratio WorstGreatest => SiUnits.Ratio(Si.WorstGreatest);

        /// <summary>The least by root-sum-square.</summary>
        public Ratio LikelyLeast => SiUnits.Ratio(Si.LikelyLeast);

        /// <summary>The most by root-sum-square.</summary>
        public Ratio LikelyGreatest => SiUnits.Ratio(Si.LikelyGreatest);

        internal Spread Si { get; }

        /// <summary>Formats nominal, likely and worst.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{Show(Si.Nominal)} (likely {Show(Si.LikelyLeast)} to {Show(Si.LikelyGreatest)}, at worst {Show(Si.WorstLeast)} to {Show(Si.WorstGreatest)})";

        internal static string Show(double value) => FormattableString.Invariant($"{value * 100:0.0} %");
    }
}
