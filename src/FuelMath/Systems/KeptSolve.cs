namespace FuelMath;

/// <summary>What a result keeps of a converged solve: the path and the numbers that its report is made from. Immutable.</summary>
internal sealed class KeptSolve
{
    private readonly SystemPath path;
    private readonly double[] numbers;

    internal KeptSolve(SolverState state, NetworkState network)
    {
        (path, Point, Shifts, Network) = (state.Path, state.Point, state.Shifts, network);
        (Rounds, Iterations) = (state.Rounds, state.Iterations);
        numbers = state.Keep();
    }

    internal SystemPath Path => path;

    internal FuelSystem System => path.System;

    internal OperatingPoint Point { get; }

    /// <summary>See <see cref="SolverState.Shifts"/>.</summary>
    internal InputShifts? Shifts { get; }

    /// <summary>The path as a network, with its injectors.</summary>
    internal NetworkState Network { get; }

    internal int Rounds { get; }

    internal int Iterations { get; }

    /// <summary>See <see cref="SolverState.Keep"/>.</summary>
    internal ReadOnlySpan<double> Numbers => numbers;

    /// <summary>The gauge pressure at a node of the system, Pa; not a number where every way to it is shut.</summary>
    internal double PressureAt(int node) => path.PressureIn(Network, node);

    /// <summary>The volume flow in a line, m³/s.</summary>
    internal double FlowIn(int line) => Network.FlowSi(line);

    /// <summary>The pressures of all nodes of the system.</summary>
    internal double[] Pressures()
    {
        double[] all = new double[System.Network.Nodes.Length];
        for (int node = 0; node < all.Length; node++)
        {
            all[node] = PressureAt(node);
        }

        return all;
    }

    /// <summary>The flows in all lines of the system.</summary>
    internal double[] Flows()
    {
        double[] all = new double[path.Lines];
        for (int line = 0; line < all.Length; line++)
        {
            all[line] = FlowIn(line);
        }

        return all;
    }

    /// <summary>The same solve as a report reads it; dispose of it to give its room back.</summary>
    internal ReportedSolve ForReport() => new(this);
}
