using FuelMath.Formulas;

namespace FuelMath;

/// <content>What happens to a point that is refused.</content>
internal sealed partial class SystemSolver<T>
{
    /// <summary>Does something for one point; a refusal ends that point.</summary>
    /// <returns>Whether it is still sought.</returns>
    private bool Try(int n, Action<SystemSolver<T>, int> step)
    {
        try
        {
            step(this, n);
            return !settled[n];
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            if (states[n].Rounds > 0 && work is not NetworkWork<Real>)
            {
                return Alone(n);
            }

            points.Refused(first + n, refusal);
            return false;
        }
    }

    /// <summary>A path that was not solved is refused, by one number with its figures, unless it has a state with drains.</summary>
    private bool Unsolved(int n) =>
        work is NetworkWork<Real> ? Try(n, static (s, n) => s.EndDrainedRound(n)) : Alone(n);

    private void EndDrainedRound(int n)
    {
        NetworkVerdict.Judge((NetworkWork<Real>)(object)work, false);
        path.Read<T>(work, states, live);
        EndRound(n);
    }

    /// <summary>A point by itself: it says in the words of a single solve what it is.</summary>
    private bool Alone(int n)
    {
        using var alone = new SystemSolver<Real>(path, points);
        alone.Solve(first + n, 1);
        return false;
    }
}
