using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What all links of a network have in common.</summary>
internal static class NetworkLinkCase
{
    private static readonly ValueProperty<NetworkLink, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        l => l.Name
    );

    private static readonly ValueProperty<NetworkLink, string> From = new(
        "from",
        "The node it comes from.",
        TextShape.Name,
        l => l.From
    );

    private static readonly ValueProperty<NetworkLink, string> To = new(
        "to",
        "The node it goes to.",
        TextShape.Name,
        l => l.To
    );

    internal static UnionCase<NetworkLink> Make(
        LinkKind kind,
        string word,
        string description,
        ImmutableArray<Property<NetworkLink>> properties,
        Func<Fields<NetworkLink>, string, string, string, NetworkLink> make
    ) =>
        UnionCase<NetworkLink>.Of(
            new ObjectShape<NetworkLink>(
                $"{word.Replace(' ', '-')}-link",
                description,
                [new WordProperty<NetworkLink>("kind", "What it is.", word), Name, From, To, .. properties],
                f => make(f, f.Of(Name), f.Of(From), f.Of(To))
            ),
            l => l.Kind == kind
        );

    internal static ValueProperty<NetworkLink, TValue> Of<TGiven, TValue>(
        string name,
        string description,
        Shape<TValue> shape,
        Func<TGiven, TValue> get
    )
        where TGiven : LinkGiven => new(name, description, shape, l => get(Given<TGiven>(l)));

    private static TGiven Given<TGiven>(NetworkLink link)
        where TGiven : LinkGiven =>
        link.Given as TGiven
        ?? throw new ArgumentException(
            $"Link '{link.Name}' can't be written, because it was made inside the library.",
            nameof(link)
        );
}
