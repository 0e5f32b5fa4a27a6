using UnitsNet;

namespace FuelMath;

public sealed partial class LinePlan
{
    /// <summary>One row of a bill of materials: item, quantity, and length for stock that is cut.</summary>
    public sealed class BillRow
    {
        internal BillRow(string item, int quantity, Length? cutLength) =>
            (Item, Quantity, CutLength) = (item, quantity, cutLength);

        /// <summary>The item, as it is bought.</summary>
        public string Item { get; }

        /// <summary>The quantity.</summary>
        public int Quantity { get; }

        /// <summary>The cut length of each; null for items that are not cut.</summary>
        public Length? CutLength { get; }

        /// <summary>Formats the row.</summary>
        /// <returns>The text, for example <c>2 x braided hose, cut to 840 mm</c>.</returns>
        public override string ToString() =>
            CutLength is { } length
                ? FormattableString.Invariant($"{Quantity} x {Item}, cut to {length.InSi() * 1e3:0} mm")
                : FormattableString.Invariant($"{Quantity} x {Item}");
    }
}
