using System.Collections.Immutable;
using FuelMath.Statistics;

namespace FuelMath;

/// <summary>One point with shifted inputs, many times, as the solver works through it: one row an output, one column a solve.</summary>
internal sealed class ShiftedSolves : IChosenPoints<ShiftedSolves>
{
    private readonly OperatingPoint point;
    private readonly Func<int, InputShifts> shifts;

    /// <param name="system">The system.</param>
    /// <param name="point">The point.</param>
    /// <param name="count">How many solves.</param>
    /// <param name="shifts">How the inputs of a solve differ from the description.</param>
    internal ShiftedSolves(FuelSystem system, OperatingPoint point, int count, Func<int, InputShifts> shifts)
    {
        (this.point, this.shifts) = (point, shifts);
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
    public void Begin(int solve, SolverState state) => state.Begin(point, shifts(solve));

    /// <inheritdoc />
    public void Solved(int solve, SettledSolve settled)
    {
        for (int i = 0; i < Pressures.Length; i++)
        {
            Pressures[i][solve] = settled.PressureAt(i);
        }

        for (int s = 0; s < DutyCycles.Length; s++)
        {
            DutyCycles[s][solve] = settled.State.DutyCycle(s);
        }

        if (settled.State.AirMass == 0)
        {
            Array.ForEach(Lambdas, row => row[solve] = double.NaN);
            return;
        }

        PutMixture(solve, settled);
    }

    private void PutMixture(int solve, SettledSolve settled)
    {
        SystemPath path = settled.Path;
        double stoichiometric = path.System.Fuel.StoichiometricRatio.Si;
        Span<double> flows = stackalloc double[path.Seats.Length];
        for (int seat = 0; seat < flows.Length; seat++)
        {
            flows[seat] = settled.InjectorFlow(seat);
        }

        Span<double> fuel = stackalloc double[path.System.Engine.Chambers];
        ChamberFuel.Fill(settled.State, flows, fuel);
        Span<double> air = stackalloc double[fuel.Length];
        air.Fill(settled.State.AirMass);
        Lambdas[0][solve] = LambdaOf(air, fuel, stoichiometric);
        for (int i = 0; i < fuel.Length; i++)
        {
            Lambdas[i + 1][solve] = LambdaOf(air[..1], fuel.Slice(i, 1), stoichiometric);
        }

        Span<double> ofBank = stackalloc double[fuel.Length];
        for (int bank = 1; bank < Lambdas.Length - fuel.Length; bank++)
        {
            int own = 0;
            for (int i = 0; i < fuel.Length; i++)
            {
                if (path.System.Banks[i] == bank)
                {
                    ofBank[own++] = fuel[i];
                }
            }

            Lambdas[fuel.Length + bank][solve] = LambdaOf(air[..own], ofBank[..own], stoichiometric);
        }
    }

    private static double LambdaOf(ReadOnlySpan<double> air, ReadOnlySpan<double> fuel, double stoichiometric) =>
        PredictedMixture.ChamberMixture.MeanOf(air, fuel, stoichiometric)?.Si ?? double.NaN;

    /// <inheritdoc />
    public void Refused(int solve, Exception why) => Refusals[solve] = why;

    /// <inheritdoc />
    public void Take(int solve, ShiftedSolves from, IEnumerable<string> remarks)
    {
        Refusals[solve] = null;
        Copy(from.Pressures, Pressures, solve);
        Copy(from.Lambdas, Lambdas, solve);
        Copy(from.DutyCycles, DutyCycles, solve);
    }

    private static void Copy(double[][] from, double[][] to, int solve)
    {
        for (int row = 0; row < to.Length; row++)
        {
            to[row][solve] = from[row][solve];
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
