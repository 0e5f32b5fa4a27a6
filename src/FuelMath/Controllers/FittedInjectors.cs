using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The fitted injectors, stage by stage, under a controller that acts on its belief: predicts the mixture of every
/// chamber, uncorrected or corrected by a sensor for each bank.
/// </summary>
/// <remarks>
/// <para>
/// Pressure and air are given, so no fuel system is needed. A closed loop corrects the fuel of a whole bank by one
/// factor. A misfiring chamber sends its oxygen to the sensor, which then reads falsely lean, and the controller adds
/// fuel.
/// </para>
/// <para>
/// Caution: never run an engine leaner than intended to test a set. A predicted lambda is no clearance to load an
/// engine: verify with a sensor at light load first.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BeliefExamples.cs" region="Predict" />
/// </example>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed partial class FittedInjectors
{
    /// <summary>Creates a set from stages, banks and fuel.</summary>
    /// <param name="fuel">The fuel actually in the tank.</param>
    /// <param name="stages">
    /// The stages in the order in which they join; one or more, with the same chambers. Copied.
    /// </param>
    /// <param name="transitions">When each stage after the first joins; not falling. Copied.</param>
    /// <param name="banks">The bank (the sensor) of each chamber. Copied.</param>
    /// <param name="limits">The limits of correction, and of a lean mixture.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// Stages, transitions and banks are inconsistent; the message says which.
    /// </exception>
    public FittedInjectors(
        Fuel fuel,
        IEnumerable<Stage> stages,
        IEnumerable<StageSchedule.Transition> transitions,
        IEnumerable<int> banks,
        MixtureLimits limits
    )
    {
        ArgumentNullException.ThrowIfNull(fuel);
        ArgumentNullException.ThrowIfNull(stages);
        ArgumentNullException.ThrowIfNull(transitions);
        ArgumentNullException.ThrowIfNull(banks);
        ArgumentNullException.ThrowIfNull(limits);
        (Fuel, Stages, Transitions, Banks, Limits) = (
            fuel,
            [.. Lists.NoNulls(stages)],
            [.. Lists.NoNulls(transitions)],
            [.. banks],
            limits
        );
        Guard.AtLeast(1, Stages.Length, "A set (its stages)", nameof(stages));
        if (Stages.FirstOrDefault(s => s.Fitted.Length != ChamberCount) is { } odd)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"All stages must feed the same {ChamberCount:exactly} chambers; stage '{odd.Name:part}' feeds {odd.Fitted.Length:value}.",
                nameof(stages)
            );
        }

        if (Banks.Length != ChamberCount)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must name a bank for each chamber, {ChamberCount:exactly} in all; {Banks.Length:value} given.",
                nameof(banks)
            );
        }

        StageChecks.Transitions(Stages.Length, Transitions, nameof(transitions));
    }

    /// <summary>The fuel actually in the tank.</summary>
    public Fuel Fuel { get; }

    /// <summary>The stages in the order in which they join.</summary>
    public ImmutableArray<Stage> Stages { get; }

    /// <summary>When each stage after the first joins.</summary>
    public ImmutableArray<StageSchedule.Transition> Transitions { get; }

    /// <summary>The bank of each chamber.</summary>
    public ImmutableArray<int> Banks { get; }

    /// <summary>The limits of correction, and of a lean mixture.</summary>
    public MixtureLimits Limits { get; }

    internal int ChamberCount => Stages[0].Fitted.Length;

    /// <summary>One stage, one sensor behind all chambers.</summary>
    /// <param name="fuel">The fuel actually in the tank.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="limits">The limits of correction, and of a lean mixture.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FittedInjectors FromStage(Fuel fuel, Stage stage, MixtureLimits limits)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return new(fuel, [stage], [], stage.Fitted.Select(_ => 1), limits);
    }

    /// <summary>
    /// The mixture without a sensor: the controller converts the fuel for its lambda to widths by its belief.
    /// </summary>
    /// <param name="point">The operating point.</param>
    /// <param name="correction">A factor on the fuel left in the controller; 100 % for none.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The correction is not greater than zero.</exception>
    /// <exception cref="OutsideTableException">The point is outside a dead-time table, and it refuses.</exception>
    /// <exception cref="ArgumentException">The point does not fit the stages; the message says why.</exception>
    public PredictedMixture OpenLoop(MixturePoint point, Ratio correction)
    {
        PointDelivery delivery = At(point);
        double factor = Guard.Positive(correction, correction.InSi());
        double[] widths = delivery.WidthsFor(factor * delivery.BelievedMass);
        return delivery.Report(false, _ => new(factor, false, widths));
    }

    /// <summary>The mixture at given pulse widths.</summary>
    /// <param name="point">The operating point.</param>
    /// <param name="pulseWidths">The width of each stage; zero for an inactive stage.</param>
    /// <returns>The mixture, judged against the point's lambda.</returns>
    /// <exception cref="ArgumentException">The number of widths is not that of the stages.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A width is negative.</exception>
    public PredictedMixture AtPulseWidths(MixturePoint point, IEnumerable<Duration> pulseWidths)
    {
        PointDelivery delivery = At(point);
        ArgumentNullException.ThrowIfNull(pulseWidths);
        double[] widths = [.. pulseWidths.Select(w => Guard.NotNegative(w, w.InSi(), nameof(pulseWidths)))];
        return widths.Length == Stages.Length
            ? delivery.Report(false, _ => new(1, false, widths))
            : throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be a width for each stage, {Stages.Length:exactly} in all; {widths.Length:value} given.",
                nameof(pulseWidths)
            );
    }

    /// <summary>The mixture when the sensor of each bank corrects its fuel within the limits.</summary>
    /// <param name="point">The operating point.</param>
    /// <returns>The mixture, with the correction of each bank and whether it is at its limit.</returns>
    /// <exception cref="OutsideTableException">The point is outside a dead-time table, and it refuses.</exception>
    /// <exception cref="ArgumentException">The point does not fit the stages; the message says why.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public PredictedMixture ClosedLoop(MixturePoint point)
    {
        PointDelivery delivery = At(point);
        (double low, double high) = (Limits.LowestCorrection.InSi(), Limits.HighestCorrection.InSi());
        return delivery.Report(
            true,
            chambers =>
            {
                (double factor, bool isAtLimit) = delivery.Correction(chambers, low, high);
                return new(factor, isAtLimit, delivery.WidthsFor(factor * delivery.BelievedMass));
            }
        );
    }

    /// <summary>The correction that a sensor would need, without the limits of the controller.</summary>
    /// <param name="point">The operating point.</param>
    /// <param name="bank">The bank.</param>
    /// <returns>The factor to enter for the bank.</returns>
    /// <exception cref="ArgumentException">There is no such bank.</exception>
    /// <exception cref="NoSolutionException">The injectors are too small, or too large for a repeatable pulse.</exception>
    public Ratio NeededCorrection(MixturePoint point, int bank)
    {
        PointDelivery delivery = At(point);
        int[] chambers = [.. Enumerable.Range(0, ChamberCount).Where(c => Banks[c] == bank)];
        if (chambers.Length == 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be one of: {Banks.Distinct().Order():allowed}; it was {bank:value}.",
                nameof(bank)
            );
        }

        (double factor, bool isAtLimit) = delivery.UnlimitedCorrection(chambers);
        return isAtLimit
            ? throw Guard.NoSolution(
                factor > 1 ? RefusalCode.TooLittleFuel : RefusalCode.TooMuchFuel,
                $"a correction for bank {bank:bank} at '{point.Name:point}'",
                factor > 1
                    ? "the injectors held open do not give the fuel that is asked for."
                    : "the smallest pulses that repeat give more fuel than is asked for."
            )
            : SiUnits.Ratio(factor);
    }

    /// <summary>
    /// The belief to enter in the controller instead: the mean flow of the fitted injectors, with the real pressure and
    /// fuel.
    /// </summary>
    /// <param name="stage">The name of the stage.</param>
    /// <param name="point">The point whose pressure and fuel temperature are entered.</param>
    /// <param name="source">Where the data of the fitted injectors come from.</param>
    /// <returns>The belief, with the same dead time as before.</returns>
    /// <exception cref="ArgumentException">There is no such stage.</exception>
    public ControllerBelief CorrectedBelief(string stage, MixturePoint point, DataSource source)
    {
        PointDelivery delivery = At(point);
        int s = StageChecks.IndexOf(Stages.Select(x => x.Name), stage, nameof(stage));
        ControllerBelief belief = Stages[s].Belief;
        double flow = belief.Injector.Rating.MassFlowSiAt(
            point.Injectors.DifferentialPressures[s],
            Fuel.DensityAt(point.Injectors.FuelTemperature)
        );
        return new(
            belief.Injector.WithFlowScale(
                $"{belief.Injector.Name}, mean of what is fitted",
                SiUnits.Ratio(delivery.FlowRatio(s, flow)),
                source
            ),
            point.Injectors.DifferentialPressures[s],
            Fuel,
            point.Injectors.FuelTemperature
        );
    }

    /// <summary>The working of the lambda of a chamber, uncorrected: every step with formula and numbers.</summary>
    /// <param name="point">The operating point.</param>
    /// <param name="chamber">The chamber, counted from 1.</param>
    /// <returns>The working, in the linear range of the believed injector.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    /// <exception cref="InvalidOperationException">There are several stages, which share the fuel by a schedule.</exception>
    /// <exception cref="ArgumentException">The point does not fit the stages; the message says why.</exception>
    public Formulas.Working WorkingFor(MixturePoint point, int chamber)
    {
        StageChecks.Point(point, Stages.Length, ChamberCount);
        Guard.InRange(chamber, 1, ChamberCount);
        return Stages.Length == 1
            ? MixtureWorking.Of(this, point, chamber - 1)
            : throw new RefusedOperationException(
                RefusalCode.OneStageOnly,
                $"A working is for one stage; there are {Stages.Length:value}, which share the fuel by a schedule."
            );
    }

    /// <summary>The uncertainty of the lambda of a chamber, uncorrected, and its contributions.</summary>
    /// <param name="point">The operating point.</param>
    /// <param name="chamber">The chamber, counted from 1.</param>
    /// <param name="known">The uncertainties of the real conditions.</param>
    /// <returns>The budget of lambda; the short-pulse correction is taken at the best estimate.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    /// <exception cref="InvalidOperationException">There are several stages, which share the fuel by a schedule.</exception>
    /// <exception cref="NoSolutionException">There is no fuel, and so no lambda.</exception>
    /// <exception cref="ArgumentException">The point does not fit the stages; the message says why.</exception>
    public Statistics.UncertaintyBudget BudgetFor(MixturePoint point, int chamber, MixtureUncertainty known)
    {
        ArgumentNullException.ThrowIfNull(known);
        StageChecks.Point(point, Stages.Length, ChamberCount);
        Guard.InRange(chamber, 1, ChamberCount);
        return Stages.Length == 1
            ? MixtureBudget.Of(this, point, chamber - 1, known)
            : throw new RefusedOperationException(
                RefusalCode.OneStageOnly,
                $"A budget is for one stage; there are {Stages.Length:value}, which share the fuel by a schedule."
            );
    }

    /// <summary>The same set with other injectors in a stage; the belief is unchanged.</summary>
    /// <param name="stage">The name of the stage.</param>
    /// <param name="fitted">One for each chamber.</param>
    /// <returns>A new set.</returns>
    /// <exception cref="ArgumentException">There is no such stage, or the number differs.</exception>
    public FittedInjectors WithInjectors(string stage, IEnumerable<Injector> fitted)
    {
        int s = StageChecks.IndexOf(Stages.Select(x => x.Name), stage, nameof(stage));
        return new(Fuel, Stages.SetItem(s, Stages[s].WithInjectors(fitted)), Transitions, Banks, Limits);
    }

    /// <summary>The same injectors under another belief about a stage.</summary>
    /// <param name="stage">The name of the stage.</param>
    /// <param name="belief">The new belief.</param>
    /// <returns>A new set.</returns>
    /// <exception cref="ArgumentException">There is no such stage.</exception>
    public FittedInjectors WithBelief(string stage, ControllerBelief belief)
    {
        int s = StageChecks.IndexOf(Stages.Select(x => x.Name), stage, nameof(stage));
        return new(Fuel, Stages.SetItem(s, Stages[s].WithBelief(belief)), Transitions, Banks, Limits);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Stages.Length} stages, {Fuel}");

    private PointDelivery At(MixturePoint point)
    {
        StageChecks.Point(point, Stages.Length, ChamberCount);
        return new(this, point);
    }
}
