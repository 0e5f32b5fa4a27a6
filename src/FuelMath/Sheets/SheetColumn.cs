using System.Globalization;

namespace FuelMath;

/// <summary>A column of a table on a sheet: what it holds, and for numbers in which unit.</summary>
public sealed class SheetColumn
{
    internal SheetColumn(string name, string? unit, int decimals)
    {
        if (name.AsSpan().IndexOfAny("[]\r\n") >= 0 || unit?.AsSpan().IndexOfAny("[]\r\n") >= 0)
        {
            throw new ArgumentException($"Must hold no bracket and no line break; it was '{name}'.", nameof(name));
        }

        (Name, Unit, Decimals) = (Guard.Name(name), unit ?? "", decimals);
        IsNumber = unit is not null;
    }

    /// <summary>What it holds; unique in its table.</summary>
    public string Name { get; }

    /// <summary>The unit of its numbers, "-" for pure numbers; empty for words.</summary>
    public string Unit { get; }

    /// <summary>Whether it holds numbers.</summary>
    public bool IsNumber { get; }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>Digits behind the point.</summary>
    internal int Decimals { get; }

    /// <summary>The head of the column in a file: the name, and for numbers the unit in brackets.</summary>
    internal string Head => IsNumber ? $"{Name} [{Unit}]" : Name;

    internal static SheetColumn Words(string name) => new(name, null, 0);

    internal static SheetColumn Numbers(string name, string unit, int decimals) => new(name, unit, decimals);

    /// <summary>Reads a head; the digits are those of the cells.</summary>
    internal static SheetColumn FromHead(string head)
    {
        int open = head.LastIndexOf(" [", StringComparison.Ordinal);
        return open > 0 && head.EndsWith(']') ? Numbers(head[..open], head[(open + 2)..^1], 0) : Words(head);
    }

    internal string Show(decimal number) =>
        number.ToString("F" + Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
