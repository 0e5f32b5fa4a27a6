using System.Collections.Immutable;
using FuelMath.Filters;
using FuelMath.Fittings;
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

    private static readonly ValueProperty<FuelLine, ImmutableArray<Fitting>> Fittings = new(
        "fittings",
        "The fittings on the hose, whose losses its own coefficient does not hold; none when left out.",
        new ListShape<Fitting>(FittingShape.Shape, 1, 100),
        l => l.Fittings,
        l => !l.Fittings.IsEmpty,
        []
    );

    private static readonly ValueProperty<FuelLine, Fitting> Fitting = Part(
        "fitting",
        FittingShape.Shape,
        l => l.Fitting
    );

    private static readonly ValueProperty<FuelLine, Filter> Filter = Part("filter", FilterShape.Shape, l => l.Filter);

    private static readonly ValueProperty<FuelLine, Pump> Pump = Part("pump", PumpShape.Shape, l => l.Pump);

    private static readonly ValueProperty<FuelLine, BypassRegulator> Regulator = Part(
        "regulator",
        RegulatorShape.Shape,
        l => l.Regulator
    );

    private static readonly ValueProperty<FuelLine, ReducingRegulator> Reducing = Part(
        "reducingRegulator",
        ReducingRegulatorShape.Shape,
        l => l.ReducingRegulator
    );

    private static readonly ValueProperty<FuelLine, ReliefValve> Relief = Part(
        "reliefValve",
        ReliefValveShape.Shape,
        l => l.Relief
    );

    internal static ObjectShape<FuelLine> Shape { get; } =
        new(
            "line",
            "A part between two nodes.",
            [Name, From, To, Hose, Fittings, Fitting, Filter, Pump, Regulator, Reducing, Relief],
            Make
        )
        {
            ExactlyOne = [Hose.Name, Fitting.Name, Filter.Name, Pump.Name, Regulator.Name, Reducing.Name, Relief.Name],
        };

    private static FuelLine Make(Fields<FuelLine> f)
    {
        (string name, string from, string to) = (f.Of(Name), f.Of(From), f.Of(To));
        if (f.Has(Fittings) && !f.Has(Hose))
        {
            throw new ArgumentException($"Only a hose carries fittings; line '{name}' has no hose.");
        }

        return f.Has(Hose) ? new(name, from, to, f.Of(Hose), f.Of(Fittings))
            : f.Has(Fitting) ? new(name, from, to, f.Of(Fitting))
            : f.Has(Filter) ? new(name, from, to, f.Of(Filter))
            : f.Has(Pump) ? new(name, from, to, f.Of(Pump))
            : f.Has(Reducing) ? new(name, from, to, f.Of(Reducing))
            : f.Has(Relief) ? new(name, from, to, f.Of(Relief))
            : new(name, from, to, f.Of(Regulator));
    }

    private static ValueProperty<FuelLine, T> Part<T>(string name, Shape<T> shape, Func<FuelLine, T?> get)
        where T : class =>
        new(name, $"The {name}, where the part is one.", shape, l => get(l)!, l => get(l) is not null, null!);
}
