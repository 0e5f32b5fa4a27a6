using System.Globalization;
using System.Text;
using System.Text.Json;

namespace FuelMath;

/// <summary>Reads the bytes of a document in one pass into values with their places, within limits.</summary>
internal ref struct JsonTree
{
    private readonly JsonSource source;
    private readonly int start;
    private Utf8JsonReader reader;
    private JsonItem? root;
    private JsonItem? open;
    private string? pendingName;
    private int pendingOffset;
    private int depth;
    private int values;

    private JsonTree(JsonSource source)
    {
        this.source = source;
        start = source.Bytes.StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;

        // Not marked as the last block, so that a truncated text ends the reading and is not reported as malformed.
        reader = new(source.Bytes[start..], false, new(new JsonReaderOptions { MaxDepth = 2 * DocumentLimits.Depth }));
    }

    internal static JsonItem Read(ReadOnlyMemory<byte> utf8)
    {
        if (utf8.Length > DocumentLimits.Bytes)
        {
            throw TooLong(utf8.Length);
        }

        return new JsonTree(new(utf8)).Read();
    }

    internal static DocumentException TooLong(long length) =>
        new(
            RefusalCode.TooLong,
            "$",
            1,
            1,
            $"A document must be at most {new Amount(DocumentLimits.Bytes, "bytes"):most} long.",
            string.Create(CultureInfo.InvariantCulture, $"{length} bytes"),
            null,
            null
        );

    private JsonItem Read()
    {
        try
        {
            while (reader.Read())
            {
                Take();
            }
        }
        catch (JsonException problem)
        {
            throw Malformed(problem);
        }

        if (root is null || open is not null)
        {
            throw source.Refuse(
                RefusalCode.NotJson,
                Place,
                source.End,
                "A document must be one complete JSON object.",
                root is null && source.Bytes[start..].Trim(" \t\r\n"u8).IsEmpty
                    ? "nothing: it is empty"
                    : "the end of the text here, too early"
            );
        }

        return root;
    }

    private readonly int Offset => start + (int)reader.TokenStartIndex;

    private readonly string Place =>
        open is null ? "$"
        : pendingName is not null ? open.PathOf(pendingName)
        : open.Kind == JsonItemKind.List
            ? string.Create(CultureInfo.InvariantCulture, $"{open.Path}[{open.Items.Count}]")
        : open.Path;

    private void Take()
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName:
                pendingName = Text();
                pendingOffset = Offset;
                break;
            case JsonTokenType.StartObject:
                Enter(JsonItemKind.Object);
                break;
            case JsonTokenType.StartArray:
                Enter(JsonItemKind.List);
                break;
            case JsonTokenType.EndObject:
            case JsonTokenType.EndArray:
                open = open?.Parent;
                depth--;
                break;
            case JsonTokenType.String:
                Add(JsonItemKind.Text, Text());
                break;
            case JsonTokenType.Number:
                Add(JsonItemKind.Number, Number());
                break;
            case JsonTokenType.True:
                Add(JsonItemKind.Truth, "true");
                break;
            case JsonTokenType.False:
                Add(JsonItemKind.Truth, "false");
                break;
            default:
                Add(JsonItemKind.Null, "");
                break;
        }
    }

    private void Enter(JsonItemKind kind)
    {
        open = Add(kind, "");
        if (++depth > DocumentLimits.Depth)
        {
            throw Refuse(
                RefusalCode.TooLong,
                $"Objects and lists may be nested {DocumentLimits.Depth:most} deep.",
                "a deeper one"
            );
        }
    }

    private JsonItem Add(JsonItemKind kind, string text)
    {
        if (++values > DocumentLimits.Values)
        {
            throw Refuse(RefusalCode.TooLong, $"A document may hold {DocumentLimits.Values:most} values.", "more");
        }

        if (open?.Items.Count >= DocumentLimits.Items)
        {
            throw Refuse(
                RefusalCode.TooLong,
                $"An object or list may hold {DocumentLimits.Items:most} values.",
                "more"
            );
        }

        JsonItem item = new(source, open, pendingName, pendingOffset, Offset, kind) { Text = text };
        pendingName = null;
        if (open is null)
        {
            root = item;
        }
        else if (!open.TryAdd(item))
        {
            throw item.RefuseName(RefusalCode.Duplicate, "A property may be given once.");
        }

        return item;
    }

    private readonly string Text()
    {
        RefuseLong("A text", reader.ValueSpan.Length);
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            throw Refuse(
                RefusalCode.BrokenCharacter,
                "A text must be valid UTF-8 with complete surrogate pairs.",
                "a broken character"
            );
        }
    }

    private readonly string Number()
    {
        RefuseLong("A number", reader.ValueSpan.Length);
        return Encoding.UTF8.GetString(reader.ValueSpan);
    }

    private readonly void RefuseLong(string what, int length)
    {
        if (length > DocumentLimits.TextBytes)
        {
            throw Refuse(
                RefusalCode.TooLong,
                $"{what:subject} may be {new Amount(DocumentLimits.TextBytes, "bytes"):most} long.",
                string.Create(CultureInfo.InvariantCulture, $"one of {length} bytes")
            );
        }
    }

    private readonly DocumentException Refuse(RefusalCode code, RefusalText allowed, string found) =>
        source.Refuse(code, Place, Offset, allowed, found);

    private readonly DocumentException Malformed(JsonException problem)
    {
        int offset = source.OffsetOf((int)(problem.LineNumber ?? 0), (int)(problem.BytePositionInLine ?? 0), start);
        (int at, string allowed, string found) =
            JsonSlips.Find(source.Bytes, offset) ?? (offset, NoJson, Reason(problem));
        return source.Refuse(RefusalCode.NotJson, Place, at, $"{allowed:explanation}", found);
    }

    private const string NoJson = "The text must be JSON.";

    private static string Reason(JsonException problem)
    {
        int end = problem.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        string message = end < 0 ? problem.Message : problem.Message[..end];
        return $"something else ({Echo.Escape(message.TrimEnd('.'))})";
    }
}
