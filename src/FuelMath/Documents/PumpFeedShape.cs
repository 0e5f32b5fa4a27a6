namespace FuelMath;

/// <summary>What feeds one pump by itself.</summary>
internal static class PumpFeedShape
{
    private static readonly ValueProperty<PumpFeed, string> Line = new(
        "line",
        "The line that holds the pump.",
        TextShape.Name,
        f => f.Line
    );

    private static readonly ValueProperty<PumpFeed, Circuit> Circuit = new(
        "circuit",
        "Feeds it alone; beside \"pumps\" and \"injectors\".",
        CircuitShape.Shape,
        f => f.Circuit!,
        f => f.Circuit is not null,
        null!
    );

    private static readonly ValueProperty<PumpFeed, string> Load = new(
        "load",
        "The load that stands for it; in a mesh.",
        TextShape.Name,
        f => f.Load!,
        f => f.Load is not null,
        null!
    );

    internal static ObjectShape<PumpFeed> Shape { get; } =
        new(
            "pump-feed",
            "A pump with a circuit of its own, or a load of its own in a mesh.",
            [Line, Circuit, Load],
            f => f.Has(Circuit) ? new(f.Of(Line), f.Of(Circuit)) : new(f.Of(Line), f.Of(Load))
        )
        {
            ExactlyOne = [Circuit.Name, Load.Name],
        };
}
