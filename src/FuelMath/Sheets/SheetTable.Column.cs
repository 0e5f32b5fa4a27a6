using System.Globalization;

namespace FuelMath;

public sealed partial class SheetTable
{
    /// <summary>A column of a table on a sheet: its name, and for numbers its unit.</summary>
    public sealed class Column
    {
        internal Column(string name, string? unit, int decimals)
        {
            if (name.AsSpan().IndexOfAny("[]\r\n") >= 0 || unit?.AsSpan().IndexOfAny("[]\r\n") >= 0)
            {
                throw new RefusedArgumentException(
                    RefusalCode.ControlCharacter,
                    $"Must hold no bracket and no line break; it was '{name:given}'.",
                    nameof(name)
                );
            }

            (Name, Unit, Decimals) = (Guard.Name(name), unit ?? "", decimals);
            IsNumber = unit is not null;
        }

        /// <summary>The name; unique in its table.</summary>
        public string Name { get; }

        /// <summary>The unit of its numbers, "-" for pure numbers; empty for words.</summary>
        public string Unit { get; }

        /// <summary>Whether it holds numbers.</summary>
        public bool IsNumber { get; }

        /// <inheritdoc />
        public override string ToString() => Name;

        /// <summary>Number of decimals.</summary>
        internal int Decimals { get; }

        /// <summary>The header of the column in a file: the name, and for numbers the unit in brackets.</summary>
        internal string Head => IsNumber ? $"{Name} [{Unit}]" : Name;

        internal static Column Words(string name) => new(name, null, 0);

        internal static Column Numbers(string name, string unit, int decimals) => new(name, unit, decimals);

        /// <summary>Parses a header; the digits are those of the cells.</summary>
        internal static Column FromHead(string head)
        {
            int open = head.LastIndexOf(" [", StringComparison.Ordinal);
            return open > 0 && head.EndsWith(']') ? Numbers(head[..open], head[(open + 2)..^1], 0) : Words(head);
        }

        internal string Show(decimal number) =>
            number.ToString("F" + Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
