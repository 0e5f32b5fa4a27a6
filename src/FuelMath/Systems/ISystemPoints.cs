namespace FuelMath;

/// <summary>The points that <see cref="SystemSolver{T}"/> works on, and where it puts the results.</summary>
internal interface ISystemPoints
{
    /// <summary>The start of a point.</summary>
    SolverState Begin(int point);

    /// <summary>A point has converged.</summary>
    void Solved(int point, SettledSolve solve);

    /// <summary>A point has no state.</summary>
    void Refused(int point, Exception why);
}
