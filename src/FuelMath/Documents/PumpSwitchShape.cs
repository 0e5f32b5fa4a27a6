using UnitsNet;

namespace FuelMath;

/// <summary>The switch of a pump.</summary>
internal static class PumpSwitchShape
{
    private const string Rising = "Above";
    private const string Falling = "Below";

    internal static UnionShape<PumpSwitch> Shape { get; } =
        new(
            new(o =>
            {
                Begin(o, "pressure below", PumpSwitchKind.PressureBelow);
                var node = Watched(o, "node", "The node whose pressure it watches.");
                var (join, leave) = Pressures(o, Falling, Rising);
                var was = Was(o);
                return f => PumpSwitch.PressureBelow(f.Of(node), f.Of(join), f.Of(leave), f.Of(was));
            }),
            new(o =>
            {
                Begin(o, "pressure above", PumpSwitchKind.PressureAbove);
                var node = Watched(o, "node", "The node whose pressure it watches.");
                var (join, leave) = Pressures(o, Rising, Falling);
                var was = Was(o);
                return f => PumpSwitch.PressureAbove(f.Of(node), f.Of(join), f.Of(leave), f.Of(was));
            }),
            new(o =>
            {
                Begin(o, "manifold above", PumpSwitchKind.ManifoldAbove);
                var (join, leave) = Pressures(o, Rising, Falling);
                var was = Was(o);
                return f => PumpSwitch.ManifoldAbove(f.Of(join), f.Of(leave), f.Of(was));
            }),
            new(o =>
            {
                Begin(o, "flow above", PumpSwitchKind.FlowAbove);
                var link = Watched(o, "link", "The link or line whose flow it watches.");
                var (join, leave) = Flows(o);
                var was = Was(o);
                return f => PumpSwitch.FlowAbove(f.Of(link), f.Of(join), f.Of(leave), f.Of(was));
            }),
            new(o =>
            {
                Begin(o, "total draw above", PumpSwitchKind.TotalDrawAbove);
                var (join, leave) = Flows(o);
                var was = Was(o);
                return f => PumpSwitch.TotalDrawAbove(f.Of(join), f.Of(leave), f.Of(was));
            })
        );

    private static void Begin(ObjectBuilder<PumpSwitch> o, string word, PumpSwitchKind kind)
    {
        o.Is($"switch-by-{word.Replace(' ', '-')}", "The switch of a pump.");
        o.Kind(word, "What it waits for.", s => s.Kind == kind);
    }

    private static ValueProperty<PumpSwitch, string> Watched(ObjectBuilder<PumpSwitch> o, string name, string says) =>
        o.Required(name, TextShape.Name, s => s.Watched).Says(says);

    private static (ValueProperty<PumpSwitch, GaugePressure>, ValueProperty<PumpSwitch, GaugePressure>) Pressures(
        ObjectBuilder<PumpSwitch> o,
        string join,
        string leave
    ) =>
        (
            o.Required($"join{join}", QuantityShapes.GaugePressure, s => new GaugePressure(s.JoinSi))
                .Says($"{join} this a stopped pump joins."),
            o.Required($"leave{leave}", QuantityShapes.GaugePressure, s => new GaugePressure(s.LeaveSi))
                .Says($"{leave} this a running pump leaves.")
        );

    private static (ValueProperty<PumpSwitch, VolumeFlow>, ValueProperty<PumpSwitch, VolumeFlow>) Flows(
        ObjectBuilder<PumpSwitch> o
    ) =>
        (
            o.Required("joinAbove", QuantityShapes.VolumeFlow, s => SiUnits.VolumeFlow(s.JoinSi))
                .Says("Above this a stopped pump joins."),
            o.Required("leaveBelow", QuantityShapes.VolumeFlow, s => SiUnits.VolumeFlow(s.LeaveSi))
                .Says("Below this a running pump leaves.")
        );

    private static ValueProperty<PumpSwitch, bool> Was(ObjectBuilder<PumpSwitch> o) =>
        o.Required("was", ChoiceShape.Of(("running", true), ("stopped", false)), s => s.WasRunning)
            .Says("What it did before: that decides where running and stopped would both last.");
}
