namespace FuelMath;

/// <summary>The converged solution in SI numbers: the last round and the solved path, in the order of the system's network.</summary>
internal sealed class SettledSolve
{
    internal SettledSolve(SolverState state, NetworkState network)
    {
        (State, Network) = (state, network);
        SystemPath path = state.Path;
        NodePressures = path.PressuresIn(network);
        (LineFlows, InjectorFlows) = (new double[path.Lines], new double[path.Seats.Length]);
        for (int i = 0; i < LineFlows.Length; i++)
        {
            LineFlows[i] = network.FlowSi(i);
        }

        for (int i = 0; i < InjectorFlows.Length; i++)
        {
            InjectorFlows[i] = network.FlowSi(path.Lines + i);
        }
    }

    internal FuelSystem System => State.Path.System;

    internal OperatingPoint Point => State.Point;

    internal SolverState State { get; }

    /// <summary>The path as a network, with its injectors.</summary>
    internal NetworkState Network { get; }

    /// <summary>Gauge pressures, Pa; not a number where every way to a node is shut.</summary>
    internal double[] NodePressures { get; }

    /// <summary>Volume flows, m³/s.</summary>
    internal double[] LineFlows { get; }

    /// <summary>Mean volume flow of each injector, m³/s.</summary>
    internal double[] InjectorFlows { get; }

    /// <summary>The condition of the part of a line.</summary>
    internal Network.LineCondition ConditionOf(int line) => Network.ConditionAt(line);
}
