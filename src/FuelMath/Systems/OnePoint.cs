using System.Runtime.ExceptionServices;

namespace FuelMath;

/// <summary>A single operating point, which throws where it has no state.</summary>
internal sealed class OnePoint(FuelSystem system, OperatingPoint at) : ISystemPoints
{
    internal SystemState? State { get; private set; }

    /// <inheritdoc />
    public SolverState Begin(int point) => system.Solver.Begin(at);

    /// <inheritdoc />
    public void Solved(int point, SolverState state, FuelPathSolution solution) =>
        State = SystemReport.Of(system, state, solution);

    /// <inheritdoc />
    public void Refused(int point, Exception why) => ExceptionDispatchInfo.Throw(why);
}
