using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// An object whose named properties give a value. Unknown, repeated and missing properties are refused.
/// </summary>
internal sealed class ObjectShape<T> : Shape<T>
{
    /// <summary>The property that tells the objects of a union apart.</summary>
    internal const string Tag = "kind";

    private readonly string name;
    private readonly string description;
    private readonly ImmutableArray<Property<T>> properties;
    private readonly ImmutableArray<string> alternatives;
    private readonly Action<T>? checkWritten;
    private readonly Func<Fields<T>, T> make;

    /// <summary>Describes the object: its properties in the order in which they are written, then what makes the value.</summary>
    internal ObjectShape(Func<ObjectBuilder<T>, Func<Fields<T>, T>> describe)
    {
        ObjectBuilder<T> built = new();
        make = built.Completed(describe(built));
        (name, description, properties) = (built.Name, built.Description, built.Properties);
        (alternatives, checkWritten, Holds) = (built.Alternatives, built.WrittenCheck, built.Holds);
    }

    /// <summary>The word by which a union knows it; empty outside unions.</summary>
    internal string Kind => properties.OfType<WordProperty<T>>().FirstOrDefault(p => p.Name == Tag)?.Word ?? "";

    /// <summary>Which values of a union are written as this object.</summary>
    internal Func<T, bool> Holds { get; }

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
                throw item.Refuse(
                    RefusalCode.PropertyMissing,
                    $"Must have \"{property.Name:missing}\": {property.Wanted:wanted}."
                );
            }
        }

        if (!alternatives.IsEmpty && alternatives.Count(n => item.Member(n) is not null) != 1)
        {
            throw item.Refuse(
                RefusalCode.OneOfThese,
                $"Must have exactly one of {alternatives.Select(JsonItem.Quote):allowed}."
            );
        }

        T made;
        try
        {
            made = make(new(item));
        }
        catch (ArgumentException problem)
        {
            throw Placed(item, problem);
        }
        catch (NoSolutionException problem)
        {
            throw item.Refuse(problem.Message, problem);
        }

        return WrongSign(item) is { } wrong ? throw wrong : made;
    }

    /// <summary>What a part refuses, told at the property that holds it and in the unit that it is written in.</summary>
    private DocumentException Placed(JsonItem item, ArgumentException problem)
    {
        Property<T>? guilty = properties.FirstOrDefault(p =>
            p.Parameter == problem.ParamName && item.Member(p.Name) is not null
        );
        JsonItem place = guilty is null ? item : item.Member(guilty.Name)!;
        RefusedValueException? asWritten = null;
        if (problem is RefusedValueException value && Written(place, value) is var (one, refused))
        {
            (place, asWritten) = (one, refused);
        }

        return asWritten is not null ? place.Refuse(asWritten.Sentence, asWritten)
            : (guilty is null ? WrongSign(item) : guilty.RefuseSign(place)) is { } wrong ? wrong
            : place.Refuse(ExceptionText.Sentence(problem), problem);
    }

    /// <summary>Where the value is written, which may be deep in a list, and what is said of it there.</summary>
    private static (JsonItem Place, RefusedValueException Refused)? Written(
        JsonItem place,
        RefusedValueException value
    ) =>
        place.Kind switch
        {
            JsonItemKind.Text => WrittenRefusal.Of(value, place.Text) is { } refused ? (place, refused) : null,
            JsonItemKind.List => place.Items.Select(i => Written(i, value)).FirstOrDefault(w => w is not null),
            _ => null,
        };

    private DocumentException? WrongSign(JsonItem item) =>
        properties
            .Select(p => item.Member(p.Name) is { } member ? p.RefuseSign(member) : null)
            .FirstOrDefault(r => r is not null);

    internal override JsonText Write(T value)
    {
        checkWritten?.Invoke(value);
        return JsonText.Object(properties.Where(p => p.IsIn(value)).Select(p => (p.Name, p.Write(value))));
    }

    internal override JsonText Schema(SchemaDefinitions definitions) =>
        definitions.Refer(
            name,
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
                    .. Alternatives,
                ])
        );

    private IEnumerable<(string, JsonText)> Alternatives =>
        alternatives.IsEmpty
            ? []
            :
            [
                (
                    "oneOf",
                    JsonText.List(
                        alternatives.Select(n => JsonText.Object(("required", JsonText.List([JsonText.Of(n)]))))
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
        RefusalText allowed = $"Must be one of {properties.Select(p => JsonItem.Quote(p.Name)):allowed}";
        throw member.RefuseName(
            RefusalCode.NotOneOf,
            allowed.Then(meant is null ? (RefusalText)"." : $"; perhaps \"{meant:meant}\" is meant.")
        );
    }
}
