using System.Text;

namespace FuelMath;

/// <summary>Reads the bytes of a document up to the allowed number.</summary>
internal static class DocumentBytes
{
    internal static ReadOnlyMemory<byte> Of(string json)
    {
        ArgumentNullException.ThrowIfNull(json);

        // A character has at least one byte, so that this limit can be checked before encoding.
        if (json.Length > DocumentLimits.Bytes)
        {
            throw JsonTree.TooLong(json.Length);
        }

        byte[] bytes = Encoding.UTF8.GetBytes(json);
        int broken = Surrogates.BrokenAt(json);
        return broken < 0
            ? bytes
            : throw new JsonSource(bytes).Refuse(
                RefusalCode.BrokenCharacter,
                "$",
                Encoding.UTF8.GetByteCount(json.AsSpan(0, broken)),
                "A text must hold complete surrogate pairs.",
                "a broken character"
            );
    }

    internal static ReadOnlyMemory<byte> OfFile(string path)
    {
        _ = Guard.NotBlank(path);
        using FileStream file = File.OpenRead(path);
        if (file.Length > DocumentLimits.Bytes)
        {
            throw JsonTree.TooLong(file.Length);
        }

        // A file without a length, such as a pipe, is read up to one byte beyond the limit.
        byte[] bytes = new byte[DocumentLimits.Bytes + 1];
        return bytes.AsMemory(0, file.ReadAtLeast(bytes, bytes.Length, false));
    }
}
