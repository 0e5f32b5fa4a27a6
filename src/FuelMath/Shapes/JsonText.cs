using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;

namespace FuelMath;

/// <summary>
/// A value to be written. A value that fits on a line is written on one line, so that tables remain readable.
/// </summary>
internal sealed class JsonText
{
    private const int LineLength = 100;

    private readonly string? leaf;
    private readonly ImmutableArray<(string Name, JsonText Value)> members;
    private readonly bool isObject;

    private JsonText(string? leaf, bool isObject, ImmutableArray<(string Name, JsonText Value)> members)
    {
        this.leaf = leaf;
        this.isObject = isObject;
        this.members = members;
    }

    internal static JsonText Of(string text) => new(Quote(text), false, []);

    internal static JsonText Of(double number) => new(number.ToString("R", CultureInfo.InvariantCulture), false, []);

    internal static JsonText Of(bool truth) => new(truth ? "true" : "false", false, []);

    internal static JsonText List(IEnumerable<JsonText> items) => new(null, false, [.. items.Select(i => ("", i))]);

    internal static JsonText Object(params IEnumerable<(string Name, JsonText Value)> members) =>
        new(null, true, [.. members]);

    /// <summary>The whole text: two spaces a level, one line feed at the end.</summary>
    /// <exception cref="ArgumentException">The text is longer than a document may be.</exception>
    internal string Render()
    {
        StringBuilder built = new();
        Break(built, 0, 0);
        string text = built.Append('\n').ToString();
        int bytes = Encoding.UTF8.GetByteCount(text);
        return bytes <= DocumentLimits.Bytes
            ? text
            : throw new RefusedArgumentException(
                RefusalCode.TooLong,
                $"A document must be at most {new Amount(DocumentLimits.Bytes, "bytes"):most} long; it would be {new Amount(bytes, "bytes"):value}."
            );
    }

    private void Break(StringBuilder text, int level, int used)
    {
        if (leaf is not null || members.Length == 0 || (level > 0 && Width() + used + 1 <= LineLength))
        {
            Inline(text);
            return;
        }

        string indent = new(' ', 2 * (level + 1));
        if (!isObject && members.All(m => m.Value.leaf is not null))
        {
            Fill(text, indent);
            text.Append('\n').Append(' ', 2 * level).Append(']');
            return;
        }

        text.Append(isObject ? '{' : '[');
        for (int i = 0; i < members.Length; i++)
        {
            string head = isObject ? $"{indent}{Quote(members[i].Name)}: " : indent;
            text.Append(i == 0 ? "\n" : ",\n").Append(head);
            members[i].Value.Break(text, level + 1, head.Length);
        }

        text.Append('\n').Append(' ', 2 * level).Append(isObject ? '}' : ']');
    }

    /// <summary>A long list of plain values, with as many on each line as fit.</summary>
    private void Fill(StringBuilder text, string indent)
    {
        text.Append('[');
        int used = LineLength;
        for (int i = 0; i < members.Length; i++)
        {
            string value = members[i].Value.leaf + (i < members.Length - 1 ? "," : "");
            bool fits = used + 1 + value.Length <= LineLength;
            text.Append(fits ? " " : "\n" + indent).Append(value);
            used = (fits ? used + 1 : indent.Length) + value.Length;
        }
    }

    private void Inline(StringBuilder text)
    {
        if (leaf is not null)
        {
            text.Append(leaf);
            return;
        }

        text.Append(isObject ? '{' : '[');
        for (int i = 0; i < members.Length; i++)
        {
            text.Append(i == 0 ? "" : ", ");
            if (isObject)
            {
                text.Append(Quote(members[i].Name)).Append(": ");
            }

            members[i].Value.Inline(text);
        }

        text.Append(isObject ? '}' : ']');
    }

    private int Width()
    {
        StringBuilder text = new();
        Inline(text);
        return text.Length;
    }

    private static string Quote(string text) => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(text)}\"";
}
