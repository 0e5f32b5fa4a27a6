using System.Globalization;

namespace FuelMath;

/// <summary>Number and unit of a quantity as it stands in a document.</summary>
internal static class WrittenQuantity
{
    /// <summary>The number and the unit of a kind; null where the text is none.</summary>
    internal static (double Number, Unit Unit)? Of(string written, UnitKind kind)
    {
        ReadOnlySpan<char> text = written.AsSpan().Trim();
        NumberFormatInfo format = NumberText.FormatOf(null);
        int length = NumberText.Length(text, format);
        return
            kind.Find(text[length..].TrimStart()) is { } unit
            && NumberText.TryRead(text[..length], format, out double number)
            ? (number, unit)
            : null;
    }
}
