using System.Collections.Immutable;
using FuelMath.Statistics;

namespace FuelMath;

/// <summary>The trials of a Monte Carlo run as the solver works through them: one row an output, one column a trial.</summary>
internal sealed class MonteCarloTrials : ISystemPoints
{
    private readonly FuelSystem system;
    private readonly OperatingPoint point;
    private readonly ImmutableArray<UncertainInput> inputs;
    private readonly ulong seed;
    private readonly int seats;
    private readonly int draws;

    internal MonteCarloTrials(
        FuelSystem system,
        OperatingPoint point,
        ImmutableArray<UncertainInput> inputs,
        int count,
        ulong seed
    )
    {
        (this.system, this.point, this.inputs, this.seed) = (system, point, inputs, seed);
        seats = system.Stages.Sum(s => s.Seats.Length);
        draws = inputs.Sum(i => i.Count(seats));
        Refusals = new Exception?[count];
        Pressures = Rows(system.Plan.Nodes.Length, count);
        Lambdas = Rows(system.Engine.Chambers + 1, count);
        DutyCycles = Rows(system.Stages.Length, count);
    }

    /// <summary>Why a trial has no state.</summary>
    internal Exception?[] Refusals { get; }

    /// <summary>Gauge pressures of the nodes, Pa.</summary>
    internal double[][] Pressures { get; }

    /// <summary>Lambda as one sensor sees it, then that of each chamber; not a number where there is no mixture.</summary>
    internal double[][] Lambdas { get; }

    /// <summary>Duty cycles of the stages.</summary>
    internal double[][] DutyCycles { get; }

    /// <inheritdoc />
    public SolverState Begin(int trial) => system.Solver.Begin(point, Drawn(trial));

    /// <inheritdoc />
    public void Solved(int trial, SolverState state, FuelPathSolution solution)
    {
        for (int i = 0; i < Pressures.Length; i++)
        {
            Pressures[i][trial] = solution.NodePressures[i];
        }

        for (int s = 0; s < DutyCycles.Length; s++)
        {
            DutyCycles[s][trial] = state.DutyCycle(s);
        }

        (var chambers, FuelMath.Lambda? mean, _) = SystemReport.Mixture(system, state, solution);
        Lambdas[0][trial] = mean?.Si ?? double.NaN;
        for (int i = 0; i < Lambdas.Length - 1; i++)
        {
            Lambdas[i + 1][trial] = chambers.IsEmpty ? double.NaN : chambers[i].Lambda?.Si ?? double.NaN;
        }
    }

    /// <inheritdoc />
    public void Refused(int trial, Exception why) => Refusals[trial] = why;

    private InputShifts Drawn(int trial)
    {
        var shifts = new InputShifts(seats);
        ulong place = (ulong)trial * (ulong)draws;
        foreach (UncertainInput input in inputs)
        {
            for (int i = 0; i < input.Count(seats); i++)
            {
                input.Apply(shifts, Draws.Share(seed, place++), i);
            }
        }

        return shifts.Checked();
    }

    private static double[][] Rows(int rows, int count) =>
        [.. Enumerable.Range(0, rows).Select(_ => new double[count])];
}
