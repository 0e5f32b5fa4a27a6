using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A converged solution while its solver still holds it: numbers are read from it, or it is kept. It serves one point after
/// another.
/// </summary>
internal sealed class SettledSolve
{
    private NetworkWork<Real> work = null!;
    private KeptSolve? kept;

    internal SystemPath Path => State.Path;

    internal OperatingPoint Point => State.Point;

    internal SolverState State { get; private set; } = null!;

    /// <summary>Takes the next point: its last round, and its judged path.</summary>
    internal void Take(SolverState state, NetworkWork<Real> judged) => (State, work, kept) = (state, judged, null);

    /// <summary>What a result keeps of it.</summary>
    internal KeptSolve Keep() => kept ??= new KeptSolve(State, new NetworkState(work));

    /// <summary>The gauge pressure at a node of the system, Pa; not a number where every way to it is shut.</summary>
    internal double PressureAt(int node) => Path.PressureIn(work, node);

    /// <summary>Mean volume flow of an injector, m³/s.</summary>
    internal double InjectorFlow(int seat) => NetworkState.FlowSi(work, Path.Lines + seat);
}
