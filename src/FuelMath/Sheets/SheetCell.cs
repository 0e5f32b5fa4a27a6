using System.Globalization;

namespace FuelMath;

/// <summary>A cell of a table on a sheet: a number as it is printed, words, or nothing.</summary>
/// <remarks>
/// The number is rounded to the digits of its column once, so that print, CSV and JSON hold the same one.
/// </remarks>
public sealed class SheetCell
{
    private SheetCell(decimal? number, string text) => (Number, Text) = (number, text);

    internal static SheetCell Empty { get; } = new(null, "");

    /// <summary>The number, in the unit of its column; null for words and for nothing.</summary>
    public decimal? Number { get; }

    /// <summary>What is printed; empty for nothing.</summary>
    public string Text { get; }

    /// <summary>Whether there is nothing in it: not known, or not asked for.</summary>
    public bool IsEmpty => Text.Length == 0;

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{(Number is null ? Text : (object)Number)}");

    internal static SheetCell Of(string text) => text.Length == 0 ? Empty : new(null, text);

    /// <summary>A number, rounded to the digits of its column; what is not finite or does not exist is nothing.</summary>
    internal static SheetCell Of(double? value, SheetColumn column)
    {
        if (value is not { } number || !double.IsFinite(number) || Math.Abs(number) > 1e15)
        {
            return Empty;
        }

        decimal rounded = Math.Round((decimal)number, column.Decimals, MidpointRounding.AwayFromZero);
        string text = column.Show(rounded == 0 ? 0m : rounded);
        // Read from its print, it keeps the zeros behind the point.
        return Read(decimal.Parse(text, CultureInfo.InvariantCulture));
    }

    /// <summary>A number as a file gives it, digits and all.</summary>
    internal static SheetCell Read(decimal number) => new(number, number.ToString(CultureInfo.InvariantCulture));
}
