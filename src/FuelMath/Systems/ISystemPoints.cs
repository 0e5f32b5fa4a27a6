namespace FuelMath;

/// <summary>The points that <see cref="SystemSolver{T}"/> works on, and where it puts what comes out.</summary>
internal interface ISystemPoints
{
    /// <summary>What a point begins with.</summary>
    SolverState Begin(int point);

    /// <summary>A point has settled.</summary>
    void Solved(int point, SettledSolve solve);

    /// <summary>A point has no state.</summary>
    void Refused(int point, Exception why);
}
