namespace FuelMath;

/// <summary>A strainer by its wire.</summary>
internal static class StrainerShape
{
    internal static ObjectShape<Strainer> Shape { get; } =
        new(o =>
        {
            o.Is("strainer", "A strainer of plain woven wire with square openings.");
            var name = o.Named(s => s.Name);
            var opening = o.Required("opening", QuantityShapes.SmallLength.Positive, s => s.Opening)
                .Says("The clear width between two wires.");
            var wire = o.Required("wireDiameter", QuantityShapes.SmallLength.Positive, s => s.WireDiameter)
                .Says("Diameter of the wire.");
            var area = o.Required("area", QuantityShapes.Area.Positive, s => s.Area)
                .Says("The mesh that fuel passes, without what its frame covers.");
            var source = o.Source(s => s.Source);
            return f => new(f.Of(name), f.Of(opening), f.Of(wire), f.Of(area), f.Of(source));
        });
}
