using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Collects the properties of an object, in the order in which they are written, while its shape is described.</summary>
internal sealed class ObjectBuilder<T>
{
    private readonly List<Property<T>> properties = [];
    private readonly List<Func<Fields<T>, T, T>> steps = [];

    /// <summary>The name of its definition in the schema.</summary>
    internal string Name { get; private set; } = "";

    internal string Description { get; private set; } = "";

    internal ImmutableArray<Property<T>> Properties => [.. properties];

    /// <summary>Properties of which exactly one must be there; none of them is required by itself.</summary>
    internal ImmutableArray<string> Alternatives { get; private set; } = [];

    /// <summary>Refuses a value that can't be written; null where all can.</summary>
    internal Action<T>? WrittenCheck { get; private set; }

    /// <summary>Which values of a union are written as this object.</summary>
    internal Func<T, bool> Holds { get; private set; } = _ => true;

    /// <summary>Says what the object is: the name of its definition in the schema, and a sentence.</summary>
    internal void Is(string name, string description) => (Name, Description) = (name, description);

    /// <summary>A property that must be there.</summary>
    internal Undescribed<ValueProperty<T, TValue>> Required<TValue>(
        string name,
        Shape<TValue> shape,
        Func<T, TValue> get,
        string? parameter = null
    ) => new(says => Add(new ValueProperty<T, TValue>(name, says, shape, get) { Parameter = parameter ?? name }));

    /// <summary>A property that is left out where its value is null.</summary>
    internal Undescribed<ValueProperty<T, TValue?>> Optional<TValue>(
        string name,
        Shape<TValue> shape,
        Func<T, TValue?> get,
        string? parameter = null
    )
        where TValue : class => LeftOut<TValue?>(name, shape!, get, v => v is null, null, parameter);

    /// <inheritdoc cref="Optional{TValue}(string, Shape{TValue}, Func{T, TValue?}, string?)" />
    internal Undescribed<ValueProperty<T, TValue?>> Optional<TValue>(
        string name,
        Shape<TValue> shape,
        Func<T, TValue?> get,
        string? parameter = null
    )
        where TValue : struct => LeftOut(name, new NullableShape<TValue>(shape), get, v => v is null, null, parameter);

    /// <summary>A list that is left out where it is empty.</summary>
    internal Undescribed<ValueProperty<T, ImmutableArray<TValue>>> Optional<TValue>(
        string name,
        Shape<ImmutableArray<TValue>> shape,
        Func<T, ImmutableArray<TValue>> get,
        string? parameter = null
    ) => LeftOut(name, shape, get, v => v.IsEmpty, [], parameter);

    /// <summary>A property that may be left out and that changes what the others made.</summary>
    internal Undescribed<ValueProperty<T, TValue?>> With<TValue>(
        string name,
        Shape<TValue> shape,
        Func<T, TValue?> get,
        Func<T, TValue, T> with,
        string? parameter = null
    )
        where TValue : class =>
        Changing(
            Optional(name, shape, get, parameter),
            (fields, property, made) => fields.Of(property) is { } value ? with(made, value) : made
        );

    /// <inheritdoc cref="With{TValue}(string, Shape{TValue}, Func{T, TValue?}, Func{T, TValue, T}, string?)" />
    internal Undescribed<ValueProperty<T, TValue?>> With<TValue>(
        string name,
        Shape<TValue> shape,
        Func<T, TValue?> get,
        Func<T, TValue, T> with,
        string? parameter = null
    )
        where TValue : struct =>
        Changing(
            Optional(name, shape, get, parameter),
            (fields, property, made) => fields.Of(property) is { } value ? with(made, value) : made
        );

    /// <summary>Its name.</summary>
    internal ValueProperty<T, string> Named(Func<T, string> get) =>
        Required("name", TextShape.Name, get).Says("Its name.");

    /// <summary>A property that always holds the same word.</summary>
    internal Undescribed<WordProperty<T>> Word(string name, string word) =>
        new(says => Add(new WordProperty<T>(name, says, word)));

    /// <summary>The word that tells the objects of a union apart, and which values are written so: the first that holds.</summary>
    internal void Kind(string word, string description, Func<T, bool> holds)
    {
        Word(ObjectShape<T>.Tag, word).Says(description);
        Holds = holds;
    }

    /// <inheritdoc cref="Kind(string, string, Func{T, bool})" />
    internal void Kind(string word, Func<T, bool> holds) => Kind(word, "What it is.", holds);

    /// <summary>The words at the head of a document.</summary>
    internal void Document(string kind, string version = "1")
    {
        With("$schema", TextShape.Note, _ => null, (made, _) => made)
            .Says("Where an editor finds the schema; read over, and not written.");
        Word("document", kind).Says("What the document is.");
        Word("version", version).Says("The version of its form.");
    }

    /// <summary>Of these properties exactly one must be there; none is required by itself.</summary>
    internal void ExactlyOne(params ImmutableArray<Property<T>> alternatives) =>
        Alternatives = [.. alternatives.Select(p => p.Name)];

    /// <summary>Refuses a value that can't be written.</summary>
    internal void CheckWritten(Action<T> check) => WrittenCheck = check;

    /// <summary>What makes the value, with the properties that change it.</summary>
    internal Func<Fields<T>, T> Completed(Func<Fields<T>, T> make) =>
        steps.Count == 0 ? make : fields => steps.Aggregate(make(fields), (made, step) => step(fields, made));

    private Undescribed<ValueProperty<T, TValue>> LeftOut<TValue>(
        string name,
        Shape<TValue> shape,
        Func<T, TValue> get,
        Func<TValue, bool> isLeftOut,
        TValue whenAbsent,
        string? parameter
    ) =>
        new(says =>
            Add(
                new ValueProperty<T, TValue>(name, says, shape, get, isLeftOut, whenAbsent)
                {
                    Parameter = parameter ?? name,
                }
            )
        );

    private Undescribed<TProperty> Changing<TProperty>(
        Undescribed<TProperty> property,
        Func<Fields<T>, TProperty, T, T> step
    )
        where TProperty : Property<T> =>
        new(says =>
        {
            TProperty described = property.Says(says);
            steps.Add((fields, made) => step(fields, described, made));
            return described;
        });

    private TProperty Add<TProperty>(TProperty property)
        where TProperty : Property<T>
    {
        properties.Add(property);
        return property;
    }
}
