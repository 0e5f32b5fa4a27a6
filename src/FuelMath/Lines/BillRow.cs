using UnitsNet;

namespace FuelMath;

/// <summary>One row of a bill of materials: what, how many, and how long where it is cut.</summary>
public sealed class BillRow
{
    internal BillRow(string item, int quantity, Length? cutLength) =>
        (Item, Quantity, CutLength) = (item, quantity, cutLength);

    /// <summary>What it is, as it is bought.</summary>
    public string Item { get; }

    /// <summary>How many.</summary>
    public int Quantity { get; }

    /// <summary>The length that each is cut to; null where nothing is cut.</summary>
    public Length? CutLength { get; }

    /// <summary>Formats the row.</summary>
    /// <returns>The text, for example <c>2 x braided hose, cut to 840 mm</c>.</returns>
    public override string ToString() =>
        CutLength is { } length
            ? FormattableString.Invariant($"{Quantity} x {Item}, cut to {length.InSi() * 1e3:0} mm")
            : FormattableString.Invariant($"{Quantity} x {Item}");
}
