using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Finds steady states, as many at once as the scalar holds numbers; one state is the same in <see cref="Real"/>. The fuel
/// path is solved for given pump curves and injector draws; voltages, pulse widths and dead times follow from it; repeated
/// until nothing moves.
/// </summary>
/// <remarks>
/// <para>
/// A round is a guess: its path is solved only nearly while voltages and pressures still change much, where they leave the
/// data of pumps and injectors, the ends of the data are held, and a path that could not be is gone on from. Only the state
/// that the rounds settle on is judged.
/// </para>
/// <para>
/// The wiring is no part of the pressure network: a pump's current and an injector's dead time react weakly on the path,
/// so that the rounds contract.
/// </para>
/// <para>
/// A point that settles is handed out at once, so that neither its neighbors nor further rounds touch it. A point that
/// has no state leaves its number to a copy of a neighbor. One thread at a time.
/// </para>
/// </remarks>
internal sealed partial class SystemSolver<T> : IDisposable
    where T : struct, ILane<T>
{
    /// <summary>Rounds after which a state that still moves is refused.</summary>
    private const int MostRounds = 60;

    /// <summary>Largest relative change of a voltage or an injector differential pressure in the last round.</summary>
    private const double Settled = 1e-10;

    /// <summary>How nearly the path of a rough round is solved: see <see cref="NetworkWork{T}.Solve(bool, T)"/>.</summary>
    private const double NearlySolved = 1e-4;

    /// <summary>Change of a round below which an injector that no fuel can pass will not be passed by further rounds.</summary>
    private const double AllButSettled = 1e-6;

    private readonly SystemPath path;
    private readonly ISystemPoints points;
    private readonly NetworkWork<T> work;
    private readonly SolverState[] own = new SolverState[T.Count];
    private readonly SolverState[] states = new SolverState[T.Count];
    private readonly SettledSolve solve = new();
    private readonly bool[] live = new bool[T.Count];
    private readonly bool[] settled = new bool[T.Count];
    private NetworkWork<Real>? one;
    private int first;

    internal SystemSolver(SystemPath path, ISystemPoints points)
    {
        (this.path, this.points) = (path, points);
        work = path.Network.Rent<T>();
        one = work as NetworkWork<Real>;
        for (int n = 0; n < own.Length; n++)
        {
            own[n] = path.RentState();
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        if (one is not null && one != (object)work)
        {
            one.Dispose();
        }

        work.Dispose();
        foreach (SolverState state in own)
        {
            path.Return(state);
        }
    }

    /// <summary>Solves some points, at most as many as the scalar holds numbers.</summary>
    internal void Solve(int firstPoint, int count)
    {
        first = firstPoint;
        Array.Clear(settled);
        own.CopyTo(states, 0);
        for (int n = 0; n < T.Count; n++)
        {
            live[n] = n < count && Try(n, static (s, n) => s.points.Begin(s.first + n, s.states[n]));
        }

        if (FillGaps(warm: false))
        {
            path.SetPoints<T>(work, states);
        }

        for (bool warm = false; FillGaps(warm); warm = true)
        {
            for (int n = 0; n < T.Count; n++)
            {
                live[n] = live[n] && Try(n, static (s, n) => SetRound(s.states[n]));
            }

            if (!FillGaps(warm))
            {
                return;
            }

            path.SetRound<T>(work, states);
            Mask<T> solved = work.Solve(warm, Near());
            if (warm && work is NetworkWork<Real> && !T.All(solved))
            {
                // What the last round left may have been no state at all: begin the path afresh.
                solved = work.Solve(warm: false);
            }

            EndRound(solved);
        }
    }

    /// <summary>How nearly each path of a round must be solved; zero for a solution.</summary>
    private T Near()
    {
        Span<double> near = stackalloc double[T.Count];
        for (int n = 0; n < T.Count; n++)
        {
            near[n] = states[n].IsRough ? NearlySolved : 0;
        }

        return T.Load(near);
    }

    /// <summary>What the parts and the injectors do in a round, by the voltages and pressures of the last one.</summary>
    private static void SetRound(SolverState state)
    {
        state.StartRound(isLast: state.Rounds == MostRounds - 1);
        for (int i = 0; i < state.Readings.Length; i++)
        {
            state.Readings[i]?.Set(state.InputsOf(i));
        }

        CommandedDraws.Set(state);
    }

    /// <summary>Goes on from the paths that were found: what follows from them, and whether that is the end.</summary>
    private void EndRound(Mask<T> solved)
    {
        Span<double> found = stackalloc double[T.Count];
        Span<double> iterations = stackalloc double[T.Count];
        T.Store(T.Select(solved, T.Of(1), T.Of(0)), found);
        T.Store(work.Iterations, iterations);
        path.Read<T>(work, states, live);
        for (int n = 0; n < T.Count; n++)
        {
            if (live[n])
            {
                states[n].Iterations += (int)iterations[n];
                live[n] = found[n] > 0 ? Try(n, static (s, n) => s.EndRound(n)) : Unsolved(n);
            }
        }
    }

    /// <summary>Ends a round of one point; when nothing moves any more, or after enough rounds, judges it and hands it out.</summary>
    private void EndRound(int n)
    {
        SolverState state = states[n];
        FollowWiring(state);
        FollowPressures(state);
        bool goesOn = state.IsRough || !(state.Change <= (state.Blocked < 0 ? Settled : AllButSettled));
        if (goesOn && state.Rounds < MostRounds)
        {
            return;
        }

        AnswerChecks.BeforeThePath(state);
        solve.Take(state, JudgedPathOf(n));
        AnswerChecks.AfterThePath(state, Settled);
        points.Solved(first + n, solve);
        settled[n] = true;
        live[n] = false;
    }

    /// <summary>The voltages that follow from the currents of pumps and coils.</summary>
    private void FollowWiring(SolverState state)
    {
        Array.Clear(state.FeedAmperes);
        for (int p = 0; p < state.Pumps.Length; p++)
        {
            state.PumpAmperes[p] = state.Pumps[p].CurrentAt(state.PumpRises[p]);
            if (state.Rounds > MostRounds / 2)
            {
                state.Pumps[p].NoteRise(state.PumpRises[p]);
            }

            state.FeedAmperes[path.Feeds[path.PumpLines[p]]] += state.PumpAmperes[p];
        }

        // The supply carries the mean injector current: each coil is a resistor that is connected for its duty cycle. The
        // wires of an injector that opens carry its own coil's current in full, and that of each other that is open then.
        double conductance = 0;
        double opening = 0;
        for (int s = 0; s < state.Periods.Length; s++)
        {
            conductance += state.MeanConductance(s);
            opening += state.CoilsWhileOpening(s) / path.Injectors[s].Length * path.CoilConductances[s];
        }

        PowerSupply power = path.System.Power;
        Span<double> pumpVolts = stackalloc double[state.FeedAmperes.Length];
        (double injectorVolts, double sourceVolts) = power.VoltsAt(
            state.Point.Supply,
            state.FeedAmperes,
            conductance,
            pumpVolts
        );
        if (opening != conductance)
        {
            injectorVolts = power.VoltsAt(state.Point.Supply, state.FeedAmperes, opening, []).Injectors;
        }

        double supply = state.Point.Supply.InSi();
        state.Note(sourceVolts, state.SourceVolts, supply, "source voltage");
        state.SourceVolts = sourceVolts;
        for (int feed = 0; feed < pumpVolts.Length; feed++)
        {
            state.Note(pumpVolts[feed], state.FeedVolts[feed], supply, "pump voltage");
            state.MovePumpVolts(feed, pumpVolts[feed]);
        }

        state.Note(injectorVolts, state.InjectorVolts, supply, "injector voltage");
        state.InjectorVolts = injectorVolts;
        state.InjectorConductance = conductance;
    }

    /// <summary>The pressures across the injectors that follow from those of the path.</summary>
    private void FollowPressures(SolverState state)
    {
        state.Blocked = -1;
        for (int seat = 0; seat < state.SeatPressures.Length; seat++)
        {
            double pressure = state.SeatPressures[seat] - state.DischargePressures[seat];
            state.TrueDifferences[seat] = pressure;
            if (pressure > 0)
            {
                state.Note(pressure, state.DifferentialPressures[seat], pressure, path.Seats[seat].Node);
                state.DifferentialPressures[seat] = pressure;
            }
            else if (state.Commanded[seat] > 0 && state.Blocked < 0)
            {
                // The pressure that the pulses take stays as it was: another pump voltage may still let fuel pass.
                state.Blocked = seat;
            }
        }
    }

    /// <summary>The path of a point by itself, with its evidence.</summary>
    /// <exception cref="NoSolutionException">It is not a state that the path can be in.</exception>
    /// <exception cref="OutsideTableException">A pump runs outside its data.</exception>
    private NetworkWork<Real> JudgedPathOf(int n)
    {
        one ??= path.Network.Rent<Real>();
        if (one != (object)work)
        {
            path.SetPoints<Real>(one, [states[n]]);
            path.SetRound<Real>(one, [states[n]]);
            one.Take(work, n);
        }

        NetworkVerdict.Judge(one, true);
        return one;
    }

    /// <summary>Puts a copy of a point that is still sought in the place of each that has no state.</summary>
    /// <returns>Whether any point is still sought.</returns>
    private bool FillGaps(bool warm)
    {
        int model = Array.IndexOf(live, true);
        for (int n = 0; n < T.Count && model >= 0; n++)
        {
            if (!live[n] && !settled[n])
            {
                states[n] = states[model];
                if (warm)
                {
                    work.Repeat(model, n);
                }
            }
        }

        return model >= 0;
    }
}
