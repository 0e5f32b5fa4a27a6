namespace FuelMath;

/// <summary>A settled solve as findings look at it, and the list that they add to.</summary>
internal sealed class SolvedSystem(ReportedSolve solve, SystemParts parts)
{
    private readonly List<Finding> found = [];

    internal FuelSystem System => solve.System;

    internal OperatingPoint Point => solve.Point;

    internal SystemParts Parts { get; } = parts;

    /// <summary>Gauge pressures in the order of the network's nodes, Pa.</summary>
    internal double[] Pressures => solve.NodePressures;

    /// <summary>Volume flows in the order of the network's lines, m³/s.</summary>
    internal double[] Flows => solve.LineFlows;

    internal IEnumerable<Finding> Found => found;

    /// <summary>Whether a stage got the shortest pulse that its injectors repeat, as the one who computes the width knows them.</summary>
    internal bool IsAtLeastPulse(int stage) =>
        Point.Command.Kind switch
        {
            FuelCommand.CommandKind.HoldLambda => Parts.Injectors.Any(i =>
                i.Stage == System.Stages[stage].Name
                && i.Pulse.EffectiveWidth.InSi() <= i.Seat.Injector.LeastEffectiveWidthSi * (1 + Guard.EdgeTolerance)
            ),
            FuelCommand.CommandKind.OpenLoop => Parts.Stages[stage].PulseWidth.InSi()
                <= solve.State.Believed(stage, guessed: false).SmallestWidth * (1 + Guard.EdgeTolerance),
            _ => false,
        };

    /// <summary>The part of a line in this state.</summary>
    internal PartState StateOf(int line)
    {
        Network network = System.Network;
        bool ahead = System.Layout.IsAheadOfAPump(line);
        return new()
        {
            Line = network.Lines[line].Name,
            Condition = solve.ConditionOf(line),
            Flow = Flows[line],
            Inlet = Pressures[network.PlaceOf(network.Lines[line].From)],
            Outlet = Pressures[network.PlaceOf(network.Lines[line].To)],
            NothingDrawn = Array.TrueForAll(solve.InjectorFlows, f => f <= 0),
            Density = solve.State.Density,
            Viscosity = solve.State.Viscosity,
            PumpVolts = solve.State.FeedVolts[solve.State.Path.Feeds[line]],
            IsSuction = ahead,
            GreatestVelocity = (ahead ? System.Limits.SuctionVelocity : System.Limits.FeedVelocity).InSi(),
            VelocitySource = System.Limits.SourceOf(ahead ? Limits.Kind.SuctionVelocity : Limits.Kind.FeedVelocity),
        };
    }

    /// <summary>Adds a finding whose limit is one of the system's limits.</summary>
    internal void Add(
        FindingCode code,
        Severity severity,
        string part,
        string what,
        Shown value,
        Shown limit,
        string action
    ) => Add(code, severity, part, what, value, limit, action, SourceOf(code));

    /// <summary>Adds a finding whose limit comes from elsewhere.</summary>
    internal void Add(
        FindingCode code,
        Severity severity,
        string part,
        string what,
        Shown value,
        Shown limit,
        string action,
        DataSource source
    ) => Add(Finding.Of(code, severity, part, what, value, limit, source, action));

    internal void Add(Finding finding) => found.Add(finding);

    /// <summary>Where the limit of a finding comes from.</summary>
    private DataSource SourceOf(FindingCode code) =>
        code switch
        {
            FindingCode.DutyCycleHigh => System.Limits.SourceOf(Limits.Kind.DutyCycle),
            FindingCode.PumpReserveLow => System.Limits.SourceOf(Limits.Kind.PumpReserve),
            FindingCode.PressureNotAsTold => System.Limits.SourceOf(Limits.Kind.PressureDeviation),
            FindingCode.InjectorVoltageLow or FindingCode.PumpVoltageLow => System.Limits.SourceOf(
                Limits.Kind.VoltageDrop
            ),
            FindingCode.VaporMarginLow => System.Limits.SourceOf(Limits.Kind.VaporMargin),
            _ => System.Limits.Source,
        };
}
