namespace FuelMath;

/// <summary>The points that <see cref="SystemSolver{T}"/> works on, and where it puts the results.</summary>
internal interface ISystemPoints
{
    /// <summary>Begins a point in a state.</summary>
    void Begin(int point, SolverState state);

    /// <summary>A point has converged. What is handed over serves the next point afterwards: read it, or keep it.</summary>
    void Solved(int point, SettledSolve solve);

    /// <summary>A point has no state.</summary>
    void Refused(int point, Exception why);
}
