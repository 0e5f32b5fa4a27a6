using System.Text;

namespace FuelMath;

/// <summary>The bytes of a document, kept to convert an offset to line and column.</summary>
internal sealed class JsonSource
{
    private readonly ReadOnlyMemory<byte> utf8;

    internal JsonSource(ReadOnlyMemory<byte> utf8) => this.utf8 = utf8;

    internal ReadOnlySpan<byte> Bytes => utf8.Span;

    internal int End => utf8.Length;

    internal (int Line, int Column) PlaceOf(int offset)
    {
        ReadOnlySpan<byte> before = utf8.Span[..Math.Clamp(offset, 0, utf8.Length)];
        int start = before.LastIndexOf((byte)'\n') + 1;
        return (before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(before[start..]) + 1);
    }

    /// <summary>The offset of a byte in a line, both counted from zero.</summary>
    internal int OffsetOf(int line, int byteInLine, int start)
    {
        int offset = start;
        for (int i = 0; i < line; i++)
        {
            offset += utf8.Span[offset..].IndexOf((byte)'\n') + 1;
        }

        return Math.Min(offset + byteInLine, utf8.Length);
    }

    internal DocumentException Refuse(
        RefusalCode code,
        string path,
        int offset,
        RefusalText allowed,
        string found,
        string? part = null,
        Exception? cause = null
    )
    {
        (int line, int column) = PlaceOf(offset);
        return new(code, path, line, column, allowed, found, part, cause);
    }
}
