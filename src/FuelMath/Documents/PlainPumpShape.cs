namespace FuelMath;

/// <summary>The curve of a pump in a network.</summary>
internal static class PlainPumpShape
{
    private static readonly ObjectShape<PlainPump.Point> Point = new(o =>
    {
        o.Is("plain-pump-point", "A point of a pump's curve.");
        var flow = o.Required("flow", QuantityShapes.VolumeFlow.NotNegative, p => p.Flow).Says("Volume flow.");
        var rise = o.Required("pressureRise", QuantityShapes.PressureDifference, p => p.PressureRise)
            .Says("Outlet less inlet pressure.");
        return f => new(f.Of(flow), f.Of(rise));
    });

    internal static UnionShape<PlainPump> Shape { get; } =
        new(
            Table("straight table", false, PlainPump.Straight),
            Table("smooth table", true, PlainPump.Smooth),
            new(o =>
            {
                Begin(o, "power law", p => p.Given.IsPower);
                var shutoff = o.Required(
                        "shutoffPressureRise",
                        QuantityShapes.PressureDifference.Positive,
                        p => p.Given.Shutoff
                    )
                    .Says("Pressure rise at no flow.");
                var point = o.Required("point", Point, p => p.Given.Points[0]).Says("Another point.");
                var exponent = o.Required("exponent", PureRatioShape.Positive, p => p.Given.Exponent)
                    .Says("The exponent of flow.");
                End(o);
                return f => PlainPump.Power(f.Of(shutoff), f.Of(point), f.Of(exponent));
            })
        );

    private static ObjectShape<PlainPump> Table(
        string word,
        bool isSmooth,
        Func<IEnumerable<PlainPump.Point>, OutsideRange, PlainPump> make
    ) =>
        new(o =>
        {
            Begin(o, word, p => !p.Given.IsPower && p.Given.IsSmooth == isSmooth);
            var points = o.Required("points", Point.Knots(), p => p.Given.Points)
                .Says(
                    "Two or more points, flow rising, pressure rise falling at last; a hump before that may give several states."
                );
            var outside = o.Outside(p => p.Given.Outside);
            End(o);
            return f => make(f.Of(points), f.Of(outside));
        });

    private static void Begin(ObjectBuilder<PlainPump> o, string word, Func<PlainPump, bool> holds)
    {
        o.Is($"pump-by-{word.Replace(' ', '-')}", "The curve of a pump.");
        o.Kind(word, "How it is given.", holds);
    }

    private static void End(ObjectBuilder<PlainPump> o)
    {
        o.With(
                "speed",
                QuantityShapes.Ratio.Positive,
                p => p.Speed.InSi() == 1 ? null : p.Speed,
                (p, v) => p.AtSpeed(v)
            )
            .Says("Speed over that of the curve; the same when left out.");
        o.With("inParallel", Count, p => NotOne(p.CountInParallel), (p, v) => p.InParallel(v), "pumps")
            .Says("How many equal pumps work in parallel; one when left out.");
        o.With("inSeries", Count, p => NotOne(p.CountInSeries), (p, v) => p.InSeries(v), "pumps")
            .Says("How many equal pumps each of those is a chain of; one when left out.");
    }

    private static CountShape Count => new(1, PlainPump.MostPumps);

    private static int? NotOne(int count) => count == 1 ? null : count;
}
