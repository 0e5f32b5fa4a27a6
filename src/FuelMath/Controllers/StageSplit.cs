using MathNet.Numerics.RootFinding;

namespace FuelMath;

/// <summary>The division of a fuel mass among stages: the pulse width of each; zero for an inactive stage.</summary>
/// <remarks>
/// The first stages work alone up to the transition of the next one. Beyond it the next stage takes the excess, but at
/// least its smallest repeatable pulse, with the earlier stages reduced by as much. Once it has reached the duty cycle
/// of the transition, all of them rise together, up to the next transition.
/// </remarks>
internal static class StageSplit
{
    /// <param name="stages">The stages in the order in which they join.</param>
    /// <param name="transitions">The duty cycle at which each stage after the first joins; not falling.</param>
    /// <param name="mass">Fuel mass for a chamber in one cycle, kg, greater than zero.</param>
    /// <param name="widths">Receives the widths, s.</param>
    internal static void Widths(
        ReadOnlySpan<StageModel> stages,
        ReadOnlySpan<double> transitions,
        double mass,
        Span<double> widths
    )
    {
        if (stages.Length == 1)
        {
            widths[0] = stages[0].WidthFor(mass);
            return;
        }

        StageModel last = stages[^1];
        double transition = transitions[stages.Length - 2];
        double alone = MassAt(stages[..^1], transition);
        if (mass <= alone)
        {
            Widths(stages[..^1], transitions, mass, widths[..^1]);
            widths[^1] = 0;
            return;
        }

        double least = last.MassAt(last.SmallestWidth);
        if (mass - alone <= least)
        {
            Widths(stages[..^1], transitions, mass - least, widths[..^1]);
            widths[^1] = last.SmallestWidth;
            return;
        }

        if (mass - alone <= last.MassAt(transition * last.Period))
        {
            SetWidths(stages[..^1], transition, widths);
            widths[^1] = last.WidthFor(mass - alone);
            return;
        }

        Together(stages, transition, mass, widths);
    }

    /// <summary>The width of a stage at a duty cycle: never below its smallest pulse.</summary>
    private static double WidthAt(StageModel stage, double duty) => Math.Max(duty * stage.Period, stage.SmallestWidth);

    /// <summary>The total mass of stages at one duty cycle, kg.</summary>
    internal static double MassAt(ReadOnlySpan<StageModel> stages, double duty)
    {
        double sum = 0;
        foreach (StageModel stage in stages)
        {
            sum += stage.MassAt(WidthAt(stage, duty));
        }

        return sum;
    }

    private static void SetWidths(ReadOnlySpan<StageModel> stages, double duty, Span<double> widths)
    {
        for (int i = 0; i < stages.Length; i++)
        {
            widths[i] = WidthAt(stages[i], duty);
        }
    }

    /// <summary>The highest duty cycle at which all stages still close.</summary>
    internal static double HighestDuty(ReadOnlySpan<StageModel> stages)
    {
        double most = 1;
        foreach (StageModel stage in stages)
        {
            most = Math.Min(most, stage.LargestWidth / stage.Period);
        }

        return most;
    }

    /// <summary>All stages at one duty cycle; beyond the longest pulse all stay open.</summary>
    private static void Together(ReadOnlySpan<StageModel> stages, double transition, double mass, Span<double> widths)
    {
        double most = HighestDuty(stages);
        StageModel[] all = stages.ToArray();
        double duty =
            most > transition
            && MassAt(all, most) >= mass
            && Brent.TryFindRoot(
                x => (MassAt(all, transition + ((most - transition) * x)) / mass) - 1,
                0,
                1,
                1e-14,
                100,
                out double share
            )
                ? transition + ((most - transition) * share)
                : 1;
        SetWidths(stages, duty, widths);
    }
}
