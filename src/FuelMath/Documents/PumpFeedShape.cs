namespace FuelMath;

/// <summary>The feed of one pump.</summary>
internal static class PumpFeedShape
{
    internal static ObjectShape<PowerSupply.PumpFeed> Shape { get; } =
        new(o =>
        {
            o.Is("pump-feed", "A pump with a circuit of its own, or a load of its own in a mesh.");
            var line = o.Required("line", TextShape.Name, f => f.Line).Says("The line that holds the pump.");
            var circuit = o.Optional("circuit", CircuitShape.Shape, f => f.Circuit)
                .Says("Feeds it alone; beside \"pumps\" and \"injectors\".");
            var load = o.Optional("load", TextShape.Name, f => f.Load).Says("The load that stands for it; in a mesh.");
            o.ExactlyOne(circuit, load);
            return f => f.Of(circuit) is { } own ? new(f.Of(line), own) : new(f.Of(line), f.Of(load)!);
        });
}
