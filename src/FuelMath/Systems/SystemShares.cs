using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Which of its uncertain inputs makes the scatter of a fuel system's state at an operating point: two solves for each input,
/// off to either side, and one at the best estimates.
/// </summary>
/// <remarks>
/// <para>
/// An input is off by the root of the fourth moment of its shape, in standard deviations: 1.73 for a normal one, 1.34, 1.55 and
/// 1.22 for a rectangular, triangular and arc sine one. The rule of three points that results counts an output's slope and
/// bend. Source: [Definition] Gauss's rule of three points. Inputs are independent, and what two of them do only together is
/// not counted. An input of each injector by itself takes two solves for each injector.
/// </para>
/// <para>
/// Held against random trials of one input at a time, what an input adds agrees within 5 %; within 10 % where it says that it
/// is bent.
/// </para>
/// <para>
/// Where a state changes its kind within that scatter (a regulator that starves, an injector that stays open) three solves don't
/// see it: <see cref="SystemMonteCarlo"/> does. What is not stated counts as exact.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SystemExamples.cs" region="Shares" />
/// </example>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class SystemShares
{
    private readonly ShiftedSolves solves;
    private readonly int[] first;

    /// <summary>Solves the system with each input off to either side.</summary>
    /// <param name="system">The system; its description holds the best estimates.</param>
    /// <param name="point">The operating point.</param>
    /// <param name="inputs">What is uncertain; at least one.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">No input is uncertain.</exception>
    /// <exception cref="NoSolutionException">
    /// There is no state at the best estimates, or with an input off; the message says which.
    /// </exception>
    /// <exception cref="OutsideTableException">A part's data do not reach the best estimates.</exception>
    /// <exception cref="UnknownPropertyException">The fuel's viscosity is not known.</exception>
    public SystemShares(FuelSystem system, OperatingPoint point, IEnumerable<UncertainInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(inputs);
        Inputs = [.. Lists.NoNulls(inputs)];
        if (Inputs.IsEmpty)
        {
            throw Guard.Empty(nameof(inputs));
        }

        (System, BestEstimate) = (system, system.Solve(point));
        int seats = system.Stages.Sum(s => s.Seats.Length);
        first = new int[Inputs.Length + 1];
        for (int i = 0; i < Inputs.Length; i++)
        {
            first[i + 1] = first[i] + Inputs[i].Count(seats);
        }

        int count = 1 + (2 * first[^1]);
        solves = system.SolveAll(
            one => new ShiftedSolves(one, point, count, solve => Shifted(solve, seats)),
            count,
            SystemBatch.Run,
            null,
            CancellationToken.None
        );
        CheckStates();
    }

    /// <summary>The system.</summary>
    public FuelSystem System { get; }

    /// <summary>What is uncertain.</summary>
    public ImmutableArray<UncertainInput> Inputs { get; }

    /// <summary>The state with every input at its best estimate.</summary>
    public SystemState BestEstimate { get; }

    /// <summary>How many times the system was solved.</summary>
    public int SolveCount => solves.Count;

    /// <summary>What makes the scatter of the pressure at a node.</summary>
    /// <param name="node">A node of the network.</param>
    /// <returns>The shares; deviations in Pa.</returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">The node is cut off, so that its pressure is not determined.</exception>
    public ScatterShares<GaugePressure, Pressure> PressureAt(string node)
    {
        _ = BestEstimate.PressureAt(node);
        return Of(solves.Pressures[System.Network.PlaceOf(node)], p => new GaugePressure(p), SiUnits.Pressure, node);
    }

    /// <summary>What makes the scatter of the mixture of a cylinder or rotor.</summary>
    /// <param name="chamber">Which, counted from 1.</param>
    /// <returns>The shares; deviations of lambda.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    /// <exception cref="InvalidOperationException">There is no mixture.</exception>
    public ScatterShares<Lambda, Ratio> LambdaOf(int chamber) =>
        Of(
            solves.Lambdas[Guard.InRange(chamber, 1, System.Engine.Chambers)],
            Lambda.FromRatio,
            SiUnits.Ratio,
            string.Create(CultureInfo.InvariantCulture, $"chamber {chamber}")
        );

    /// <summary>What makes the scatter of the mixture that one sensor behind all chambers sees.</summary>
    /// <returns>The shares; deviations of lambda.</returns>
    /// <exception cref="InvalidOperationException">There is no mixture.</exception>
    public ScatterShares<Lambda, Ratio> MeanLambda() =>
        Of(solves.Lambdas[0], Lambda.FromRatio, SiUnits.Ratio, "the mixture");

    /// <summary>What makes the scatter of the mixture that the sensor of a bank sees.</summary>
    /// <param name="bank">Which, counted from 1: see <see cref="FuelSystem.Banks"/>.</param>
    /// <returns>The shares; deviations of lambda.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such bank.</exception>
    /// <exception cref="InvalidOperationException">There is no mixture.</exception>
    public ScatterShares<Lambda, Ratio> LambdaOfBank(int bank) =>
        Of(
            solves.Lambdas[System.Engine.Chambers + Guard.InRange(bank, 1, System.Banks.Max())],
            Lambda.FromRatio,
            SiUnits.Ratio,
            string.Create(CultureInfo.InvariantCulture, $"bank {bank}")
        );

    /// <summary>What makes the scatter of the duty cycle of a stage.</summary>
    /// <param name="stage">The stage's name.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="ArgumentException">There is no such stage.</exception>
    public ScatterShares<Ratio, Ratio> DutyCycleOf(string stage)
    {
        for (int s = 0; s < System.Stages.Length; s++)
        {
            if (System.Stages[s].Name == stage)
            {
                return Of(solves.DutyCycles[s], SiUnits.Ratio, SiUnits.Ratio, stage);
            }
        }

        throw Guard.NoName(stage, System.Stages.Select(s => s.Name), nameof(stage));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{System}: {Inputs.Length} inputs");

    private InputShifts Shifted(int solve, int seats)
    {
        var shifts = new InputShifts(seats);
        if (solve > 0)
        {
            int draw = (solve - 1) / 2;
            int input = InputOf(draw);
            Inputs[input].Shift(shifts, SideOf(solve) * Reach(Inputs[input]), draw - first[input]);
        }

        return shifts.Checked();
    }

    /// <summary>How far off an input is, in standard deviations.</summary>
    private static double Reach(UncertainInput input) => Math.Sqrt(SpreadShapes.FourthMoment(input.Shape));

    private static int SideOf(int solve) => solve % 2 == 1 ? 1 : -1;

    private int InputOf(int draw) => Array.FindIndex(first, f => f > draw) - 1;

    private ScatterShares<TValue, TDeviation> Of<TValue, TDeviation>(
        double[] results,
        Func<double, TValue> toValue,
        Func<double, TDeviation> to,
        string what
    )
    {
        if (Array.Exists(results, double.IsNaN))
        {
            throw new RefusedOperationException(
                RefusalCode.NotFinite,
                $"There is no number for {what:subject} in one of the states."
            );
        }

        var variances = new (double Straight, double Bent)[Inputs.Length];
        for (int i = 0; i < Inputs.Length; i++)
        {
            double moment = SpreadShapes.FourthMoment(Inputs[i].Shape);
            for (int draw = first[i]; draw < first[i + 1]; draw++)
            {
                (double more, double less) = (results[1 + (2 * draw)], results[2 + (2 * draw)]);
                double odd = (more - less) / 2;
                double even = ((more + less) / 2) - results[0];
                variances[i].Straight += odd * odd / moment;
                variances[i].Bent += even * even * (moment - 1) / (moment * moment);
            }
        }

        return new(toValue(results[0]), Inputs, variances, to);
    }

    private void CheckStates()
    {
        int refused = Array.FindIndex(solves.Refusals, r => r is not null);
        if (refused < 0)
        {
            return;
        }

        UncertainInput off = Inputs[refused == 0 ? 0 : InputOf((refused - 1) / 2)];
        RefusalText where =
            refused == 0
                ? "at the best estimates"
                : (RefusalText)
                    $"with '{off.Name:input}' at {new Amount(SideOf(refused) * Reach(off), ""):deviations} standard deviations";
        throw Guard.NoSolution(
            RefusalCode.StateRefused,
            $"the shares of '{System.Name:part}' at '{BestEstimate.Point.Name:point}'",
            where.Then(" there is no state. ").Then(solves.Refusals[refused]!.Message),
            cause: solves.Refusals[refused]
        );
    }
}
