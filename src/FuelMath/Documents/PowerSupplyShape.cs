using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What feeds pumps and injectors: two circuits, or a mesh with the names of a source and two loads in it.</summary>
internal static class PowerSupplyShape
{
    private static readonly ValueProperty<PowerSupply, Circuit> Pumps = new(
        "pumps",
        "Feeds all pumps together that have no feed of their own.",
        CircuitShape.Shape,
        p => p.Pumps!,
        p => p.Mesh is null,
        null!
    );

    private static readonly ValueProperty<PowerSupply, Circuit> Injectors = new(
        "injectors",
        "Feeds all injectors together; beside \"pumps\".",
        CircuitShape.Shape,
        p => p.Injectors!,
        p => p.Mesh is null,
        null!
    );

    private static readonly ValueProperty<PowerSupply, WiringMesh> Mesh = new(
        "mesh",
        "Supply and ground as a mesh, in the place of the two circuits.",
        MeshShape.Shape,
        p => p.Mesh!,
        p => p.Mesh is not null,
        null!
    );

    private static readonly ValueProperty<PowerSupply, string> Source = Name(
        "source",
        "The source of the mesh whose voltage an operating point states.",
        p => p.Source!
    );

    private static readonly ValueProperty<PowerSupply, string> PumpLoad = Name(
        "pumpLoad",
        "The load of the mesh that stands for all pumps without a feed of their own.",
        p => p.PumpLoad!
    );

    private static readonly ValueProperty<PowerSupply, string> InjectorLoad = Name(
        "injectorLoad",
        "The load of the mesh that stands for all injectors.",
        p => p.InjectorLoad!
    );

    private static readonly ValueProperty<PowerSupply, ImmutableArray<PumpFeed>> Feeds = new(
        "feeds",
        "Pumps with a circuit or a load of their own; none when left out.",
        new ListShape<PumpFeed>(PumpFeedShape.Shape, 1, 100),
        p => p.Feeds,
        p => !p.Feeds.IsEmpty,
        []
    );

    internal static ObjectShape<PowerSupply> Shape { get; } =
        new(
            "power-supply",
            "What feeds pumps and injectors: two circuits or a mesh.",
            [Pumps, Injectors, Mesh, Source, PumpLoad, InjectorLoad, Feeds],
            f => f.Has(Feeds) ? Make(f).WithFeeds(f.Of(Feeds)) : Make(f)
        )
        {
            ExactlyOne = [Pumps.Name, Mesh.Name],
        };

    private static PowerSupply Make(Fields<PowerSupply> f)
    {
        bool named = f.Has(Source) && f.Has(PumpLoad) && f.Has(InjectorLoad);
        if (f.Has(Mesh))
        {
            return named && !f.Has(Injectors)
                ? PowerSupply.FromMesh(f.Of(Mesh), f.Of(Source), f.Of(PumpLoad), f.Of(InjectorLoad))
                : throw new ArgumentException(
                    "Beside \"mesh\" there must be \"source\", \"pumpLoad\" and \"injectorLoad\", and no \"injectors\"."
                );
        }

        return f.Has(Injectors) && !f.Has(Source) && !f.Has(PumpLoad) && !f.Has(InjectorLoad)
            ? new(f.Of(Pumps), f.Of(Injectors))
            : throw new ArgumentException(
                "Beside \"pumps\" there must be \"injectors\", and nothing that belongs to a mesh."
            );
    }

    private static ValueProperty<PowerSupply, string> Name(
        string name,
        string description,
        Func<PowerSupply, string> get
    ) => new(name, description, TextShape.Name, get, p => p.Mesh is not null, null!);
}
