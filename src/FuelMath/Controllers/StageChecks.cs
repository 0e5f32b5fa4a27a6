using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>Checks of stages, transitions and points.</summary>
internal static class StageChecks
{
    /// <summary>Checks that there is a transition for each stage after the first, and that they do not fall.</summary>
    internal static void Transitions(int stages, ImmutableArray<StageSchedule.Transition> transitions, string paramName)
    {
        if (transitions.Length != stages - 1)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"{stages:stages} stages need {stages - 1:exactly} transitions; {transitions.Length:value} given.",
                paramName
            );
        }

        for (int i = 1; i < transitions.Length; i++)
        {
            if (transitions[i].TransitionDutyCycle.InSi() < transitions[i - 1].TransitionDutyCycle.InSi())
            {
                throw new RefusedArgumentException(
                    RefusalCode.MustNotFall,
                    $"Transitions must not fall from stage to stage; at index {i:index} they do.",
                    paramName
                );
            }
        }
    }

    /// <summary>The index of a stage by its name.</summary>
    internal static int IndexOf(IEnumerable<string> names, string name, string paramName)
    {
        string[] all = [.. names];
        int at = Array.IndexOf(all, name);
        return at >= 0 ? at : throw Guard.NoName(name, all, paramName);
    }

    /// <summary>Checks that the point gives a pressure for each stage, and air for all chambers or for each.</summary>
    internal static void Point(MixturePoint point, int stages, int chambers)
    {
        ArgumentNullException.ThrowIfNull(point);
        if (point.Injectors.DifferentialPressures.Length != stages)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"'{point.Name:part}' must give a differential pressure for each stage, {stages:exactly} in all; it gives {point.Injectors.DifferentialPressures.Length:value}.",
                nameof(point)
            );
        }

        if (point.ChamberAir.Length != 1 && point.ChamberAir.Length != chambers)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"'{point.Name:part}' must give one air mass, or one for each chamber, {chambers:exactly} in all; it gives {point.ChamberAir.Length:value}.",
                nameof(point)
            );
        }
    }
}
