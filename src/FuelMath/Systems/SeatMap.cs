namespace FuelMath;

/// <summary>Where a system's injectors and pumps sit, found once.</summary>
internal sealed class SeatMap
{
    internal SeatMap(FuelSystem system)
    {
        Places = [.. system.Plan.Nodes];
        Seats = [.. system.Stages.SelectMany(s => s.Seats)];
        Nodes = [.. Seats.Select(seat => NodeIndex(system.Plan, seat.Node))];
        Stages = [.. system.Stages.SelectMany((stage, s) => Enumerable.Repeat(s, stage.Seats.Length))];
        First = [.. system.Stages.Select((_, s) => Array.IndexOf(Stages, s))];
        Injectors = [.. system.Stages.Select(stage => stage.Seats.Select(seat => seat.Injector).ToArray())];
        PulsesPerChamber =
        [
            .. system.Stages.Select(s => s.PulsesPerCycle * (s.Seats.Length / (double)system.Engine.Chambers)),
        ];
        CoilConductances = [.. system.Stages.Select(stage => stage.Seats.Sum(s => 1 / s.Injector.Coil.InSi()))];
        Transitions = system.Staging is { } staging ? [staging.TransitionDutyCycle.InSi()] : [];
        Parts = [.. system.Plan.Lines.Select(l => l.Part), .. Seats.Select(s => new SeatDraw(s))];
        Lines = system.Plan.Lines.Length;
        Tanks =
        [
            .. system.Plan.Lines.Select(l =>
                l.Part is IRegulator { Reference: RegulatorReference.Tank } ? system.Plan.TankOf(l).TankPressure.Si : 0
            ),
        ];
        Feeds = [.. system.Plan.Lines.Select(l => system.Power.FeedOf(l.Name))];
        Pumps = [.. system.Plan.Lines.Select(l => l.Part).OfType<Pump>()];
    }

    /// <summary>The nodes of the plan.</summary>
    internal PlanNode[] Places { get; }

    /// <summary>All seats, stage by stage.</summary>
    internal InjectorSeat[] Seats { get; }

    /// <summary>The node of each seat, by its place in the plan.</summary>
    internal int[] Nodes { get; }

    /// <summary>The stage of each seat.</summary>
    internal int[] Stages { get; }

    /// <summary>The first seat of each stage.</summary>
    internal int[] First { get; }

    /// <summary>The injectors of each stage.</summary>
    internal Injector[][] Injectors { get; }

    /// <summary>Pulses that a chamber gets from each stage in one cycle.</summary>
    internal double[] PulsesPerChamber { get; }

    /// <summary>Conductance of all coils of each stage, S.</summary>
    internal double[] CoilConductances { get; }

    /// <summary>The duty cycle at which each stage after the first joins.</summary>
    internal double[] Transitions { get; }

    /// <summary>The parts of the lines, then a draw for each seat.</summary>
    internal FlowPart[] Parts { get; }

    /// <summary>How many lines there are.</summary>
    internal int Lines { get; }

    /// <summary>The pressure in the tank that a line's regulator sits in, Pa gauge.</summary>
    internal double[] Tanks { get; }

    /// <summary>What feeds the pump of each line: 0 for what all share.</summary>
    internal int[] Feeds { get; }

    /// <summary>The pumps, in the order of the lines.</summary>
    internal Pump[] Pumps { get; }

    /// <summary>The place of a node in a plan.</summary>
    internal static int NodeIndex(FuelPlan plan, string node)
    {
        for (int i = 0; i < plan.Nodes.Length; i++)
        {
            if (plan.Nodes[i].Name == node)
            {
                return i;
            }
        }

        throw new ArgumentException($"There is no node '{node}'.", nameof(node));
    }
}
