using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// The rounds of the solve, for as many points at once as the scalar holds numbers: each round solves the fuel paths of
/// all of them in one go. One point is the same in <see cref="Real"/>.
/// </summary>
/// <remarks>
/// A point that settles is handed out at once, so that neither its neighbors nor further rounds touch it. A point that
/// has no state leaves its number to a copy of a neighbor. One thread at a time.
/// </remarks>
internal sealed class SystemLanes<T> : IDisposable
    where T : struct, ILane<T>
{
    private readonly SystemSolver solver;
    private readonly ISystemPoints points;
    private readonly NetworkWork<T> work;
    private readonly SolverState[] states = new SolverState[T.Count];
    private readonly bool[] live = new bool[T.Count];
    private readonly bool[] settled = new bool[T.Count];
    private NetworkWork<Real>? one;
    private int first;

    internal SystemLanes(SystemSolver solver, ISystemPoints points)
    {
        (this.solver, this.points) = (solver, points);
        work = solver.Path.Rent<T>();
        one = work as NetworkWork<Real>;
    }

    private FuelPath Path => solver.Path;

    /// <inheritdoc />
    public void Dispose()
    {
        if (one is not null && one != (object)work)
        {
            one.Dispose();
        }

        work.Dispose();
    }

    /// <summary>Solves some points, at most as many as the scalar holds numbers.</summary>
    internal void Run(int firstPoint, int count)
    {
        first = firstPoint;
        Array.Clear(settled);
        Array.Clear(states);
        for (int n = 0; n < T.Count; n++)
        {
            live[n] = n < count && Try(n, static (s, n) => s.states[n] = s.points.Begin(s.first + n));
        }

        for (bool warm = false; FillGaps(warm); warm = true)
        {
            if (!warm)
            {
                Path.Prepare<T>(work, states);
            }

            Round(warm);
        }
    }

    private void Round(bool warm)
    {
        for (int n = 0; n < T.Count; n++)
        {
            live[n] = live[n] && Try(n, static (s, n) => s.solver.Ask(s.states[n]));
        }

        if (!FillGaps(warm))
        {
            return;
        }

        Path.Ask<T>(work, states);
        Mask<T> solved = work.Solve(warm);
        if (warm && work is NetworkWork<Real> && !T.All(solved))
        {
            // What the last round left may have been no state at all: begin the path afresh.
            solved = work.Solve(false);
        }

        Span<double> found = stackalloc double[T.Count];
        Span<double> iterations = stackalloc double[T.Count];
        T.Store(T.Select(solved, T.Of(1), T.Of(0)), found);
        T.Store(work.Iterations, iterations);
        Path.Answer<T>(work, states, live);
        for (int n = 0; n < T.Count; n++)
        {
            if (live[n])
            {
                states[n].Iterations += (int)iterations[n];
                live[n] = found[n] > 0 ? Try(n, static (s, n) => s.Answer(n)) : Unsolved(n);
            }
        }
    }

    /// <summary>A path that was not solved is refused, by one number with its figures.</summary>
    private bool Unsolved(int n) =>
        work is NetworkWork<Real> real ? Try(n, (_, _) => NetworkVerdict.State(real, false)) : Alone(n);

    /// <summary>A point by itself: it says in the words of a single solve what it is.</summary>
    private bool Alone(int n)
    {
        using var alone = new SystemLanes<Real>(solver, points);
        alone.Run(first + n, 1);
        return false;
    }

    /// <summary>Ends a round of one point, and judges it and hands it out when it has settled.</summary>
    private void Answer(int n)
    {
        SolverState state = states[n];
        if (!solver.Answer(state))
        {
            return;
        }

        AnswerChecks.BeforeThePath(state);

        one ??= Path.Rent<Real>();
        if (one != (object)work)
        {
            Path.Prepare<Real>(one, [state]);
            Path.Ask<Real>(one, [state]);
            one.Take(work, n);
        }

        FuelPathSolution solution = Path.Solution(one);
        AnswerChecks.AfterThePath(solver.System, state);
        points.Solved(first + n, state, solution);
        settled[n] = true;
        live[n] = false;
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

    /// <summary>Does something for one point; a refusal ends that point.</summary>
    /// <returns>Whether it is still sought.</returns>
    private bool Try(int n, Action<SystemLanes<T>, int> step)
    {
        try
        {
            step(this, n);
            return !settled[n];
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            if (states[n] is { Rounds: > 0 } && work is not NetworkWork<Real>)
            {
                return Alone(n);
            }

            points.Refused(first + n, refusal);
            return false;
        }
    }
}
