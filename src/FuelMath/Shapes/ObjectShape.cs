using System.Collections.Immutable;

namespace FuelMath;

/// <summary>An object with named properties that makes a value. Unknown, repeated and missing properties are refused.</summary>
internal sealed class ObjectShape<T> : Shape<T>
{
    private readonly string description;
    private readonly ImmutableArray<Property<T>> properties;
    private readonly Func<Fields<T>, T> make;

    internal ObjectShape(
        string name,
        string description,
        ImmutableArray<Property<T>> properties,
        Func<Fields<T>, T> make
    )
    {
        Name = name;
        this.description = description;
        this.properties = properties;
        this.make = make;
    }

    /// <summary>Properties of which exactly one must be there; none of them is required by itself.</summary>
    internal ImmutableArray<string> ExactlyOne { get; init; } = [];

    /// <summary>Refuses a value that can't be written; null where all can.</summary>
    internal Action<T>? CheckWritten { get; init; }

    /// <summary>The name of its definition in the schema.</summary>
    internal string Name { get; }

    internal ImmutableArray<Property<T>> Properties => properties;

    internal override string Wanted => $"an object with {JsonItem.Quoted(properties.Select(p => p.Name))}";

    internal override T Read(JsonItem item)
    {
        Expect(item, JsonItemKind.Object);
        foreach (JsonItem member in item.Items)
        {
            RefuseUnknown(member);
        }

        foreach (Property<T> property in properties)
        {
            if (item.Member(property.Name) is { } member)
            {
                property.Check(member);
            }
            else if (property.IsRequired)
            {
                throw item.Refuse($"Must have \"{property.Name}\": {property.Wanted}.");
            }
        }

        if (!ExactlyOne.IsEmpty && ExactlyOne.Count(n => item.Member(n) is not null) != 1)
        {
            throw item.Refuse($"Must have exactly one of {JsonItem.Quoted(ExactlyOne)}.");
        }

        try
        {
            return make(new(item));
        }
        catch (ArgumentException problem)
        {
            Property<T>? guilty = properties.FirstOrDefault(p =>
                p.Parameter == problem.ParamName && item.Member(p.Name) is not null
            );
            JsonItem place = guilty is null ? item : item.Member(guilty.Name)!;
            string? asWritten =
                problem is RefusedValueException value && place.Kind == JsonItemKind.Text
                    ? WrittenRefusal.Sentence(value.Range, place.Text)
                    : null;
            throw place.Refuse(asWritten ?? ExceptionText.Sentence(problem), problem);
        }
        catch (NoSolutionException problem)
        {
            throw item.Refuse(problem.Message, problem);
        }
    }

    internal override JsonText Write(T value)
    {
        CheckWritten?.Invoke(value);
        return JsonText.Object(properties.Where(p => p.IsIn(value)).Select(p => (p.Name, p.Write(value))));
    }

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        definitions.Refer(
            Name,
            () =>
                JsonText.Object([
                    ("description", JsonText.Of(description)),
                    ("type", JsonText.Of("object")),
                    (
                        "properties",
                        JsonText.Object(properties.Select(p => (p.Name, Described(p, p.Schema(definitions)))))
                    ),
                    ("required", JsonText.List(properties.Where(p => p.IsRequired).Select(p => JsonText.Of(p.Name)))),
                    ("additionalProperties", JsonText.Of(false)),
                    .. ExactlyOneSchema,
                ])
        );

    private IEnumerable<(string, JsonText)> ExactlyOneSchema =>
        ExactlyOne.IsEmpty
            ? []
            :
            [
                (
                    "oneOf",
                    JsonText.List(
                        ExactlyOne.Select(n => JsonText.Object(("required", JsonText.List([JsonText.Of(n)]))))
                    )
                ),
            ];

    private static JsonText Described(Property<T> property, JsonText schema) =>
        JsonText.Object(("description", JsonText.Of(property.Description)), ("allOf", JsonText.List([schema])));

    private void RefuseUnknown(JsonItem member)
    {
        if (properties.Any(p => p.Name == member.Name))
        {
            return;
        }

        string? meant = Nearest.Of(member.Name, properties.Select(p => p.Name));
        throw member.RefuseName(
            $"Must be one of {JsonItem.Quoted(properties.Select(p => p.Name))}"
                + (meant is null ? "." : $"; perhaps \"{meant}\" is meant.")
        );
    }
}
