using System.Globalization;
using System.Text.Encodings.Web;
using UnitsNet;

namespace FuelMath;

/// <summary>Text from outside as repeated in messages: truncated, with control characters escaped.</summary>
internal static class Echo
{
    private const int ShownCharacters = 60;

    /// <summary>In quotation marks.</summary>
    internal static string Quote(ReadOnlySpan<char> text) => $"\"{Escape(text)}\"";

    /// <summary>Without quotation marks.</summary>
    internal static string Escape(ReadOnlySpan<char> text) =>
        JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(
            text.Length > ShownCharacters ? $"{text[..ShownCharacters]}..." : text.ToString()
        );

    /// <summary>
    /// The position of a character that breaks a line, moves a cursor, changes the direction of writing or makes two
    /// names look alike without being seen; negative when there is none.
    /// </summary>
    internal static int ControlAt(ReadOnlySpan<char> text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (
                char.IsControl(text[i])
                || text[i] is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069')
                || text[i] is '\u061C' or '\u200B' or '\u200E' or '\u200F' or '\u2060' or '\uFEFF'
            )
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>
    /// The symbol of a quantity's unit, of a liter with a capital L; its name where it has none, because a refusal must not fail.
    /// </summary>
    internal static string Symbol(IQuantity value)
    {
        try
        {
            return value.ToString("a", CultureInfo.InvariantCulture) switch
            {
                "l" => "L",
                "ml" => "mL",
                string symbol => symbol,
            };
        }
        catch (Exception none) when (none is FormatException or InvalidOperationException)
        {
            return value.Unit.ToString();
        }
    }
}
