using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Finds the steady state: the fuel path is solved for given pump curves and injector draws; voltages, pulse widths and
/// dead times follow from it; repeated until nothing moves.
/// </summary>
/// <remarks>
/// <para>
/// A round is a guess: where its voltages and pressures leave the data of pumps and injectors, the ends of the data are held,
/// and a path that could not be is gone on from. Only the state that the rounds settle on is judged.
/// </para>
/// <para>
/// The wiring is no part of the pressure network: a pump's current and an injector's dead time react weakly on the path,
/// so that the rounds contract. Instances are immutable; each solve works on its own <see cref="SolverState"/>.
/// </para>
/// </remarks>
internal sealed class SystemSolver
{
    /// <summary>Rounds after which a state that still moves is refused.</summary>
    private const int MostRounds = 60;

    /// <summary>Largest relative change of a voltage or an injector differential pressure in the last round.</summary>
    internal const double Settled = 1e-10;

    /// <summary>Change of a round below which an injector that no fuel can pass will not be passed by further rounds.</summary>
    private const double AllButSettled = 1e-6;

    private readonly FuelSystem system;
    private readonly SeatMap map;
    private readonly bool measuresRail;

    internal SystemSolver(FuelSystem system)
    {
        this.system = system;
        map = new SeatMap(system);
        measuresRail = system.Stages.Any(s => s.Belief.RailReference == RailReference.Measured);
        Path = new FuelPath(system, map);
        Estimates =
        [
            "Injectors draw their time-mean flow. Pulsing raises losses by the factors given for each stage in a line that carries that stage alone and neither damps nor resonates.",
            "Dead times belong to the mean voltage while an injector opens: its own coil's full current, and those of others whose pulses overlap, by the firing groups of a stage, evenly staggered where those are not known, and two stages at once. A coil's current needs time to rise, so that the real voltage lies above.",
            $"Limits of the findings: {system.Limits.Source}.",
            .. system.Limits.Own.Select(o =>
                $"Limit {o.Kind} of the owner's, {Guard.Show(o.Value, o.Value.Unit)} in place of {Guard.Show(system.Limits.Standing!.ValueOf(o.Kind), o.Value.Unit)}: {o.Reason}."
            ),
        ];
    }

    internal FuelPath Path { get; }

    internal FuelSystem System => system;

    /// <summary>What every state rests on as an estimate or a rule of thumb, one sentence each.</summary>
    internal ImmutableArray<string> Estimates { get; }

    internal SystemState Solve(OperatingPoint point)
    {
        var alone = new OnePoint(system, point);
        using var lanes = new SystemLanes<Real>(this, alone);
        lanes.Run(0, 1);
        return alone.State!;
    }

    /// <summary>What a point begins with.</summary>
    /// <exception cref="ArgumentException">The command does not fit the system.</exception>
    /// <exception cref="OutsideTableException">The fuel or the engine is not described at these conditions.</exception>
    /// <exception cref="UnknownPropertyException">The fuel's viscosity is not known.</exception>
    internal SolverState Begin(OperatingPoint point) => Begin(point, null);

    /// <summary>The same, with inputs that differ from the description.</summary>
    internal SolverState Begin(OperatingPoint point, InputShifts? shifts)
    {
        CheckCommand(point);
        return new SolverState(system, map, point, shifts);
    }

    /// <summary>Refuses a command that no point of the system can have.</summary>
    /// <exception cref="ArgumentException">It gives pulse widths for another number of stages.</exception>
    internal void CheckCommand(OperatingPoint point, [CallerArgumentExpression(nameof(point))] string paramName = "")
    {
        if (
            point.Command.Kind == FuelCommandKind.PulseWidths
            && point.Command.PulseWidths.Length != system.Stages.Length
        )
        {
            throw new ArgumentException(
                $"The command must give a pulse width for each of {system.Stages.Length} stages; it gives {point.Command.PulseWidths.Length}.",
                paramName
            );
        }
    }

    /// <summary>First half of a round: what the parts and the injectors do, by the voltages and pressures of the last round.</summary>
    internal void Ask(SolverState state)
    {
        state.StartRound();
        for (int i = 0; i < state.Readings.Length; i++)
        {
            state.Readings[i]?.Set(state.InputsOf(i));
        }

        SetWidths(state, state.Rounds);
        SetDraws(state);
    }

    /// <summary>Second half of a round, after the path was solved: voltages and pressures that follow from the flows.</summary>
    /// <returns>Whether there is something to judge: nothing moves any more, or there were enough rounds.</returns>
    internal bool Answer(SolverState state)
    {
        Update(state);
        return state.Change <= (state.Blocked < 0 ? Settled : AllButSettled) || state.Rounds >= MostRounds;
    }

