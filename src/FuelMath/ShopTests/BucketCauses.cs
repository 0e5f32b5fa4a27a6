namespace FuelMath.ShopTests;

/// <summary>
/// The single causes that would explain a bucket test: for each, the whole system is solved again with that one fault.
/// </summary>
internal sealed class BucketCauses(
    FuelSystem system,
    OperatingPoint point,
    SystemState sound,
    ShopComparison.AddedReadings added,
    double caught,
    double tolerance
)
{
    /// <summary>The least fraction of its flow assumed for a worn pump.</summary>
    private const double LeastShare = 0.01;

    /// <summary>The largest loss coefficient of a restriction at 8 mm: a loss of 100 bar at 100 L/h.</summary>
    private const double MostCoefficient = 1e5;

    /// <summary>The largest hole: a diameter of 3 mm loses more than any of these pumps delivers.</summary>
    private const double MostArea = 7e-6;

    /// <summary>The highest multiple of a regulator's set point.</summary>
    private const double MostSetPoint = 4;

    internal static double Returned(SystemState state) => state.Regulators.Sum(r => r.BypassedFlow.InSi());

    internal IEnumerable<ShopComparison.Cause> Explaining(Func<SystemState, double> departure)
    {
        foreach ((ShopFault fault, Func<double, SystemState, ShopComparison.Cause?> told) in Faults())
        {
            if (
                fault.Explaining(sound, (_, state) => departure(state)) is { } found
                && Math.Abs(Returned(found.State) - caught) <= Math.Max(tolerance * Returned(sound), 1e-6 * caught)
                && told(found.Amount, found.State) is { } cause
            )
            {
                yield return cause;
            }
        }
    }

    private IEnumerable<(ShopFault Fault, Func<double, SystemState, ShopComparison.Cause?> Told)> Faults()
    {
        double supply = point.Supply.InSi();
        FuelSystem s = system;
        yield return (
            new(0.9 * supply, a => (s, Altered.WithSupply(point, supply - a))),
            (_, state) => Voltage(state, "Too little voltage at the pump")
        );
        yield return (
            new(supply, a => (s, Altered.WithSupply(point, supply + a))),
            (_, state) => Voltage(state, "More voltage at the pump than stated")
        );
        yield return (
            new(1 - LeastShare, a => (Altered.WithPumpShare(s, 1 - a), point)),
            (a, state) =>
                Cause(
                    ShopComparison.CauseKind.PumpFlow,
                    "A worn pump, or one that draws air",
                    $"{Show.Percent(1 - a)} of its flow",
                    a,
                    "Voltage, current and rail pressure are right, and the flow is not.",
                    state
                )
        );
        yield return (new(MostArea, a => (Altered.WithLeak(s, a), point)), (_, state) => Lost(state));
        yield return (
            new(Math.Sqrt(MostCoefficient), a => (Altered.WithRestrictionAfter(s, s.Layout.HasRailPump, a * a), point)),
            (_, state) => Feed(state)
        );
        yield return (
            new(MostSetPoint - 1, a => (Altered.WithSetPoint(s, 1 + a), point)),
            (_, state) => SetPoint(state, "A regulator that is set too high", "above", "high")
        );
        double least = Altered.LeastSetPoint(s);
        if (least < 1)
        {
            yield return (
                new(1 - least, a => (Altered.WithSetPoint(s, 1 - a), point)),
                (_, state) => SetPoint(state, "A regulator that is set too low or does not close", "below", "low")
            );
        }

        yield return (
            new(
                Math.Sqrt(MostCoefficient),
                a => (Altered.WithRestrictionAfter(s, l => l.Part is IRegulator { IsReducing: false }, a * a), point)
            ),
            (_, state) => Return(state)
        );
    }

    private ShopComparison.Cause Voltage(SystemState state, string what)
    {
        double expected = ShopComparison.AddedReadings.PumpVolts(sound);
        double volts = ShopComparison.AddedReadings.PumpVolts(state);
        return Cause(
            ShopComparison.CauseKind.PumpVoltage,
            what,
            $"{Show.Volts(volts)} instead of {Show.Volts(expected)}",
            Math.Abs(volts - expected) / expected,
            "Measure at the pump's own terminals while the fuel runs.",
            state
        );
    }

    private ShopComparison.Cause Lost(SystemState state)
    {
        double lost = state.FlowThrough(Altered.LeakName).InSi();
        double pumped = lost + Returned(state);
        return Cause(
            ShopComparison.CauseKind.LostFuel,
            "Fuel that leaves before the bucket: a check valve, a relief valve, an open joint in the tank",
            $"{Show.LitersPerHour(lost)} of {Show.LitersPerHour(pumped)}",
            lost / pumped,
            "Look for fuel outside first; pressure falls at once when the pump stops.",
            state
        );
    }

    private ShopComparison.Cause Feed(SystemState state)
    {
        string line = system.Network.Lines.First(system.Layout.HasRailPump).Name;
        return Cause(
            ShopComparison.CauseKind.FeedRestriction,
            "A restriction between tank and rail: strainer, filter, a pinched hose",
            $"{Show.Bar(Taken(state, line))} more loss than expected",
            RiseChange(state),
            "Rail pressure is right while the pump's outlet is higher, or its inlet lower.",
            state
        );
    }

    /// <summary>Null where a way to the regulator is shut, so that nothing says what it holds.</summary>
    private ShopComparison.Cause? SetPoint(SystemState state, string what, string side, string way)
    {
        if (state.Regulators[0].Inlet is not { } held || sound.Regulators[0].Inlet is not { } expected)
        {
            return null;
        }

        double change = held.Si - expected.Si;
        return Cause(
            ShopComparison.CauseKind.SetPoint,
            what,
            $"{Show.Bar(Math.Abs(change))} {side} what was expected",
            RiseChange(state),
            $"Rail pressure is {way} by as much.",
            state
        );
    }

    private ShopComparison.Cause Return(SystemState state)
    {
        string line = system.Network.Lines.First(l => l.Part is IRegulator { IsReducing: false }).Name;
        return Cause(
            ShopComparison.CauseKind.ReturnRestriction,
            "A return that is choked",
            $"{Show.Bar(Taken(state, line))} more loss than expected",
            RiseChange(state),
            "Rail pressure is high; with the return open to the air right after the regulator it falls.",
            state
        );
    }

    private double RiseChange(SystemState state) => Math.Abs((RiseIn(state) / RiseIn(sound)) - 1);

    private double RiseIn(SystemState state) => system.Layout.RailPumpsIn(state)[0].PressureRise.InSi();

    private double Taken(SystemState state, string line) =>
        state.PressureAt(line + Altered.Before).Si
        - state.PressureAt(system.Network.Lines.First(l => l.Name == line).To).Si;

    private ShopComparison.Cause Cause(
        ShopComparison.CauseKind kind,
        string what,
        string needed,
        double departure,
        string howToTell,
        SystemState state
    ) => new(kind, what, needed, departure, howToTell, state, added.Misfit(state));
}
