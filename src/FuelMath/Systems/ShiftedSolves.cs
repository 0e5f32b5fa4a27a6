using System.Collections.Immutable;
using FuelMath.Statistics;

namespace FuelMath;

/// <summary>One point with shifted inputs, many times, as the solver works through it: one row an output, one column a solve.</summary>
internal sealed class ShiftedSolves : IChosenPoints<ShiftedSolves>
{
    private readonly FuelSystem system;
    private readonly OperatingPoint point;
    private readonly Func<int, InputShifts> shifts;

    /// <param name="system">The system.</param>
    /// <param name="point">The point.</param>
    /// <param name="count">How many solves.</param>
    /// <param name="shifts">How the inputs of a solve differ from the description.</param>
    internal ShiftedSolves(FuelSystem system, OperatingPoint point, int count, Func<int, InputShifts> shifts)
    {
        (this.system, this.point, this.shifts) = (system, point, shifts);
        Refusals = new Exception?[count];
        Pressures = Rows(system.Network.Nodes.Length, count);
        Lambdas = Rows(1 + system.Engine.Chambers + system.Banks.Max(), count);
        DutyCycles = Rows(system.Stages.Length, count);
    }

    /// <summary>How many solves.</summary>
    internal int Count => Refusals.Length;

    /// <summary>Why a solve has no state.</summary>
    internal Exception?[] Refusals { get; }

    /// <summary>Gauge pressures of the nodes, Pa.</summary>
    internal double[][] Pressures { get; }

    /// <summary>Lambda as one sensor sees it, then that of each chamber, then that of each bank; not a number where there is no mixture.</summary>
    internal double[][] Lambdas { get; }

    /// <summary>Duty cycles of the stages.</summary>
    internal double[][] DutyCycles { get; }

    /// <inheritdoc />
    public SolverState Begin(int solve) => new(system.Path, point, shifts(solve));

    /// <inheritdoc />
    public void Solved(int solve, SettledSolve settled)
    {
        for (int i = 0; i < Pressures.Length; i++)
        {
            Pressures[i][solve] = settled.NodePressures[i];
        }

        for (int s = 0; s < DutyCycles.Length; s++)
        {
            DutyCycles[s][solve] = settled.State.DutyCycle(s);
        }

        (var chambers, FuelMath.Lambda? mean, _) = SystemReport.Mixture(settled);
        Lambdas[0][solve] = mean?.Si ?? double.NaN;
        int count = system.Engine.Chambers;
        for (int i = 0; i < count; i++)
        {
            Lambdas[i + 1][solve] = chambers.IsEmpty ? double.NaN : chambers[i].Lambda?.Si ?? double.NaN;
        }

        for (int bank = 1; bank < Lambdas.Length - count; bank++)
        {
            Lambdas[count + bank][solve] = BankReport.MeanOf(system, chambers, bank)?.Si ?? double.NaN;
        }
    }

    /// <inheritdoc />
    public void Refused(int solve, Exception why) => Refusals[solve] = why;

    /// <inheritdoc />
    public void Take(int solve, ShiftedSolves from, ImmutableArray<string> remarks)
    {
        Refusals[solve] = null;
        foreach (
            (double[] row, double[] other) in Pressures
                .Zip(from.Pressures)
                .Concat(Lambdas.Zip(from.Lambdas))
                .Concat(DutyCycles.Zip(from.DutyCycles))
        )
        {
            row[solve] = other[solve];
        }
    }

    /// <summary>Trials with inputs drawn at random: a trial's draws follow from the seed, the trial and the input alone.</summary>
    internal static ShiftedSolves Drawn(
        FuelSystem system,
        OperatingPoint point,
        ImmutableArray<UncertainInput> inputs,
        int count,
        ulong seed
    )
    {
        int seats = system.Stages.Sum(s => s.Seats.Length);
        int draws = inputs.Sum(i => i.Count(seats));
        return new(system, point, count, Trial);

        InputShifts Trial(int trial)
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
    }

    private static double[][] Rows(int rows, int count) =>
        [.. Enumerable.Range(0, rows).Select(_ => new double[count])];
}
