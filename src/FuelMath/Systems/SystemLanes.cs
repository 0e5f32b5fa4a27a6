using FuelMath.Networks;
using FuelMath.Scalars;

namespace FuelMath.Systems;

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
        Span<double> sound = stackalloc double[T.Count];
        Span<double> iterations = stackalloc double[T.Count];
        T.Store(T.Select(solved & work.Sound(), T.Of(1), T.Of(0)), sound);
        T.Store(work.Iterations, iterations);
        Path.Answer<T>(work, states, live);
        bool all = T.All(solved);
        for (int n = 0; n < T.Count; n++)
        {
            if (live[n])
            {
                states[n].Iterations += (int)iterations[n];
                live[n] = (sound[n] > 0 || Examine(n, all)) && Try(n, static (s, n) => s.Answer(n));
            }
        }
    }

    /// <summary>A path that was not solved is looked at as one number, which says why, with its figures.</summary>
    /// <returns>Whether it was solved after all.</returns>
    private bool Examine(int n, bool solved)
    {
        if (work is NetworkWork<Real> real)
        {
            return Try(n, (_, _) => NetworkVerdict.State(real, solved));
        }

        using var alone = new SystemLanes<Real>(solver, points);
        alone.Run(first + n, 1);
        return false;
    }

    /// <summary>Ends a round of one point, and hands it out when it has settled.</summary>
    private void Answer(int n)
    {
        SolverState state = states[n];
        if (!solver.Answer(state))
        {
            return;
        }

        one ??= Path.Rent<Real>();
        if (one != (object)work)
        {
            Path.Prepare<Real>(one, [state]);
            Path.Ask<Real>(one, [state]);
            one.Take(work, n);
        }

        points.Solved(first + n, state, Path.Solution(one));
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
        catch (Exception refusal) when (refusal is NoSolutionException or ArgumentException)
        {
            points.Refused(first + n, refusal);
            return false;
        }
    }
}