    /// <summary>The pulse width of each stage by the command.</summary>
    private void SetWidths(SolverState state, int round)
    {
        FuelCommand command = state.Point.Command;
        switch (command.Kind)
        {
            case FuelCommandKind.HoldLambda:
                for (int s = 0; s < state.Models.Length; s++)
                {
                    state.Models[s] = state.Fitted(s);
                }

                StageSplit.Widths(
                    state.Models,
                    map.Transitions,
                    state.AirMass / (system.Fuel.StoichiometricRatio.Si * command.Lambda!.Value.Si),
                    state.Widths
                );
                break;
            case FuelCommandKind.OpenLoop when round > 1 && !measuresRail:
                // Only a measured rail makes a belief move with the state.
                break;
            case FuelCommandKind.OpenLoop:
                for (int s = 0; s < state.Models.Length; s++)
                {
                    state.Models[s] = state.Believed(s);
                }

                // The primaries' belief about the fuel is what the air mass is divided by.
                StageSplit.Widths(
                    state.Models,
                    map.Transitions,
                    state.BelievedAirMass
                        / (system.Stages[0].Belief.Fuel.StoichiometricRatio.Si * command.Lambda!.Value.Si),
                    state.Widths
                );
                break;
            case FuelCommandKind.PulseWidths:
                for (int s = 0; s < state.Widths.Length; s++)
                {
                    state.Widths[s] = command.PulseWidths[s].InSi();
                }

                break;
            case FuelCommandKind.AllOpen:
                for (int s = 0; s < state.Widths.Length; s++)
                {
                    state.Widths[s] = state.Periods[s];
                }

                break;
            default:
                Array.Clear(state.Widths);
                break;
        }
    }

    /// <summary>What each injector would draw: held masses as a flow, given widths as a share of its static flow.</summary>
    private void SetDraws(SolverState state)
    {
        bool holds = state.Point.Command.Kind == FuelCommandKind.HoldLambda;
        for (int s = 0; s < system.Stages.Length; s++)
        {
            StageModel model = holds ? state.Models[s] : state.Fitted(s);
            double width = state.Widths[s];
            for (int i = 0; i < system.Stages[s].Seats.Length; i++)
            {
                int seat = map.First[s] + i;
                double pressure = state.DifferentialPressures[seat];
                double open = model.StaticMassFlow(i) / state.Density;
                double perRoot = open / Math.Sqrt(pressure);
                if (width == 0)
                {
                    (state.Coefficients[seat], state.Commanded[seat]) = (perRoot, 0);
                    continue;
                }

                if (state.Point.Command.Kind == FuelCommandKind.AllOpen)
                {
                    (state.Coefficients[seat], state.Commanded[seat]) = (perRoot, double.PositiveInfinity);
                    continue;
                }

                InjectorPulse pulse = model.Pulse(i, width);
                double mean = pulse.Mass.InSi() / state.Periods[s] / state.Density;
                if (pulse.IsHeldOpen)
                {
                    (state.Coefficients[seat], state.Commanded[seat]) = (perRoot, double.PositiveInfinity);
                }
                else if (mean == 0)
                {
                    (state.Coefficients[seat], state.Commanded[seat]) = (perRoot, 0);
                }
                else if (holds)
                {
                    (state.Coefficients[seat], state.Commanded[seat]) = (perRoot, mean);
                }
                else
                {
                    (state.Coefficients[seat], state.Commanded[seat]) = (
                        mean / Math.Sqrt(pressure),
                        double.PositiveInfinity
                    );
                }
            }
        }
    }

    /// <summary>Pressures and voltages that follow from the flows.</summary>
    private void Update(SolverState state)
    {
        Array.Clear(state.FeedAmperes);
        for (int p = 0; p < state.Pumps.Length; p++)
        {
            state.PumpAmperes[p] = state.Pumps[p].CurrentAt(state.PumpRises[p]);
            state.FeedAmperes[map.Feeds[Path.PumpLines[p]]] += state.PumpAmperes[p];
        }

        // The supply carries the mean injector current: each coil is a resistor that is connected for its duty cycle. The
        // wires of an injector that opens carry its own coil's current in full, and that of each other that is open then.
        double conductance = 0;
        double opening = 0;
        for (int s = 0; s < state.Widths.Length; s++)
        {
            conductance += state.DutyCycle(s) * map.CoilConductances[s];
            opening += state.CoilsWhileOpening(s) / system.Stages[s].Seats.Length * map.CoilConductances[s];
        }

        Span<double> pumpVolts = stackalloc double[state.FeedAmperes.Length];
        double injectorVolts = system.Power.VoltsAt(state.Point.Supply, state.FeedAmperes, conductance, pumpVolts);
        if (opening != conductance)
        {
            injectorVolts = system.Power.VoltsAt(state.Point.Supply, state.FeedAmperes, opening, []);
        }

        double supply = state.Point.Supply.InSi();
        for (int feed = 0; feed < pumpVolts.Length; feed++)
        {
            state.Note(pumpVolts[feed], state.FeedVolts[feed], supply, "pump voltage");
            state.MovePumpVolts(feed, pumpVolts[feed]);
        }

        state.Note(injectorVolts, state.InjectorVolts, supply, "injector voltage");
        state.InjectorVolts = injectorVolts;
        state.InjectorConductance = conductance;

        state.Blocked = -1;
        for (int seat = 0; seat < state.SeatPressures.Length; seat++)
        {
            UpdateSeat(state, seat);
        }
    }

    private void UpdateSeat(SolverState state, int seat)
    {
        double node = state.SeatPressures[seat];
        double pressure = node - state.DischargePressures[seat];
        state.TrueDifferences[seat] = pressure;
        string name = map.Seats[seat].Node;
        if (pressure > 0)
        {
            state.Note(pressure, state.DifferentialPressures[seat], pressure, name);
            state.DifferentialPressures[seat] = pressure;
        }
        else if (state.Commanded[seat] > 0 && state.Blocked < 0)
        {
            // The pressure that the pulses take stays as it was: another pump voltage may still let fuel pass.
            state.Blocked = seat;
        }
    }
}
