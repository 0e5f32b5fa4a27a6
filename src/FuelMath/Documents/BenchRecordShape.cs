using System.Collections.Immutable;
using FuelMath.Bench;

namespace FuelMath;

/// <summary>The raw readings of a set of injectors.</summary>
internal static class BenchRecordShape
{
    private const int MostReadings = 1000;
    private const int MostInjectors = 200;

    private static readonly ObjectShape<BenchedInjector.Series> Series = new(o =>
    {
        o.Is("bench-series", "Readings of one injector in one state; one or more of any kind.");
        var flow = o.Optional("staticFlow", FlowReadingShapes.Static.List(1, MostReadings), s => s.StaticFlow)
            .Says("Held open.");
        var pulses = o.Optional("pulses", FlowReadingShapes.Pulsed.List(1, MostReadings), s => s.Pulses)
            .Says("Pulsed.");
        var dead = o.Optional("deadTimes", OtherReadingShapes.DeadTime.List(1, MostReadings), s => s.DeadTimes)
            .Says("Dead times.");
        var leakage = o.Optional("leakage", OtherReadingShapes.Leakage.List(1, MostReadings), s => s.Leakage)
            .Says("Shut.");
        var coil = o.Optional("coil", OtherReadingShapes.Coil.List(1, MostReadings), s => s.Coil)
            .Says("Resistance of the coil.");
        return f => new(f.Of(flow), f.Of(pulses), f.Of(dead), f.Of(leakage), f.Of(coil));
    });

    private static readonly ObjectShape<BenchedInjector> One = new(o =>
    {
        o.Is("benched-injector", "An injector with its readings.");
        var injectorName = o.Required("name", TextShape.Name, i => i.Name).Says("The name of the injector.");
        var before = o.Optional("before", Series, i => i.Before)
            .Says("Readings from before it was cleaned; left out when there are none.");
        var now = o.Required("now", Series, i => i.Now).Says("Readings as it is now.");
        return f =>
            f.Of(before) is { } earlier
                ? BenchedInjector.FromCleaning(f.Of(injectorName), earlier, f.Of(now))
                : BenchedInjector.FromSeries(f.Of(injectorName), f.Of(now));
    });

    internal static ObjectShape<BenchRecord> Shape { get; } =
        new(o =>
        {
            o.Is("bench-record", "Raw readings of a set of injectors.");
            o.Document("bench record");
            var name = o.Required("name", TextShape.Name, r => r.Name).Says("What the set is.");
            var fuels = o.Optional(FuelShape.List.Name, FuelShape.List, FluidsOf)
                .Says("Fluids that the readings refer to; those that the library knows by name need no entry.");
            var injectors = o.Required("injectors", One.List(1, MostInjectors), r => r.Injectors)
                .Says("The injectors, each with a name of its own.");
            return f => new(f.Of(name), f.Of(injectors));
        });

    private static ImmutableArray<Fuel> FluidsOf(BenchRecord record)
    {
        IEnumerable<BenchedInjector.Series> all = record.Injectors.SelectMany(i =>
            new[] { i.Before, i.Now }.OfType<BenchedInjector.Series>()
        );
        return SystemLists.Fuels(
            all.SelectMany(s =>
                s.StaticFlow.Select(r => r.Conditions)
                    .Concat(s.Pulses.Select(r => r.Conditions))
                    .Concat(s.DeadTimes.Select(r => r.Conditions))
                    .Concat(s.Leakage.Select(r => r.Conditions))
                    .Select(c => c.Fluid)
            ),
            nameof(record)
        );
    }
}
