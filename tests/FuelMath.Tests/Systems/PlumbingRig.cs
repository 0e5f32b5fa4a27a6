using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>The test rig with other plumbing: without a return from the rail, with banks, coils, valves.</summary>
internal static class PlumbingRig
{
    internal static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(745);

    /// <summary>The rig with another fuel path, whose rail nodes are "rail start" and "rail end".</summary>
    internal static FuelSystem With(params Line[] lines)
    {
        FuelSystem four = Workshop.Four();
        IEnumerable<string> junctions = lines
            .SelectMany(l => new[] { l.From, l.To })
            .Distinct()
            .Where(n => n != "tank");
        return new(
            four.Name,
            four.Fuel,
            four.Engine,
            new(
                [
                    Network.Node.FixedPressure("tank", default, Length.Zero),
                    .. junctions.Select(n => Network.Node.Junction(n, Length.Zero)),
                ],
                lines
            ),
            four.Stages,
            four.Staging,
            four.Power,
            four.Limits,
            four.Source
        );
    }

    /// <summary>A pump with its relief, and a reducing regulator that feeds a dead-end rail.</summary>
    internal static FuelSystem WithoutReturn(double pumpShare = 1, ReducingRegulator? regulator = null) =>
        With(
            new("pump", "tank", "pump outlet", Workshop.Pump(pumpShare)),
            new("relief", "pump outlet", "tank", Relief(5)),
            new("filter", "pump outlet", "filter outlet", Workshop.Filter()),
            new("regulator", "filter outlet", "rail start", regulator ?? Reducing(RegulatorReference.Manifold)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );

    /// <summary>The usual rig: pump, filter, feed, regulator, return; any of them another one.</summary>
    internal static Line[] Usual(
        Pump? pump = null,
        Filter? filter = null,
        Hose? feed = null,
        BypassRegulator? regulator = null
    ) =>
        [
            new("pump", "tank", "pump outlet", pump ?? Workshop.Pump(1)),
            new("filter", "pump outlet", "filter outlet", filter ?? Workshop.Filter()),
            new("feed", "filter outlet", "rail start", feed ?? Workshop.Hose("feed", 3, 8.7)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
            new("regulator", "rail end", "return", regulator ?? Workshop.Regulator(RegulatorReference.Manifold, 3)),
            new("return hose", "return", "tank", Workshop.Hose("return", 3, 8)),
        ];

    internal static ReliefValve Relief(double bars) =>
        new(
            "relief",
            Pressure.FromBars(bars),
            Pressure.FromBars(0.5),
            VolumeFlow.FromLitersPerHour(200),
            Petrol,
            Workshop.Invented
        );

    internal static ReducingRegulator Reducing(RegulatorReference reference) =>
        new(
            "reducing",
            new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(10), Bar(5.5)),
            new(Pressure.FromBars(2.9), VolumeFlow.FromLitersPerHour(110), Bar(5.5)),
            new RegulatorMechanics(
                Area.FromSquareMillimeters(700),
                Area.FromSquareMillimeters(20),
                new(Pressure.FromBars(0.6), VolumeFlow.FromLitersPerHour(150), Petrol)
            ),
            reference,
            Workshop.Invented
        );

    internal static FilterLoading Loading() =>
        new(
            VolumeFlow.FromLitersPerHour(200),
            DynamicViscosity.FromMillipascalSeconds(0.5),
            [
                new(Mass.FromGrams(0), Pressure.FromKilopascals(12)),
                new(Mass.FromGrams(5), Pressure.FromKilopascals(20)),
                new(Mass.FromGrams(10), Pressure.FromKilopascals(90)),
            ],
            Workshop.Invented
        );

    internal static GaugePressure Bar(double bar) => new(Pressure.FromBars(bar));
}
