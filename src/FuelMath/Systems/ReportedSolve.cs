namespace FuelMath;

/// <summary>A converged solve as its report reads it: the state of its last round, and the path in the order of the system's network.</summary>
/// <remarks>The state is rented: belongs to one thread until it is disposed of.</remarks>
internal sealed class ReportedSolve : IDisposable
{
    private readonly KeptSolve kept;

    internal ReportedSolve(KeptSolve kept)
    {
        this.kept = kept;
        State = kept.Path.RentState();
        State.Restore(kept);
        (NodePressures, LineFlows) = (kept.Pressures(), kept.Flows());
        InjectorFlows = new double[kept.Path.Seats.Length];
        for (int i = 0; i < InjectorFlows.Length; i++)
        {
            InjectorFlows[i] = kept.FlowIn(kept.Path.Lines + i);
        }
    }

    internal FuelSystem System => kept.System;

    internal OperatingPoint Point => kept.Point;

    internal SolverState State { get; }

    /// <inheritdoc cref="KeptSolve.Network" />
    internal NetworkState Network => kept.Network;

    /// <summary>Gauge pressures, Pa; not a number where every way to a node is shut.</summary>
    internal double[] NodePressures { get; }

    /// <summary>Volume flows, m³/s.</summary>
    internal double[] LineFlows { get; }

    /// <summary>Mean volume flow of each injector, m³/s.</summary>
    internal double[] InjectorFlows { get; }

    /// <summary>The condition of the part of a line.</summary>
    internal Network.LineCondition ConditionOf(int line) => Network.ConditionAt(line);

    /// <inheritdoc />
    public void Dispose() => kept.Path.Return(State);
}
