using System.Collections.Immutable;

namespace FuelMath.Shapes;

/// <summary>One of a few words, each standing for a value.</summary>
internal sealed class ChoiceShape<T> : Shape<T>
    where T : notnull
{
    private readonly ImmutableArray<(string Word, T Value)> choices;

    internal ChoiceShape(params ImmutableArray<(string Word, T Value)> choices)
    {
        this.choices = choices;
        Wanted = choices.Length == 1 ? Words : $"one of {Words}";
    }

    internal override string Wanted { get; }

    private string Words => JsonItem.Quoted(choices.Select(c => c.Word));

    /// <summary>Whether there is a word for the value.</summary>
    internal bool Has(T value) => choices.Any(c => EqualityComparer<T>.Default.Equals(c.Value, value));

    internal override T Read(JsonItem item)
    {
        foreach ((string word, T value) in choices)
        {
            if (item.Kind == JsonItemKind.Text && item.Text == word)
            {
                return value;
            }
        }

        throw item.Refuse($"Must be {Wanted}.");
    }

    internal override JsonText Write(T value) =>
        JsonText.Of(choices.First(c => EqualityComparer<T>.Default.Equals(c.Value, value)).Word);

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        JsonText.Object(("enum", JsonText.List(choices.Select(c => JsonText.Of(c.Word)))));
}
