using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>A list of values of one shape.</summary>
internal sealed class ListShape<T> : Shape<ImmutableArray<T>>
{
    private readonly Shape<T> item;
    private readonly int least;
    private readonly int most;

    internal ListShape(Shape<T> item, int least, int most)
    {
        this.item = item;
        this.least = least;
        this.most = most;
    }

    internal override string Wanted =>
        string.Create(CultureInfo.InvariantCulture, $"a list of {least} to {most}, each {item.Wanted}");

    internal override ImmutableArray<T> Read(JsonItem list)
    {
        int count = Expect(list, JsonItemKind.List).Items.Count;
        return count >= least && count <= most
            ? [.. list.Items.Select(ReadItem)]
            : throw list.Refuse(
                RefusalCode.Count,
                $"Must be a list of {least:least} to {most:most} values; it has {count:value}."
            );
    }

    /// <summary>A part speaks of a list as a whole; a wrong sign has a place of its own.</summary>
    private T ReadItem(JsonItem one)
    {
        T value = item.Read(one);
        return item.RefuseSign(one) is { } problem ? throw problem : value;
    }

    /// <summary>Refuses to write what could not be read again.</summary>
    internal override JsonText Write(ImmutableArray<T> value) =>
        value.Length >= least && value.Length <= most
            ? JsonText.List(value.Select(item.Write))
            : throw new RefusedArgumentException(
                RefusalCode.Count,
                $"A document holds from {least:least} to {most:most}, {Wanted:wanted}; {value.Length:value} given.",
                nameof(value)
            );

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(
            ("type", JsonText.Of("array")),
            ("minItems", JsonText.Of(least)),
            ("maxItems", JsonText.Of(most)),
            ("items", item.Schema(definitions))
        );
}
