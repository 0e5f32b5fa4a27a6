using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The curve of a pump in a network.</summary>
internal static class NetworkPumpShape
{
    private static readonly ValueProperty<NetworkPumpPoint, VolumeFlow> Flow = new(
        "flow",
        "Volume flow.",
        QuantityShapes.VolumeFlow,
        p => p.Flow
    );

    private static readonly ValueProperty<NetworkPumpPoint, Pressure> Rise = new(
        "pressureRise",
        "Outlet less inlet pressure.",
        QuantityShapes.PressureDifference,
        p => p.PressureRise
    );

    private static readonly ObjectShape<NetworkPumpPoint> PointShape = new(
        "network-pump-point",
        "A point of a pump's curve.",
        [Flow, Rise],
        f => new(f.Of(Flow), f.Of(Rise))
    );

    private static readonly ValueProperty<NetworkPump, ImmutableArray<NetworkPumpPoint>> Points = new(
        "points",
        "Two or more points, flow rising, pressure rise falling at last; a hump before that may give several states.",
        TableShapes.Knots(PointShape),
        p => p.Given.Points
    );

    private static readonly ValueProperty<NetworkPump, OutsideRange> Outside = TableShapes.Outside<NetworkPump>(p =>
        p.Given.Outside
    );

    private static readonly ValueProperty<NetworkPump, Pressure> Shutoff = new(
        "shutoffPressureRise",
        "Pressure rise at no flow.",
        QuantityShapes.PressureDifference,
        p => p.Given.Shutoff
    );

    private static readonly ValueProperty<NetworkPump, NetworkPumpPoint> Point = new(
        "point",
        "Another point.",
        PointShape,
        p => p.Given.Points[0]
    );

    private static readonly ValueProperty<NetworkPump, Ratio> Exponent = new(
        "exponent",
        "The exponent of flow.",
        PureRatioShape.Instance,
        p => p.Given.Exponent
    );

    private static readonly ValueProperty<NetworkPump, Ratio> Speed = new(
        "speed",
        "Speed over that of the curve; the same when left out.",
        QuantityShapes.Ratio,
        p => p.Speed,
        p => p.Speed.InSi() != 1,
        SiUnits.Ratio(1)
    );

    private static readonly ValueProperty<NetworkPump, int> InParallel = Count(
        "inParallel",
        "How many equal pumps work side by side; one when left out.",
        p => p.CountInParallel
    );

    private static readonly ValueProperty<NetworkPump, int> InSeries = Count(
        "inSeries",
        "How many equal pumps each of those is a chain of; one when left out.",
        p => p.CountInSeries
    );

    private static readonly ValueProperty<NetworkPump, PumpSwitch> Switch = new(
        "switch",
        "What lets it join and leave; it always runs when left out.",
        PumpSwitchShape.Shape,
        p => p.Switch!,
        p => p.Switch is not null,
        null!
    );

    internal static UnionShape<NetworkPump> Shape { get; } =
        new(
            Case(
                "straight table",
                [Points, Outside],
                f => NetworkPump.Straight(f.Of(Points), f.Of(Outside)),
                p => !p.Given.IsPower && !p.Given.IsSmooth
            ),
            Case(
                "smooth table",
                [Points, Outside],
                f => NetworkPump.Smooth(f.Of(Points), f.Of(Outside)),
                p => !p.Given.IsPower && p.Given.IsSmooth
            ),
            Case(
                "power law",
                [Shutoff, Point, Exponent],
                f => NetworkPump.Power(f.Of(Shutoff), f.Of(Point), f.Of(Exponent)),
                p => p.Given.IsPower
            )
        );

    private static ValueProperty<NetworkPump, int> Count(string name, string description, Func<NetworkPump, int> get) =>
        new(name, description, new CountShape(1, NetworkPump.MostPumps), get, p => get(p) != 1, 1)
        {
            Parameter = "pumps",
        };

    private static UnionCase<NetworkPump> Case(
        string word,
        ImmutableArray<Property<NetworkPump>> properties,
        Func<Fields<NetworkPump>, NetworkPump> make,
        Func<NetworkPump, bool> holds
    ) =>
        UnionCase<NetworkPump>.Of(
            new ObjectShape<NetworkPump>(
                $"pump-by-{word.Replace(' ', '-')}",
                "The curve of a pump.",
                [
                    new WordProperty<NetworkPump>("kind", "How it is given.", word),
                    .. properties,
                    Speed,
                    InParallel,
                    InSeries,
                    Switch,
                ],
                f => Whole(f, make(f))
            ),
            holds
        );

    private static NetworkPump Whole(Fields<NetworkPump> f, NetworkPump single)
    {
        NetworkPump bank = single.AtSpeed(f.Of(Speed)).InParallel(f.Of(InParallel)).InSeries(f.Of(InSeries));
        return f.Has(Switch) ? bank.SwitchedBy(f.Of(Switch)) : bank;
    }
}
