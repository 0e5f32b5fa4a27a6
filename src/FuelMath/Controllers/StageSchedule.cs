using System.Collections.Immutable;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>
/// The division of the fuel among stages over the whole range of demand: the total is continuous, and each stage is
/// closed or above its smallest repeatable pulse.
/// </summary>
/// <remarks>
/// <para>
/// The first stage works alone up to its transition. There the next one joins with its smallest pulse, and the earlier
/// stages are reduced by as much fuel; the new stage then grows alone up to the duty cycle of the transition, and
/// beyond all have one duty cycle, up to the next transition. The total rises throughout; the width of the earlier
/// stages steps back where one joins, because a pulse can't begin at zero width.
/// </para>
/// <para>A fuel system uses the same rule.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/TimingExamples.cs" region="Stages" />
/// </example>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed partial class StageSchedule
{
    private readonly StageModel[] models;
    private readonly double[] duties;

    /// <summary>Creates a schedule, and checks that each stage has room to join.</summary>
    /// <param name="stages">
    /// The stages in the order in which they join, one or more, with different names. Copied.
    /// </param>
    /// <param name="transitions">When each stage after the first joins; not falling. Copied.</param>
    /// <param name="cycle">Time of one working cycle of a chamber; greater than zero.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A name occurs twice, the number of transitions is wrong, or a stage has no room to join: the message gives the
    /// least duty cycle.
    /// </exception>
    /// <exception cref="OutsideTableException">A dead-time table does not reach there and refuses.</exception>
    public StageSchedule(IEnumerable<Stage> stages, IEnumerable<Transition> transitions, Duration cycle)
    {
        ArgumentNullException.ThrowIfNull(stages);
        ArgumentNullException.ThrowIfNull(transitions);
        (Stages, Transitions, Cycle) = ([.. Lists.NoNulls(stages)], [.. Lists.NoNulls(transitions)], cycle);
        double seconds = Guard.Positive(cycle, cycle.InSi());
        Guard.AtLeast(1, Stages.Length, "A schedule (its stages)", nameof(stages));
        if (Stages.GroupBy(s => s.Name).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new RefusedArgumentException(
                RefusalCode.Duplicate,
                $"Stage names must be unique; '{twice.Key:given}' is there twice.",
                nameof(stages)
            );
        }

        StageChecks.Transitions(Stages.Length, Transitions, nameof(transitions));
        models = [.. Stages.Select(s => s.ModelFor(seconds))];
        duties = [.. Transitions.Select(t => t.TransitionDutyCycle.InSi())];
        CheckCycle(nameof(cycle));
        CheckClosing(nameof(transitions));
        for (int joining = 1; joining < models.Length; joining++)
        {
            CheckRoom(joining, nameof(transitions));
        }
    }

    /// <summary>The stages in the order in which they join.</summary>
    public ImmutableArray<Stage> Stages { get; }

    /// <summary>When each stage after the first joins.</summary>
    public ImmutableArray<Transition> Transitions { get; }

    /// <summary>Time of one working cycle of a chamber.</summary>
    public Duration Cycle { get; }

    /// <summary>The least mass per chamber and cycle: the smallest pulse of the first stage; in kg.</summary>
    public Mass LeastMass => SiUnits.Mass(Least(0));

    /// <summary>
    /// The greatest mass that can be metered: all stages at the highest duty cycle at which all of them still close; in
    /// kg.
    /// </summary>
    public Mass MostMass => SiUnits.Mass(StageSplit.MassAt(models, StageSplit.HighestDuty(models)));

    /// <summary>The demand beyond which a stage joins.</summary>
    /// <param name="stage">The stage, counted from 1; 2 or more.</param>
    /// <returns>The mass per chamber and cycle, in kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such stage, or it is the first.</exception>
    public Mass JoinsBeyond(int stage)
    {
        Guard.InRange(stage, 2, models.Length);
        return SiUnits.Mass(StageSplit.MassAt(models.AsSpan(0, stage - 1), duties[stage - 2]));
    }

    /// <summary>The division of a demand among the stages.</summary>
    /// <param name="demand">Mass for one chamber in one cycle, from <see cref="LeastMass"/> to <see cref="MostMass"/>.</param>
    /// <returns>The pulse of each stage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The demand is outside that range.</exception>
    public StagedPulses At(Mass demand)
    {
        double mass = Guard.InRange(demand, demand.InSi(), Least(0), MostMass.InSi(), SiUnits.Mass);
        double[] widths = new double[models.Length];
        StageSplit.Widths(models, duties, mass, widths);
        return new(
            demand,
            [
                .. models.Select(
                    (m, i) =>
                        new StagePulse(
                            Stages[i].Name,
                            m.Pulse(0, widths[i]),
                            widths[i] == 0,
                            widths[i] == 0 ? 0 : m.MassAt(widths[i])
                        )
                ),
            ]
        );
    }

    /// <summary>The division of evenly spaced demands, to show the transitions.</summary>
    /// <param name="from">The first demand.</param>
    /// <param name="to">The last demand, above the first.</param>
    /// <param name="rows">Number of demands; 2 to 10 000.</param>
    /// <returns>A row for each demand.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A demand is outside the range of the schedule, or the count is.</exception>
    public ImmutableArray<StagedPulses> Over(Mass from, Mass to, int rows)
    {
        Guard.InRange(rows, 2, 10_000);
        (double first, double last) = (from.InSi(), to.InSi());
        if (!(last > first))
        {
            throw Guard.OutOfRange(to, $"above {from:above}");
        }

        return
        [
            .. Enumerable
                .Range(0, rows)
                .Select(i => At(i == rows - 1 ? to : SiUnits.Mass(first + ((last - first) * i / (rows - 1))))),
        ];
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Stages.Length} stages, {LeastMass} to {MostMass}");

    private double Least(int stage) => models[stage].MassAt(models[stage].SmallestWidth);

    /// <summary>Checks that the cycle is long enough for the smallest pulse and closing of every injector.</summary>
    private void CheckCycle(string paramName)
    {
        for (int i = 0; i < models.Length; i++)
        {
            double needed = models[i].SmallestPulseSi + Stages[i].Injector.ClosingTime.InSi();
            if (needed > models[i].Period)
            {
                throw Guard.OutOfRange(
                    Cycle,
                    $"long enough for stage '{Stages[i].Name:part}', whose smallest pulse and closing time take {Amount.Milliseconds(needed):needed} of {Amount.Milliseconds(models[i].Period):period}",
                    paramName
                );
            }
        }
    }

    /// <summary>Checks that at a transition the injectors of the earlier stages still close.</summary>
    private void CheckClosing(string paramName)
    {
        for (int t = 0; t < duties.Length; t++)
        {
            double highest = StageSplit.HighestDuty(models.AsSpan(0, t + 1));
            if (duties[t] > highest)
            {
                throw new RefusedArgumentException(
                    RefusalCode.OutOfRange,
                    $"Transition {t + 1:transition} must be at most {Amount.Percent(highest):most}, so that the injectors before it still close; it was {Amount.Percent(duties[t]):value}.",
                    paramName
                );
            }
        }
    }

    /// <summary>
    /// Checks that where a stage joins, the earlier stages can be reduced by its smallest pulse without falling below
    /// their own.
    /// </summary>
    private void CheckRoom(int joining, string paramName)
    {
        ReadOnlySpan<StageModel> before = models.AsSpan(0, joining);
        double needed = Least(joining) + Least(0);
        if (StageSplit.MassAt(before, duties[joining - 1]) >= needed)
        {
            return;
        }

        StageModel[] group = before.ToArray();
        double highest = StageSplit.HighestDuty(group);
        string way =
            StageSplit.MassAt(group, highest) < needed
                ? "no transition has room for it: fit smaller injectors in it"
                : $"it has room from {Show.Percent(Rising.Root(d => StageSplit.MassAt(group, d), needed, 0, highest))} on";
        throw new RefusedArgumentException(
            RefusalCode.StageCannotJoin,
            $"Stage '{Stages[joining].Name:part}' cannot join at {Amount.Percent(duties[joining - 1]):value}: its smallest pulses give {Milligrams(Least(joining)):smallestPulse}, and the stages before give {Milligrams(StageSplit.MassAt(before, duties[joining - 1])):before} there, no less than {Milligrams(Least(0)):least} at all; {way:way}.",
            paramName
        );
    }

    private static Amount Milligrams(double kilograms) => new(kilograms * 1e6, "mg");
}
