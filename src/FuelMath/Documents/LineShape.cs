using FuelMath.Filters;
using FuelMath.Hoses;
using FuelMath.Pumps;
using FuelMath.Regulators;
using FuelMath.Shapes;
using FuelMath.Systems;

namespace FuelMath.Documents;

/// <summary>A part between two nodes.</summary>
internal static class LineShape
{
    private static readonly ValueProperty<FuelLine, string> Name = new(
        "name",
        "Its name.",
        TextShape.Name,
        l => l.Name
    );

    private static readonly ValueProperty<FuelLine, string> From = new(
        "from",
        "The node that it starts from.",
        TextShape.Name,
        l => l.From
    );

    private static readonly ValueProperty<FuelLine, string> To = new(
        "to",
        "The node that it leads to.",
        TextShape.Name,
        l => l.To
    );

    private static readonly ValueProperty<FuelLine, Hose> Hose = Part("hose", HoseShape.Shape, l => l.Hose);

    private static readonly ValueProperty<FuelLine, Filter> Filter = Part("filter", FilterShape.Shape, l => l.Filter);

    private static readonly ValueProperty<FuelLine, Pump> Pump = Part("pump", PumpShape.Shape, l => l.Pump);

    private static readonly ValueProperty<FuelLine, BypassRegulator> Regulator = Part(
        "regulator",
        RegulatorShape.Shape,
        l => l.Regulator
    );

    internal static ObjectShape<FuelLine> Shape { get; } =
        new("line", "A part between two nodes.", [Name, From, To, Hose, Filter, Pump, Regulator], Make)
        {
            ExactlyOne = [Hose.Name, Filter.Name, Pump.Name, Regulator.Name],
        };

    private static FuelLine Make(Fields<FuelLine> f)
    {
        (string name, string from, string to) = (f.Of(Name), f.Of(From), f.Of(To));
        return f.Has(Hose) ? new(name, from, to, f.Of(Hose))
            : f.Has(Filter) ? new(name, from, to, f.Of(Filter))
            : f.Has(Pump) ? new(name, from, to, f.Of(Pump))
            : new(name, from, to, f.Of(Regulator));
    }

    private static ValueProperty<FuelLine, T> Part<T>(string name, Shape<T> shape, Func<FuelLine, T?> get)
        where T : class =>
        new(name, $"The {name}, where the part is one.", shape, l => get(l)!, l => get(l) is not null, null!);
}
