using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What a system asks of its network beside what a network checks itself. Immutable.</summary>
internal sealed class SystemLayout
{
    private readonly Network network;
    private readonly bool[] ahead;

    /// <summary>Looks over the network of a system.</summary>
    /// <exception cref="ArgumentException">A system can't have it; the message says where.</exception>
    internal SystemLayout(Network network)
    {
        this.network = network;
        if (WhyNot() is { } why)
        {
            throw why;
        }

        ahead = Ahead(network.Nodes, network.Lines);
        LiftPumps = LiftPumpSearch.In(network.Nodes, network.Lines);
        if (LiftPumps.FirstOrDefault(t => t.Lifts.IsEmpty).Tank is { } lacking)
        {
            throw new RefusedArgumentException(
                RefusalCode.LiftPumpNeeded,
                $"Surge tank '{lacking.Name:node}' needs a lift pump: one that leads to it and does not draw from it.",
                nameof(network)
            );
        }
    }

    private SystemLayout(SystemLayout other, Network network)
    {
        this.network = network;
        (ahead, LiftPumps) = (other.ahead, other.LiftPumps);
    }

    /// <summary>The surge tanks, each with the lines of the pumps that fill it.</summary>
    internal ImmutableArray<(Network.Node Tank, ImmutableArray<string> Lifts)> LiftPumps { get; }

    /// <summary>The same for a network of the same lines, of which some pumps stand still.</summary>
    internal SystemLayout Of(Network running) => new(this, running);

    /// <summary>The tank that a regulator sits in: where it returns to or draws from, or the only one.</summary>
    internal Network.Node TankOf(Line line) =>
        network.Nodes.FirstOrDefault(n => n.IsFixed && IsAt(n, line)) ?? network.Nodes.Single(n => n.IsFixed);

    /// <summary>Whether a line holds a pump that feeds the rails: one that does not fill a surge tank.</summary>
    internal bool HasRailPump(Line line) => line.Part.IsPump && !LiftPumps.Any(t => t.Lifts.Contains(line.Name));

    /// <summary>The running pumps that feed the rails.</summary>
    internal SystemState.PumpResult[] RailPumpsIn(SystemState state) =>
        [.. state.Pumps.Where(p => !LiftPumps.Any(t => t.Lifts.Contains(p.Line)))];

    /// <summary>Whether a line leads to where a pump draws from.</summary>
    internal bool IsAheadOfAPump(int line) => ahead[line];

    /// <summary>What a solved path does to each surge tank.</summary>
    internal ImmutableArray<SurgeTankBalance> BalancesIn(NetworkState state) =>
        [.. LiftPumps.Select(t => SurgeTankBalance.FromStoppable(state, t.Tank.Name, t.Lifts))];

    private RefusedArgumentException? WhyNot()
    {
        if (network.Conditions is not null || !network.Acceleration.IsRest)
        {
            return Not(
                RefusalCode.NotNeeded,
                "The network of a system is given at rest and without conditions: operating points say them."
            );
        }

        if (network.Nodes.FirstOrDefault(n => n.DrawSi != 0) is { } drawn)
        {
            return Not(
                RefusalCode.DrawFixed,
                $"Node '{drawn.Name:node}' has a fixed draw; in a system injectors draw, and other parts as pressure lets them."
            );
        }

        if (!network.Nodes.Any(n => n is { IsFixed: true, UsableVolume: null }))
        {
            return Not(
                RefusalCode.FixedPressureNeeded,
                "A fuel path needs a tank, where the pressure is known; only surge tanks given."
            );
        }

        return network.Lines.Select(WhyNot).FirstOrDefault(why => why is not null);
    }

    private static RefusedArgumentException Not(RefusalCode code, RefusalText sentence, string paramName = "network") =>
        new(code, sentence, paramName);

    private RefusedArgumentException? WhyNot(Line line)
    {
        if (!line.Part.KindInSystem.IsEmpty)
        {
            return Not(
                RefusalCode.WrongKind,
                $"Line '{line.Name:part}' of a system must be of type {line.Part.KindInSystem:allowed}; it is of type {line.Part.GetType().Name:given}."
            );
        }

        if (
            line.Part is IRegulator { Reference: RegulatorReference.Tank } regulator
            && network.Nodes.Count(n => n.IsFixed) > 1
            && !network.Nodes.Any(n => n.IsFixed && IsAt(n, line))
        )
        {
            return Not(
                RefusalCode.TankUnclear,
                regulator.IsReducing
                    ? (RefusalText)
                        $"Regulator '{line.Name:part}' refers to tank pressure, and with several tanks it must stand at one of them."
                    : $"Regulator '{line.Name:part}' refers to tank pressure, and with several tanks it must return into one of them."
            );
        }

        return null;
    }

    private static bool[] Ahead(ImmutableArray<Network.Node> nodes, ImmutableArray<Line> lines)
    {
        // A return line that ends in the tank is not ahead of the pump, though the pump draws from there.
        var drawnFrom = lines
            .Where(l => l.Part.IsPump)
            .Select(l => l.From)
            .Except(nodes.Where(n => n.IsFixed).Select(n => n.Name))
            .ToHashSet(StringComparer.Ordinal);
        return [.. lines.Select(l => drawnFrom.Contains(l.To))];
    }

    private static bool IsAt(Network.Node node, Line line) =>
        node.Name == line.To || (line.Part is IRegulator { IsReducing: true } && node.Name == line.From);
}
