using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What lets a pump join and leave.</summary>
internal static class PumpSwitchShape
{
    private static readonly ValueProperty<PumpSwitch, string> Node = new(
        "node",
        "The node whose pressure it watches.",
        TextShape.Name,
        s => s.Watched
    );

    private static readonly ValueProperty<PumpSwitch, string> Link = new(
        "link",
        "The link or line whose flow it watches.",
        TextShape.Name,
        s => s.Watched
    );

    private static readonly ValueProperty<PumpSwitch, GaugePressure> JoinBelow = Pressure(
        "joinBelow",
        "Below this a stopped pump joins.",
        s => s.JoinSi
    );

    private static readonly ValueProperty<PumpSwitch, GaugePressure> LeaveAbove = Pressure(
        "leaveAbove",
        "Above this a running pump leaves.",
        s => s.LeaveSi
    );

    private static readonly ValueProperty<PumpSwitch, GaugePressure> JoinAbove = Pressure(
        "joinAbove",
        "Above this a stopped pump joins.",
        s => s.JoinSi
    );

    private static readonly ValueProperty<PumpSwitch, GaugePressure> LeaveBelow = Pressure(
        "leaveBelow",
        "Below this a running pump leaves.",
        s => s.LeaveSi
    );

    private static readonly ValueProperty<PumpSwitch, VolumeFlow> JoinAboveFlow = new(
        "joinAbove",
        "Above this a stopped pump joins.",
        QuantityShapes.VolumeFlow,
        s => SiUnits.VolumeFlow(s.JoinSi)
    );

    private static readonly ValueProperty<PumpSwitch, VolumeFlow> LeaveBelowFlow = new(
        "leaveBelow",
        "Below this a running pump leaves.",
        QuantityShapes.VolumeFlow,
        s => SiUnits.VolumeFlow(s.LeaveSi)
    );

    private static readonly ValueProperty<PumpSwitch, bool> Was = new(
        "was",
        "What it did before: that decides where running and stopped would both last.",
        new ChoiceShape<bool>(("running", true), ("stopped", false)),
        s => s.WasRunning
    );

    internal static UnionShape<PumpSwitch> Shape { get; } =
        new(
            Case(
                "pressure below",
                PumpSwitchKind.PressureBelow,
                [Node, JoinBelow, LeaveAbove],
                f => PumpSwitch.PressureBelow(f.Of(Node), f.Of(JoinBelow), f.Of(LeaveAbove), f.Of(Was))
            ),
            Case(
                "pressure above",
                PumpSwitchKind.PressureAbove,
                [Node, JoinAbove, LeaveBelow],
                f => PumpSwitch.PressureAbove(f.Of(Node), f.Of(JoinAbove), f.Of(LeaveBelow), f.Of(Was))
            ),
            Case(
                "manifold above",
                PumpSwitchKind.ManifoldAbove,
                [JoinAbove, LeaveBelow],
                f => PumpSwitch.ManifoldAbove(f.Of(JoinAbove), f.Of(LeaveBelow), f.Of(Was))
            ),
            Case(
                "flow above",
                PumpSwitchKind.FlowAbove,
                [Link, JoinAboveFlow, LeaveBelowFlow],
                f => PumpSwitch.FlowAbove(f.Of(Link), f.Of(JoinAboveFlow), f.Of(LeaveBelowFlow), f.Of(Was))
            ),
            Case(
                "total draw above",
                PumpSwitchKind.TotalDrawAbove,
                [JoinAboveFlow, LeaveBelowFlow],
                f => PumpSwitch.TotalDrawAbove(f.Of(JoinAboveFlow), f.Of(LeaveBelowFlow), f.Of(Was))
            )
        );

    private static ValueProperty<PumpSwitch, GaugePressure> Pressure(
        string name,
        string description,
        Func<PumpSwitch, double> get
    ) => new(name, description, QuantityShapes.GaugePressure, s => new GaugePressure(get(s)));

    private static UnionCase<PumpSwitch> Case(
        string word,
        PumpSwitchKind kind,
        ImmutableArray<Property<PumpSwitch>> properties,
        Func<Fields<PumpSwitch>, PumpSwitch> make
    ) =>
        UnionCase<PumpSwitch>.Of(
            new ObjectShape<PumpSwitch>(
                $"switch-by-{word.Replace(' ', '-')}",
                "What lets a pump join and leave.",
                [new WordProperty<PumpSwitch>("kind", "What it waits for.", word), .. properties, Was],
                make
            ),
            s => s.Kind == kind
        );
}
