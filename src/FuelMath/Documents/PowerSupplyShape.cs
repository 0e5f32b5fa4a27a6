namespace FuelMath;

/// <summary>
/// The supply of pumps and injectors: two circuits, or a mesh with the names of a source and two loads.
/// </summary>
internal static class PowerSupplyShape
{
    internal static ObjectShape<PowerSupply> Shape { get; } =
        new(o =>
        {
            o.Is("power-supply", "What feeds pumps and injectors: two circuits or a mesh.");
            var pumps = o.Optional("pumps", CircuitShape.Shape, p => (p as PowerSupply.TwoCircuits)?.Pumps)
                .Says("Feeds all pumps together that have no feed of their own.");
            var injectors = o.Optional("injectors", CircuitShape.Shape, p => (p as PowerSupply.TwoCircuits)?.Injectors)
                .Says("Feeds all injectors together; beside \"pumps\".");
            var mesh = o.Optional("mesh", MeshShape.Shape, p => (p as PowerSupply.Meshed)?.Mesh)
                .Says("Supply and ground as a mesh, in the place of the two circuits.");
            var source = o.Optional("source", TextShape.Name, p => (p as PowerSupply.Meshed)?.Source)
                .Says("The source of the mesh whose voltage an operating point states.");
            var pumpLoad = o.Optional("pumpLoad", TextShape.Name, p => (p as PowerSupply.Meshed)?.PumpLoad)
                .Says("The load of the mesh that stands for all pumps without a feed of their own.");
            var injectorLoad = o.Optional("injectorLoad", TextShape.Name, p => (p as PowerSupply.Meshed)?.InjectorLoad)
                .Says("The load of the mesh that stands for all injectors.");
            var feeds = o.Optional("feeds", PumpFeedShape.Shape.List(1, 100), p => p.Feeds)
                .Says("Pumps with a circuit or a load of their own; none when left out.");
            o.ExactlyOne(pumps, mesh);
            return f =>
            {
                PowerSupply plain = f.Of(mesh) is { } whole
                    ? f.Of(source) is { } node
                    && f.Of(pumpLoad) is { } forPumps
                    && f.Of(injectorLoad) is { } forInjectors
                    && !f.Has(injectors)
                        ? new PowerSupply.Meshed(whole, node, forPumps, forInjectors)
                        : throw new RefusedArgumentException(
                            RefusalCode.BelongTogether,
                            "Beside \"mesh\" there must be \"source\", \"pumpLoad\" and \"injectorLoad\", and no \"injectors\"."
                        )
                    : f.Of(injectors) is { } circuit && !f.Has(source) && !f.Has(pumpLoad) && !f.Has(injectorLoad)
                        ? new PowerSupply.TwoCircuits(f.Of(pumps)!, circuit)
                        : throw new RefusedArgumentException(
                            RefusalCode.BelongTogether,
                            "Beside \"pumps\" there must be \"injectors\", and nothing that belongs to a mesh."
                        );
                return f.Has(feeds) ? plain.WithFeeds(f.Of(feeds)) : plain;
            };
        });
}
