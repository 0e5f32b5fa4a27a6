using FuelMath.Internal;
using MathNet.Numerics.RootFinding;

namespace FuelMath.Beliefs;

/// <summary>How one or two stages share a fuel mass: the pulse width of each; zero keeps a stage shut.</summary>
internal static class StageSplit
{
    /// <param name="stages">One stage, or primaries and secondaries.</param>
    /// <param name="rule">How two share; null with one.</param>
    /// <param name="mass">Fuel mass for a chamber in one cycle, kg, greater than zero.</param>
    /// <param name="widths">Receives the widths, s.</param>
    internal static void Widths(StageModel[] stages, StagingRule? rule, double mass, double[] widths)
    {
        StageModel primary = stages[0];
        if (stages.Length == 1)
        {
            widths[0] = primary.WidthFor(mass);
            return;
        }

        StageModel secondary = stages[1];
        double transition = rule!.TransitionDutyCycle.InSi();
        double alone = primary.MassAt(transition * primary.Period);
        if (mass <= alone)
        {
            widths[0] = primary.WidthFor(mass);
            widths[1] = 0;
            return;
        }

        double least = secondary.MassAt(secondary.SmallestWidth);
        if (mass - alone <= least)
        {
            widths[0] = primary.WidthFor(mass - least);
            widths[1] = secondary.SmallestWidth;
            return;
        }

        if (mass - alone <= secondary.MassAt(transition * secondary.Period))
        {
            widths[0] = transition * primary.Period;
            widths[1] = secondary.WidthFor(mass - alone);
            return;
        }

        Together(primary, secondary, transition, mass, widths);
    }

    /// <summary>Both rise with one duty cycle; beyond the longest pulse both stay open.</summary>
    private static void Together(
        StageModel primary,
        StageModel secondary,
        double transition,
        double mass,
        double[] widths
    )
    {
        double most = Math.Min(primary.LargestWidth / primary.Period, secondary.LargestWidth / secondary.Period);
        double MassAt(double duty) => primary.MassAt(duty * primary.Period) + secondary.MassAt(duty * secondary.Period);
        double duty =
            most > transition
            && MassAt(most) >= mass
            && Brent.TryFindRoot(
                x => (MassAt(transition + ((most - transition) * x)) / mass) - 1,
                0,
                1,
                1e-14,
                100,
                out double share
            )
                ? transition + ((most - transition) * share)
                : 1;
        widths[0] = duty * primary.Period;
        widths[1] = duty * secondary.Period;
    }
}
