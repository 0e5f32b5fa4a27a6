using System.Runtime.ExceptionServices;

namespace FuelMath;

/// <summary>A single operating point.</summary>
internal sealed class OnePoint(OperatingPoint at) : IChosenPoints<OnePoint>
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
    public void Begin(int point, SolverState state) => state.Begin(at, null);

    /// <inheritdoc />
    public void Solved(int point, SettledSolve solve) => state = new SystemState(solve.Keep());

    /// <inheritdoc />
    public void Refused(int point, Exception why) => refusal = why;

    /// <inheritdoc />
    public void Take(int point, OnePoint from, IEnumerable<string> remarks) =>
        (state, refusal) = (from.state!.With(remarks), null);
}
