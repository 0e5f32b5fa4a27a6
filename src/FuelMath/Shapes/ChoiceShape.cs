using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Makes shapes of words.</summary>
internal static class ChoiceShape
{
    /// <summary>One of a few words, each representing a value.</summary>
    internal static ChoiceShape<T> Of<T>(params ImmutableArray<(string Word, T Value)> choices)
        where T : notnull => new(choices);
}

/// <summary>One of a few words, each representing a value.</summary>
internal sealed class ChoiceShape<T> : Shape<T>
    where T : notnull
{
    private readonly ImmutableArray<(string Word, T Value)> choices;

    internal ChoiceShape(params ImmutableArray<(string Word, T Value)> choices)
    {
        this.choices = choices;
        string words = JsonItem.Quoted(Words);
        Wanted = choices.Length == 1 ? words : $"one of {words}";
    }

    internal override string Wanted { get; }

    internal IEnumerable<string> Words => choices.Select(c => c.Word);

    /// <summary>Whether there is a word for the value.</summary>
    internal bool Has(T value) => choices.Any(c => EqualityComparer<T>.Default.Equals(c.Value, value));

    /// <summary>The value of a word; the default for any other word.</summary>
    internal T? Find(string word) => choices.FirstOrDefault(c => c.Word == word).Value;

    internal override T Read(JsonItem item) =>
        item.Kind == JsonItemKind.Text && Words.Contains(item.Text) ? Find(item.Text)! : throw item.RefuseKind(Wanted);

    /// <summary>The word of a value.</summary>
    /// <exception cref="ArgumentException">There is no word for it.</exception>
    internal string WordOf(T value) =>
        Has(value)
            ? choices.First(c => EqualityComparer<T>.Default.Equals(c.Value, value)).Word
            : throw new RefusedArgumentException(
                RefusalCode.NotWritable,
                $"A document has no word for {value.ToString()!:given}: {Wanted:allowed}.",
                nameof(value)
            );

    internal override JsonText Write(T value) => JsonText.Of(WordOf(value));

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(("enum", JsonText.List(Words.Select(JsonText.Of))));
}
