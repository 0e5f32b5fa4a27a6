using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// How well the state of a fuel system is known at an operating point, when some of its inputs are uncertain: many trials
/// with inputs drawn at random, several solved at once, on all cores.
/// </summary>
/// <remarks>
/// <para>
/// A trial's draws follow from the seed, the trial and the input alone, so that a run gives the same numbers on any
/// number of cores. Source: [JCGM-101] clauses 5 to 7.
/// </para>
/// <para>
/// A trial that is refused keeps its <see cref="IRefusal"/>. Any other exception ends the run and comes out as itself,
/// from a progress handler, too.
/// </para>
/// <para>
/// The scatter of the trials is that of the stated inputs and no more: what is not stated counts as exact. A predicted
/// lambda is never clearance to load an engine: verify with a sensor at light load first.
/// </para>
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class SystemMonteCarlo
{
    private readonly ShiftedSolves trials;
    private readonly bool onlySolved;

    /// <summary>Runs the trials.</summary>
    /// <param name="system">The system; its description holds the best estimates.</param>
    /// <param name="point">The operating point.</param>
    /// <param name="inputs">What is uncertain; at least one.</param>
    /// <param name="trials">How many trials, 100 to 10 million.</param>
    /// <param name="seed">Where the random numbers begin: another seed, another run.</param>
    /// <param name="progress">Told how many trials are done, again and again, never twice at once; may be null.</param>
    /// <param name="cancellation">Stops the run between some trials.</param>
    /// <exception cref="ArgumentNullException">Another argument than <paramref name="progress"/> is null.</exception>
    /// <exception cref="ArgumentException">No input is uncertain.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of trials is outside what is allowed.</exception>
    /// <exception cref="NoSolutionException">The best estimates themselves have no state.</exception>
    /// <exception cref="OutsideTableException">A part's data do not reach the best estimates.</exception>
    /// <exception cref="UnknownPropertyException">The fuel's viscosity is not known.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public SystemMonteCarlo(
        FuelSystem system,
        OperatingPoint point,
        IEnumerable<UncertainInput> inputs,
        int trials,
        long seed,
        IProgress<int>? progress,
        CancellationToken cancellation
    )
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(inputs);
        Inputs = [.. Lists.NoNulls(inputs)];
        if (Inputs.IsEmpty)
        {
            throw Guard.Empty(nameof(inputs));
        }

        Guard.InRange(trials, 100, 10_000_000);
        System = system;
        Seed = seed;
        BestEstimate = system.Solve(point);
        this.trials = system.SolveAll(
            s => ShiftedSolves.Drawn(s, point, Inputs, trials, unchecked((ulong)seed)),
            trials,
            SystemBatch.Run,
            progress,
            cancellation
        );
        RefusedCount = this.trials.Refusals.Count(r => r is not null);
    }

    private SystemMonteCarlo(SystemMonteCarlo other)
    {
        (System, Inputs, Seed, BestEstimate) = (other.System, other.Inputs, other.Seed, other.BestEstimate);
        (trials, RefusedCount, onlySolved) = (other.trials, other.RefusedCount, true);
    }

    /// <summary>The system.</summary>
    public FuelSystem System { get; }

    /// <summary>What is uncertain.</summary>
    public ImmutableArray<UncertainInput> Inputs { get; }

    /// <summary>Where the random numbers begin.</summary>
    public long Seed { get; }

    /// <summary>The state with every input at its best estimate.</summary>
    public SystemState BestEstimate { get; }

    /// <summary>How many trials were run.</summary>
    public int TrialCount => trials.Refusals.Length;

    /// <summary>How many of them have no state.</summary>
    public int RefusedCount { get; }

    /// <summary>Why a trial has no state; null when it has one.</summary>
    /// <param name="trial">Which, 0 to less than <see cref="TrialCount"/>.</param>
    /// <returns>The refusal, with its numbers, an <see cref="IRefusal"/>; or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such trial.</exception>
    public Exception? RefusalAt(int trial) => trials.Refusals[Guard.InRange(trial, 0, TrialCount - 1)];

    /// <summary>
    /// The same run, whose results are those of the trials that have a state. What the refused ones would add is then
    /// missing: say how many there were.
    /// </summary>
    /// <returns>The run.</returns>
    /// <exception cref="InvalidOperationException">Fewer than 100 trials have a state.</exception>
    public SystemMonteCarlo OfSolvedTrials() =>
        TrialCount - RefusedCount >= 100
            ? new(this)
            : throw new RefusedOperationException(
                RefusalCode.TrialsRefused,
                $"At least {100:least} trials must have a state; {TrialCount - RefusedCount:value} of {TrialCount:total} have one."
            );

    /// <summary>The pressure at a node.</summary>
    /// <param name="node">A node of the network.</param>
    /// <returns>Its gauge pressure, and how it scatters.</returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">
    /// Some trials have no state (see <see cref="OfSolvedTrials"/>), or in some every way to the node is shut.
    /// </exception>
    public TrialSpread<GaugePressure, Pressure> PressureAt(string node)
    {
        double[] pressures = Numbers(trials.Pressures, System.Network.PlaceOf(node));
        int cutOff = pressures.Count(double.IsNaN);
        return cutOff == 0
            ? new(pressures, pascals => new GaugePressure(pascals), SiUnits.Pressure)
            : throw new RefusedOperationException(
                RefusalCode.PressureUndetermined,
                $"Every way to '{node:node}' is shut in {cutOff:value} of {pressures.Length:total} trials: its pressure is not determined there."
            );
    }

    /// <summary>The mixture of a cylinder or rotor.</summary>
    /// <param name="chamber">Which, counted from 1.</param>
    /// <returns>Its lambda, and how it scatters.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    /// <exception cref="InvalidOperationException">There is no mixture, or some trials have no state.</exception>
    public TrialSpread<Lambda, Ratio> LambdaOf(int chamber) =>
        Mixture(Guard.InRange(chamber, 1, System.Engine.Chambers));

    /// <summary>The mixture that one sensor behind all chambers sees.</summary>
    /// <returns>Its lambda, and how it scatters.</returns>
    /// <exception cref="InvalidOperationException">There is no mixture, or some trials have no state.</exception>
    public TrialSpread<Lambda, Ratio> MeanLambda() => Mixture(0);

    /// <summary>The mixture that the sensor of a bank sees.</summary>
    /// <param name="bank">Which, counted from 1: see <see cref="FuelSystem.Banks"/>.</param>
    /// <returns>Its lambda, and how it scatters.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such bank.</exception>
    /// <exception cref="InvalidOperationException">There is no mixture, or some trials have no state.</exception>
    public TrialSpread<Lambda, Ratio> LambdaOfBank(int bank) =>
        Mixture(System.Engine.Chambers + Guard.InRange(bank, 1, System.Banks.Max()));

    /// <summary>The duty cycle of a stage.</summary>
    /// <param name="stage">The stage's name.</param>
    /// <returns>Its duty cycle, and how it scatters.</returns>
    /// <exception cref="ArgumentException">There is no such stage.</exception>
    /// <exception cref="InvalidOperationException">Some trials have no state: see <see cref="OfSolvedTrials"/>.</exception>
    public TrialSpread<Ratio, Ratio> DutyCycleOf(string stage)
    {
        for (int s = 0; s < System.Stages.Length; s++)
        {
            if (System.Stages[s].Name == stage)
            {
                return new(Numbers(trials.DutyCycles, s), SiUnits.Ratio, SiUnits.Ratio);
            }
        }

        throw Guard.NoName(stage, System.Stages.Select(s => s.Name), nameof(stage));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{System}: {TrialCount} trials, {RefusedCount} refused");

    private TrialSpread<Lambda, Ratio> Mixture(int row)
    {
        double[] lambdas = Numbers(trials.Lambdas, row);
        return lambdas.All(double.IsFinite)
            ? new(lambdas, Lambda.FromRatio, SiUnits.Ratio)
            : throw new RefusedOperationException(
                RefusalCode.NoMixture,
                $"At '{BestEstimate.Point.Name:point}' not every trial has a mixture."
            );
    }

    private double[] Numbers(double[][] rows, int row)
    {
        if (RefusedCount == 0)
        {
            return [.. rows[row]];
        }

        if (!onlySolved)
        {
            int first = Array.FindIndex(trials.Refusals, r => r is not null);
            throw new RefusedOperationException(
                RefusalCode.TrialsRefused,
                (
                    (RefusalText)
                        $"{RefusedCount:value} of {TrialCount:total} trials have no state, which the rest would hide. Ask {nameof(OfSolvedTrials):remedy} for the rest. Trial {first:trial}: "
                ).Then(ExceptionText.Sentence(trials.Refusals[first]!)),
                inner: trials.Refusals[first]
            );
        }

        return [.. rows[row].Where((_, trial) => trials.Refusals[trial] is null)];
    }
}
