namespace FuelMath;

/// <summary>A network: its nodes, lines and conditions.</summary>
internal static class NetworkShape
{
    /// <summary>
    /// The greatest length of a list. A network of so many lines is prepared in less than a tenth of a second.
    /// </summary>
    internal const int Most = 4000;

    internal static ObjectShape<Network> Shape { get; } =
        new(o =>
        {
            o.Is("network", "A network of lines with parts in them.");
            o.Document("network", "2");
            o.With("conditions", ConditionsShape.Shape, n => n.Conditions, (n, v) => n.At(v))
                .Says("What it is solved at; when left out, that is said with each solve.");
            var acceleration = o.Acceleration(n => n.Acceleration)
                .Says("How the vehicle that carries it speeds up; rest when left out.");
            var nodes = o.Required("nodes", NetworkNodeShape.Shape.List(1, Most), n => n.Nodes)
                .Says("Its nodes, at least one of fixed pressure.");
            var lines = o.Required("lines", LineShape.Shape.List(1, Most), n => n.Lines)
                .Says("The lines between them, each with its part.");
            return f => new Network(f.Of(nodes), f.Of(lines)).Under(f.Of(acceleration) ?? default);
        });

    /// <summary>Reads a network.</summary>
    /// <exception cref="DocumentException">
    /// It is no network, or has the format of version 1; the message says what to change.
    /// </exception>
    internal static Network Read(JsonItem item) =>
        item.Member("version") is { Text: "1" } old
            ? throw old.Refuse(
                RefusalCode.OldVersion,
                "Must be \"2\". Version 1 described links by kind; now \"conditions\" hold \"density\" and \"viscosity\", and \"links\" are \"lines\", each with its part under one word in place of \"kind\": \"pipe\" (\"check pipe\" with \"checkValve\": \"present\"), \"curvedPipe\", \"plainFitting\", \"plainFilter\", \"plainPump\" (its \"switch\" beside it), \"plainBypassRegulator\", \"plainReducingRegulator\", \"checkValve\" (\"relief valve\", too), \"nozzle\" (\"orifice\") or \"injectorDraw\" (\"capped orifice\"). A part that loses with the fluid names its \"density\", a filter its \"viscosity\" too: those of the network"
            )
            : Shape.Read(item);
}
