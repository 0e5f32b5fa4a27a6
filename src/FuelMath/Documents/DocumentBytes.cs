using System.Text;

namespace FuelMath;

/// <summary>The bytes of a document, not more of them than are allowed.</summary>
internal static class DocumentBytes
{
    internal static ReadOnlyMemory<byte> Of(string json)
    {
        ArgumentNullException.ThrowIfNull(json);

        // A character takes a byte or more, so that this much can be said before any is made.
        if (json.Length > DocumentLimits.Bytes)
        {
            throw JsonTree.TooLong(json.Length);
        }

        byte[] bytes = Encoding.UTF8.GetBytes(json);
        int broken = Surrogates.BrokenAt(json);
        return broken < 0
            ? bytes
            : throw new JsonSource(bytes).Refuse(
                "$",
                Encoding.UTF8.GetByteCount(json.AsSpan(0, broken)),
                "A text must hold complete surrogate pairs.",
                "a broken character"
            );
    }

    internal static ReadOnlyMemory<byte> OfFile(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        using FileStream file = File.OpenRead(path);
        if (file.Length > DocumentLimits.Bytes)
        {
            throw JsonTree.TooLong(file.Length);
        }

        // A file without a length, such as a pipe, is read up to the limit and one byte more.
        byte[] bytes = new byte[DocumentLimits.Bytes + 1];
        return bytes.AsMemory(0, file.ReadAtLeast(bytes, bytes.Length, false));
    }
}
