using System.Globalization;

namespace FuelMath;

public sealed partial class SheetTable
{
    /// <summary>A cell of a table on a sheet: a number as printed, words, or empty.</summary>
    /// <remarks>
    /// The number is rounded once to the digits of its column, so that print, CSV and JSON have the same number.
    /// </remarks>
    public sealed class Cell
    {
        private Cell(decimal? number, string text) => (Number, Text) = (number, text);

        internal static Cell Empty { get; } = new(null, "");

        /// <summary>The number, in the unit of its column; null for words and empty cells.</summary>
        public decimal? Number { get; }

        /// <summary>The printed text; empty for an empty cell.</summary>
        public string Text { get; }

        /// <summary>Whether it is empty: not known or not applicable.</summary>
        public bool IsEmpty => Text.Length == 0;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{(Number is null ? Text : (object)Number)}");

        internal static Cell Of(string text) => text.Length == 0 ? Empty : new(null, text);

        /// <summary>
        /// Creates a cell with a number, rounded to the digits of its column; empty for null or a number that is not
        /// finite.
        /// </summary>
        internal static Cell Of(double? value, Column column)
        {
            if (value is not { } number || !double.IsFinite(number) || Math.Abs(number) > 1e15)
            {
                return Empty;
            }

            decimal rounded = Math.Round((decimal)number, column.Decimals, MidpointRounding.AwayFromZero);
            string text = column.Show(rounded == 0 ? 0m : rounded);
            // Parsed from its printed text, so that it keeps trailing zeros.
            return Read(decimal.Parse(text, CultureInfo.InvariantCulture));
        }

        /// <summary>Creates a cell with a number as in a file, with all its digits.</summary>
        internal static Cell Read(decimal number) => new(number, number.ToString(CultureInfo.InvariantCulture));
    }
}
