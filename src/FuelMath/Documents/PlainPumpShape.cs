using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The curve of a pump in a network.</summary>
internal static class PlainPumpShape
{
    private static readonly ValueProperty<PlainPumpPoint, VolumeFlow> Flow = new(
        "flow",
        "Volume flow.",
        QuantityShapes.VolumeFlow,
        p => p.Flow
    );

    private static readonly ValueProperty<PlainPumpPoint, Pressure> Rise = new(
        "pressureRise",
        "Outlet less inlet pressure.",
        QuantityShapes.PressureDifference,
        p => p.PressureRise
    );

    private static readonly ObjectShape<PlainPumpPoint> PointShape = new(
        "plain-pump-point",
        "A point of a pump's curve.",
        [Flow, Rise],
        f => new(f.Of(Flow), f.Of(Rise))
    );

    private static readonly ValueProperty<PlainPump, ImmutableArray<PlainPumpPoint>> Points = new(
        "points",
        "Two or more points, flow rising, pressure rise falling at last; a hump before that may give several states.",
        TableShapes.Knots(PointShape),
        p => p.Given.Points
    );

    private static readonly ValueProperty<PlainPump, OutsideRange> Outside = TableShapes.Outside<PlainPump>(p =>
        p.Given.Outside
    );

    private static readonly ValueProperty<PlainPump, Pressure> Shutoff = new(
        "shutoffPressureRise",
        "Pressure rise at no flow.",
        QuantityShapes.PressureDifference,
        p => p.Given.Shutoff
    );

    private static readonly ValueProperty<PlainPump, PlainPumpPoint> Point = new(
        "point",
        "Another point.",
        PointShape,
        p => p.Given.Points[0]
    );

    private static readonly ValueProperty<PlainPump, Ratio> Exponent = new(
        "exponent",
        "The exponent of flow.",
        PureRatioShape.Instance,
        p => p.Given.Exponent
    );

    private static readonly ValueProperty<PlainPump, Ratio> Speed = new(
        "speed",
        "Speed over that of the curve; the same when left out.",
        QuantityShapes.Ratio,
        p => p.Speed,
        p => p.Speed.InSi() != 1,
        SiUnits.Ratio(1)
    );

    private static readonly ValueProperty<PlainPump, int> InParallel = Count(
        "inParallel",
        "How many equal pumps work side by side; one when left out.",
        p => p.CountInParallel
    );

    private static readonly ValueProperty<PlainPump, int> InSeries = Count(
        "inSeries",
        "How many equal pumps each of those is a chain of; one when left out.",
        p => p.CountInSeries
    );

    internal static UnionShape<PlainPump> Shape { get; } =
        new(
            Case(
                "straight table",
                [Points, Outside],
                f => PlainPump.Straight(f.Of(Points), f.Of(Outside)),
                p => !p.Given.IsPower && !p.Given.IsSmooth
            ),
            Case(
                "smooth table",
                [Points, Outside],
                f => PlainPump.Smooth(f.Of(Points), f.Of(Outside)),
                p => !p.Given.IsPower && p.Given.IsSmooth
            ),
            Case(
                "power law",
                [Shutoff, Point, Exponent],
                f => PlainPump.Power(f.Of(Shutoff), f.Of(Point), f.Of(Exponent)),
                p => p.Given.IsPower
            )
        );

    private static ValueProperty<PlainPump, int> Count(string name, string description, Func<PlainPump, int> get) =>
        new(name, description, new CountShape(1, PlainPump.MostPumps), get, p => get(p) != 1, 1)
        {
            Parameter = "pumps",
        };

    private static UnionCase<PlainPump> Case(
        string word,
        ImmutableArray<Property<PlainPump>> properties,
        Func<Fields<PlainPump>, PlainPump> make,
        Func<PlainPump, bool> holds
    ) =>
        UnionCase<PlainPump>.Of(
            new ObjectShape<PlainPump>(
                $"pump-by-{word.Replace(' ', '-')}",
                "The curve of a pump.",
                [
                    new WordProperty<PlainPump>("kind", "How it is given.", word),
                    .. properties,
                    Speed,
                    InParallel,
                    InSeries,
                ],
                f => Whole(f, make(f))
            ),
            holds
        );

    private static PlainPump Whole(Fields<PlainPump> f, PlainPump single) =>
        single.AtSpeed(f.Of(Speed)).InParallel(f.Of(InParallel)).InSeries(f.Of(InSeries));
}
