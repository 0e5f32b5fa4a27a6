using System.Collections.Immutable;
using FuelMath.Bench;

namespace FuelMath;

/// <summary>The raw readings of a set of injectors.</summary>
internal static class BenchRecordShape
{
    private const int MostReadings = 1000;
    private const int MostInjectors = 200;

    private static readonly ObjectShape<BenchSeries> Series = MakeSeries();

    private static readonly ValueProperty<BenchedInjector, string> InjectorName = new(
        "name",
        "The name of the injector.",
        TextShape.Name,
        i => i.Name
    );

    private static readonly ValueProperty<BenchedInjector, BenchSeries?> Before = new(
        "before",
        "Readings from before it was cleaned; left out when there are none.",
        Series!,
        i => i.Before,
        i => i.Before is not null,
        null
    );

    private static readonly ValueProperty<BenchedInjector, BenchSeries> Now = new(
        "now",
        "Readings as it is now.",
        Series,
        i => i.Now
    );

    private static readonly ObjectShape<BenchedInjector> One = new(
        "benched-injector",
        "An injector with its readings.",
        [InjectorName, Before, Now],
        f =>
            f.Of(Before) is { } before
                ? BenchedInjector.FromCleaning(f.Of(InjectorName), before, f.Of(Now))
                : BenchedInjector.FromSeries(f.Of(InjectorName), f.Of(Now))
    );

    private static readonly ValueProperty<BenchRecord, string> Name = new(
        "name",
        "What the set is.",
        TextShape.Name,
        r => r.Name
    );

    private static readonly ValueProperty<BenchRecord, ImmutableArray<Fuel>> Fuels = new(
        FuelShape.List.Name,
        "Fluids that the readings refer to; those that the library knows by name need no entry.",
        FuelShape.List,
        FluidsOf,
        r => FluidsOf(r).Length > 0,
        []
    );

    private static readonly ValueProperty<BenchRecord, ImmutableArray<BenchedInjector>> Injectors = new(
        "injectors",
        "The injectors, each with a name of its own.",
        new ListShape<BenchedInjector>(One, 1, MostInjectors),
        r => r.Injectors
    );

    internal static ObjectShape<BenchRecord> Shape { get; } =
        new(
            "bench-record",
            "Raw readings of a set of injectors.",
            [
                new WordProperty<BenchRecord>("document", "What the document is.", "bench record"),
                new WordProperty<BenchRecord>("version", "The version of its form.", "1"),
                Name,
                Fuels,
                Injectors,
            ],
            f => new(f.Of(Name), f.Of(Injectors))
        );

    private static ObjectShape<BenchSeries> MakeSeries()
    {
        var flow = Readings("staticFlow", "Held open.", FlowReadingShapes.Static, s => s.StaticFlow);
        var pulses = Readings("pulses", "Pulsed.", FlowReadingShapes.Pulsed, s => s.Pulses);
        var dead = Readings("deadTimes", "Dead times.", OtherReadingShapes.DeadTime, s => s.DeadTimes);
        var leakage = Readings("leakage", "Shut.", OtherReadingShapes.Leakage, s => s.Leakage);
        var coil = Readings("coil", "Resistance of the coil.", OtherReadingShapes.Coil, s => s.Coil);
        return new(
            "bench-series",
            "Readings of one injector in one state; one or more of any kind.",
            [flow, pulses, dead, leakage, coil],
            f => new(f.Of(flow), f.Of(pulses), f.Of(dead), f.Of(leakage), f.Of(coil))
        );
    }

    private static ValueProperty<BenchSeries, ImmutableArray<T>> Readings<T>(
        string name,
        string description,
        Shape<T> one,
        Func<BenchSeries, ImmutableArray<T>> get
    ) => new(name, description, new ListShape<T>(one, 1, MostReadings), get, s => !get(s).IsEmpty, []);

    private static ImmutableArray<Fuel> FluidsOf(BenchRecord record)
    {
        IEnumerable<BenchSeries> all = record.Injectors.SelectMany(i =>
            new[] { i.Before, i.Now }.OfType<BenchSeries>()
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
