using System.Text;

namespace FuelMath;

/// <summary>What people write into JSON that does not belong there, told in words of ours.</summary>
internal static class JsonSlips
{
    private const int Longest = 60;

    /// <summary>The slip at an offset where reading ended, with its own place; null where it is another.</summary>
    internal static (int Offset, string Allowed, string Found)? Find(ReadOnlySpan<byte> text, int offset)
    {
        int comma = LastOther(text, offset);
        int next = offset + Math.Max(0, text[offset..].IndexOfAnyExcept(" \t\r\n"u8));
        byte at = next < text.Length ? text[next] : (byte)0;
        if (Comment(text, next) is { } found)
        {
            return (next, "A document holds no comments, because JSON has none.", found);
        }

        if (at is (byte)'}' or (byte)']' && comma >= 0 && text[comma] == ',')
        {
            return (
                comma,
                "A comma stands between two values, and none behind the last.",
                $"a comma ahead of \"{(char)at}\""
            );
        }

        return at == '\'' ? (next, "Names and texts stand between double quotes.", "a single quote") : null;
    }

    /// <summary>The last byte ahead of an offset that is no white space; -1 where there is none.</summary>
    private static int LastOther(ReadOnlySpan<byte> text, int offset) =>
        text[..offset].LastIndexOfAnyExcept(" \t\r\n"u8);

    private static string? Comment(ReadOnlySpan<byte> text, int at)
    {
        ReadOnlySpan<byte> rest = text[at..];
        if (rest.StartsWith("#"u8) || rest.StartsWith("//"u8))
        {
            rest = Line(rest);
        }
        else if (rest.StartsWith("/*"u8))
        {
            int end = rest.IndexOf("*/"u8);
            rest = end < 0 ? rest : rest[..(end + 2)];
        }
        else
        {
            return null;
        }

        string words = Encoding.UTF8.GetString(rest[..Math.Min(rest.Length, Longest)]);
        return $"a comment, {Echo.Quote(words.TrimEnd('\ufffd'))}";
    }

    private static ReadOnlySpan<byte> Line(ReadOnlySpan<byte> text)
    {
        int end = text.IndexOfAny((byte)'\r', (byte)'\n');
        return end < 0 ? text : text[..end];
    }
}
