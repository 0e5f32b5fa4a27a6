namespace FuelMath;

/// <summary>A settled solve as findings look at it, and the list that they add to.</summary>
internal sealed class SolvedSystem(
    FuelSystem system,
    OperatingPoint point,
    SystemParts parts,
    FuelPathSolution path,
    SolverState inputs
)
{
    private readonly List<Finding> found = [];

    internal FuelSystem System { get; } = system;

    internal OperatingPoint Point { get; } = point;

    internal SystemParts Parts { get; } = parts;

    /// <summary>Gauge pressures in the order of the plan's nodes, Pa.</summary>
    internal double[] Pressures { get; } = path.NodePressures;

    /// <summary>Volume flows in the order of the plan's lines, m³/s.</summary>
    internal double[] Flows { get; } = path.LineFlows;

    internal IEnumerable<Finding> Found => found;

    /// <summary>The part of a line in this state.</summary>
    internal PartState StateOf(int line)
    {
        FuelPlan plan = System.Plan;
        bool ahead = plan.IsAheadOfAPump(line);
        return new()
        {
            Line = plan.Lines[line].Name,
            Condition = path.ConditionOf(line),
            Flow = Flows[line],
            Inlet = Pressures[SeatMap.NodeIndex(plan, plan.Lines[line].From)],
            Outlet = Pressures[SeatMap.NodeIndex(plan, plan.Lines[line].To)],
            Density = inputs.Density,
            Viscosity = inputs.Viscosity,
            PumpVolts = inputs.FeedVolts[inputs.Map.Feeds[line]],
            IsSuction = ahead,
            GreatestVelocity = (ahead ? System.Limits.SuctionVelocity : System.Limits.FeedVelocity).InSi(),
            VelocitySource = System.Limits.SourceOf(ahead ? LimitKind.SuctionVelocity : LimitKind.FeedVelocity),
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
            FindingCode.DutyCycleHigh => System.Limits.SourceOf(LimitKind.DutyCycle),
            FindingCode.PumpReserveLow => System.Limits.SourceOf(LimitKind.PumpReserve),
            FindingCode.PressureNotAsTold => System.Limits.SourceOf(LimitKind.PressureDeviation),
            FindingCode.InjectorVoltageLow or FindingCode.PumpVoltageLow => System.Limits.SourceOf(
                LimitKind.VoltageDrop
            ),
            FindingCode.VaporMarginLow => System.Limits.SourceOf(LimitKind.VaporMargin),
            _ => System.Limits.Source,
        };
}
