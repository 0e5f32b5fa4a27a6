using System.Collections.Immutable;
using System.Runtime.ExceptionServices;

namespace FuelMath;

/// <summary>A single operating point.</summary>
internal sealed class OnePoint(FuelSystem system, OperatingPoint at) : IChosenPoints<OnePoint>
{
    private SystemState? state;
    private Exception? refusal;

    /// <summary>The state; throws where there is none.</summary>
    internal SystemState State()
    {
        if (refusal is not null)
        {
            ExceptionDispatchInfo.Throw(refusal);
        }

        return state!;
    }

    /// <inheritdoc />
    public SolverState Begin(int point) => new(system.Path, at, null);

    /// <inheritdoc />
    public void Solved(int point, SettledSolve solve) => state = new SystemState(solve);

    /// <inheritdoc />
    public void Refused(int point, Exception why) => refusal = why;

    /// <inheritdoc />
    public void Take(int point, OnePoint from, ImmutableArray<string> remarks) =>
        (state, refusal) = (from.state!.With(remarks), null);
}
